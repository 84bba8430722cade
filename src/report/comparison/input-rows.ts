import type { InputChange, Side } from '../../compare/comparison.js';
import type { Writer } from '../writer.js';

/** One change of the input as printed. */
export interface InputRow {
  /** Part of the file: a line, the pump, the room. */
  readonly group: string;
  readonly place: string;
  readonly kind: string;
  readonly before: string;
  readonly after: string;
}

/**
 * Changes of the input as printed.
 *
 * @param changes - changes
 * @param write - writer
 * @returns rows in the same order
 */
export function inputRows(changes: readonly InputChange[], write: Writer): readonly InputRow[] {
  return changes.map(({ kind, place, before, after }) => {
    const [group = '', ...rest] = place;
    return {
      group,
      place: rest.join(', ') || 'all of it',
      kind,
      before: sideText(before, write),
      after: sideText(after, write),
    };
  });
}

function sideText(side: Side | undefined, write: Writer): string {
  if (side === undefined) return '–';
  if (side.kind === 'text') return side.text;
  if (side.kind === 'length') return write.distance(side.value);
  return `${write.distance(side.value)} past ${side.past}${side.line === undefined ? '' : `, ${side.line}`}`;
}
