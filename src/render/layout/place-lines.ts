/** Puts broken lines at their places, and cuts paragraphs into pieces that may part between lines. */
import type { Line } from './break-lines.js';
import type { Item, Piece, Tag } from './piece.js';
import { baselineOf, type TextStyle } from './style-sheet.js';

export type Align = 'left' | 'right' | 'centre';

/** Tag of the words of a line: one for all, or one made for the words that are a link. */
export interface LineTags {
  readonly text: Tag | undefined;
}

/**
 * Places the runs of one line.
 *
 * @param line - broken line
 * @param at - left edge and top of the line, width of the column [points]
 * @param style - style that sets the leading
 * @param align - where a short line stands in the column
 * @param tag - structure element the words belong to; decoration without one
 * @returns items
 */
export function placeLine(
  line: Line,
  at: { readonly x: number; readonly y: number; readonly width: number },
  style: Pick<TextStyle, 'leading' | 'size'>,
  align: Align,
  tag: Tag | undefined,
): readonly Item[] {
  const spare = at.width - line.width;
  const dx = at.x + (align === 'right' ? spare : align === 'centre' ? spare / 2 : 0);
  const baseline = at.y + baselineOf(style.leading, style.size);
  return line.runs.map((run): Item => {
    if (run.kind === 'mark')
      return {
        kind: 'mark',
        x: dx + run.x,
        y: baseline,
        width: run.width,
        verdict: run.verdict,
        style: run.style,
      };
    return {
      kind: 'text',
      x: dx + run.x,
      y: baseline - run.rise,
      width: run.width,
      text: run.text,
      style: run.style,
      ...(run.link === undefined ? {} : { link: run.link }),
      ...(run.rise > 0 ? raisedSigns(run.text) : {}),
      ...(tag === undefined ? {} : { tag }),
    };
  });
}

const RAISED = new Map([...'0123456789+−-n'].map((sign, i) => [sign, [...'⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁻ⁿ'][i] ?? sign]));

/** The exponent as signs of their own, so that 10 with a raised 6 is never taken for 106. */
function raisedSigns(text: string): { readonly spoken?: string } {
  const signs = [...text.trimEnd()].map((sign) => RAISED.get(sign));
  return signs.every((sign) => sign !== undefined) ? { spoken: signs.join('') } : {};
}

/**
 * Lines of a paragraph as pieces: the first two and the last two lines stay together.
 *
 * @param lines - broken lines
 * @param options - left edge, column width, style, tag and gap above
 * @returns one piece a line
 */
export function paragraphPieces(
  lines: readonly Line[],
  options: {
    readonly x: number;
    readonly width: number;
    readonly style: TextStyle;
    readonly before: number;
    readonly tag: Tag;
    readonly align?: Align;
  },
): readonly Piece[] {
  const { x, width, style, before, tag, align = 'left' } = options;
  return lines.map((line, i) => ({
    before: i === 0 ? before : 0,
    height: style.leading,
    hold: i < lines.length - 1 && (i === 0 || i === lines.length - 2) ? 'strong' : 'free',
    items: placeLine(line, { x, y: 0, width }, style, align, tag),
  }));
}
