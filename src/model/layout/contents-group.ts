import type { Part } from '../../input/installation.js';

/** Valves that can be shut to isolate the pump; a check valve or a strainer cannot. */
const SHUTS: readonly string[] = ['gate', 'globe', 'butterfly', 'ball', 'plug', 'multi-purpose', 'balancing'];

/**
 * Tells whether a part can shut the line.
 *
 * @param part - any part
 * @returns true for a valve whose kind is one that shuts, or of which the file says so
 * @source common-practice
 */
export function canShut(part: Part): boolean {
  return part.kind === 'valve' && (part.shuts ?? SHUTS.some((kind) => part.valve.includes(kind)));
}

/**
 * Name of the group whose contents drain or stay together: the stretch between the pump and the first valve that
 * shuts, and the rest of the line behind it. The valve itself belongs to what stays full.
 *
 * @param line - name of the line
 * @param shut - true from the first valve that shuts onward
 * @returns the group
 */
export function contentsGroup(line: string, shut: boolean): string {
  return shut ? line : `${line}, pump side`;
}
