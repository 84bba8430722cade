import type { Subject } from './finding.js';

/**
 * Lines that have pipe in the frame, each once, in the order of the frame.
 *
 * @param subject - layout
 * @returns names of lines
 */
export function linesOf({ layout }: Subject): readonly string[] {
  return [...new Set(layout.frame.members.flatMap(({ name }) => layout.memberInfo[name]?.line ?? []))];
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
