/** Finds the place in a cell where its number lines up with the numbers above and below it. */
import type { Measure } from '../font/typeface.js';
import { breakLines, type Line } from './break-lines.js';
import type { Span } from './styled.js';

/** A cell of one line that starts with a number, set so that the decimal sign stands at `before`. */
export interface DecimalCell {
  readonly line: Line;
  /** Width left of the decimal sign [points]. */
  readonly before: number;
  /** Width from the decimal sign on [points]. */
  readonly after: number;
}

/** Sign, digits with group marks; what follows belongs right of the line. */
const NUMBER = /^[–—−-]$|^[±+\-−–<>≤≥≈~ ]*\d(?:[\d,\u2009\u202f\u00a0 ]*\d)?/u;

/**
 * Splits a cell of a decimal column at its decimal sign.
 *
 * @param spans - content of the cell
 * @param measure - width of a text
 * @returns undefined for a cell that is not one line starting with a number: it is set flush right instead
 */
export function decimalCell(spans: readonly Span[], measure: Measure): DecimalCell | undefined {
  const [first] = spans;
  if (first?.kind !== 'text' || spans.some((span) => span.kind === 'break')) return undefined;
  // A dash alone stands where the units stand.
  const whole = NUMBER.exec(first.text)?.[0];
  if (whole === undefined) return undefined;
  const [line] = breakLines(spans, Number.POSITIVE_INFINITY, measure);
  if (!line) return undefined;
  const before = measure(whole.trimEnd(), first.style.face, first.style.size);
  return { line, before, after: line.width - before };
}
