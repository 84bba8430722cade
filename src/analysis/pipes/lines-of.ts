import type { Subject } from '../subject.js';

/** A line with what was worked out for its parts. */
export interface LineRows<Row> {
  readonly line: string;
  readonly rows: readonly Row[];
}

/**
 * Lines that have pipe in the frame, each once, in the order of the frame, with their rows.
 *
 * @param subject - layout
 * @param rows - rows of all lines
 * @returns lines with the rows that belong to them, none where nothing was worked out
 */
export function linesOf<Row extends { readonly line: string }>(
  { layout }: Subject,
  rows: readonly Row[],
): readonly LineRows<Row>[] {
  const lines = new Set(layout.frame.members.flatMap(({ name }) => layout.memberInfo[name]?.line ?? []));
  return [...lines].map((line) => ({ line, rows: rows.filter((row) => row.line === line) }));
}

/**
 * The place of a part as a reader finds it.
 *
 * @param row - part and line
 * @returns for example `elbow 2, discharge line`
 */
export function placeOnLine(row: { readonly part: string; readonly line: string }): string {
  return `${row.part}, ${row.line}`;
}
