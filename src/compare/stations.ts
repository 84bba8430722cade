/** A walk as its parts, with the straight pipe between them, and the supports by how far past a part they stand. */

import { writtenLength } from '../input/written-value.js';
import { SUPPORT_KINDS } from '../model/support-parts.js';
import type { InputChange, Side } from './comparison.js';
import { entryOf, isMap, sameData, written } from './plain.js';

/** A part that is neither straight pipe nor a support of its own. */
export interface WalkPart {
  readonly kind: string;
  /** Kind and number along the walk: `elbow 2`. */
  readonly name: string;
  readonly value: unknown;
  /** Straight lengths before it, as written. */
  readonly before: readonly unknown[];
}

export interface Support {
  readonly kind: string;
  readonly mark: string;
  readonly value: unknown;
  /** Place among the parts of the part it stands past; -1 at the pump. */
  readonly past: number;
  /** Straight lengths from there, as written. */
  readonly run: readonly unknown[];
}

/** A support that the walk of the other file does not have. */
export interface LooseSupport {
  readonly line: string;
  readonly support: Support;
  readonly past: string;
}

export interface Stations {
  readonly parts: readonly WalkPart[];
  readonly supports: readonly Support[];
}

/**
 * Takes a walk apart.
 *
 * @param walk - steps as the file writes them
 * @returns parts and supports, in order
 */
export function stationsOf(walk: readonly unknown[]): Stations {
  const parts: WalkPart[] = [];
  const supports: Support[] = [];
  const counts = new Map<string, number>();
  let run: unknown[] = [];
  for (const step of walk) {
    const [kind = 'step', value] = isMap(step) ? (Object.entries(step)[0] ?? []) : [];
    if (kind === 'straight') {
      run.push(value);
      continue;
    }
    const mark = entryOf(value, 'mark');
    if (SUPPORT_KINDS.has(kind) && mark !== undefined) {
      supports.push({ kind, mark: String(mark), value, past: parts.length - 1, run: [...run] });
      continue;
    }
    const count = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, count);
    parts.push({ kind, name: kind === 'end' ? 'end' : `${kind} ${count}`, value, before: run });
    run = [];
  }
  return { parts, supports };
}

/** Length of straight pieces together [m]. */
export const lengthOf = (run: readonly unknown[]): number =>
  run.reduce<number>((sum, piece) => sum + (writtenLength(piece) ?? 0), 0);

/** Half a millimetre: what arithmetic and rounding of several pieces may add up to. */
const SAME_LENGTH = 5e-4;

/** Whether two runs of straight pipe are as long; cut otherwise they are still the same run. */
export const sameRun = (before: readonly unknown[], after: readonly unknown[]): boolean =>
  Math.abs(lengthOf(before) - lengthOf(after)) <= SAME_LENGTH ||
  (before.length === after.length && before.every((piece, i) => sameData(piece, after[i])));

/** Where a support stands. */
export const stationSide = (support: Support, past: string, line?: string): Side => ({
  kind: 'station',
  past,
  value: lengthOf(support.run),
  ...(line !== undefined && { line }),
});

/**
 * What became of supports that are in one file only: gone to another line, taken out, or put in.
 *
 * @param before - supports only the older file has
 * @param after - supports only the newer has
 * @returns changes
 */
export function leftOver(
  before: readonly LooseSupport[],
  after: readonly LooseSupport[],
): readonly InputChange[] {
  const moved = after.flatMap((now) => {
    const old = before.find(({ support }) => support.mark === now.support.mark);
    return old ? [{ old, now }] : [];
  });
  return [
    ...moved.map(
      ({ old, now }): InputChange => ({
        kind: 'moved',
        place: [now.line, now.support.mark],
        before: stationSide(old.support, old.past, old.line),
        after: stationSide(now.support, now.past, now.line),
      }),
    ),
    ...before
      .filter((one) => !moved.some(({ old }) => old === one))
      .map(
        ({ line, support }): InputChange => ({
          kind: 'removed',
          place: [line, support.mark],
          before: { kind: 'text', text: `${support.kind} ${written(support.value)}` },
        }),
      ),
    ...after
      .filter((one) => !moved.some(({ now }) => now === one))
      .map(
        ({ line, support }): InputChange => ({
          kind: 'added',
          place: [line, support.mark],
          after: { kind: 'text', text: `${support.kind} ${written(support.value)}` },
        }),
      ),
  ];
}
