/** Compares two walks: parts in order, straight pipe between them, supports by mark, renamed or moved. */
import { align } from './align.js';
import { compareMaps, compareValues } from './compare-maps.js';
import type { InputChange } from './comparison.js';
import { entryOf, isMap, listOf, sameData, written } from './plain.js';
import {
  type LooseSupport,
  lengthOf,
  type Stations,
  type Support,
  sameRun,
  stationSide,
  stationsOf,
  type WalkPart,
} from './stations.js';

export interface ComparedWalk {
  readonly changes: readonly InputChange[];
  /** New mark by old mark. */
  readonly renamed: ReadonlyMap<string, string>;
  /** Supports without a counterpart in this walk. */
  readonly loose: { readonly before: readonly LooseSupport[]; readonly after: readonly LooseSupport[] };
}

type Pairs = readonly (readonly [number, number])[];

/**
 * Compares two walks.
 *
 * @param before - steps of the older file
 * @param after - steps of the newer
 * @param line - what the line is called
 * @returns changes, renamed supports, and supports that are in one of them only
 */
export function compareWalks(
  before: readonly unknown[],
  after: readonly unknown[],
  line: string,
): ComparedWalk {
  const [old, now] = [stationsOf(before), stationsOf(after)];
  const pairs = alignEitherWay(old.parts, now.parts);
  const inner: ComparedWalk[] = [];
  const changes = [...partChanges(old, now, pairs, line, inner), ...runChanges(old, now, pairs, line)];
  const supports = compareSupports(old, now, pairs, line);
  const all = [{ ...supports, changes: [...changes, ...supports.changes] }, ...inner];
  return {
    changes: all.flatMap((walk) => walk.changes),
    renamed: new Map(all.flatMap((walk) => [...walk.renamed])),
    loose: {
      before: all.flatMap((walk) => walk.loose.before),
      after: all.flatMap((walk) => walk.loose.after),
    },
  };
}

/** Aligned in an order that does not depend on which file is the older, so that the way back is the mirror image. */
function alignEitherWay(before: readonly WalkPart[], after: readonly WalkPart[]): Pairs {
  if (JSON.stringify(before) <= JSON.stringify(after)) return align(before, after, costOf);
  return align(after, before, costOf).map(([j, i]) => [i, j] as const);
}

/** The same part costs nothing, one of its kind that was changed a little, one of another kind is no counterpart. */
function costOf(one: WalkPart, other: WalkPart): number {
  if (one.kind !== other.kind) return Number.POSITIVE_INFINITY;
  const change = sameData(one.value, other.value) ? 0 : 0.8;
  // Of two equal valves the one with the same pipe before it is meant.
  return change + (sameRun(one.before, other.before) ? 0 : 0.1);
}

function partChanges(
  old: Stations,
  now: Stations,
  pairs: Pairs,
  line: string,
  inner: ComparedWalk[],
): readonly InputChange[] {
  const changes: InputChange[] = [];
  for (const [i, j] of pairs) {
    const [one, other] = [old.parts[i], now.parts[j]];
    if (!one || !other) continue;
    const place = [line, other.name];
    const [side, otherSide] = [entryOf(one.value, 'side'), entryOf(other.value, 'side')];
    if (isMap(side) && isMap(otherSide)) {
      compareMaps(one.value, other.value, place, changes, ['side']);
      compareMaps(side, otherSide, [...place, 'side'], changes, ['walk']);
      const walks = [side, otherSide].map((leg) => listOf(entryOf(leg, 'walk')));
      inner.push(compareWalks(walks[0] ?? [], walks[1] ?? [], `${line}, side of ${other.name}`));
    } else compareValues(one.value, other.value, place, changes);
  }
  const lonely = (parts: readonly WalkPart[], side: 0 | 1) =>
    parts.filter((_, at) => !pairs.some((pair) => pair[side] === at));
  for (const { name, value } of lonely(old.parts, 0))
    changes.push({ kind: 'removed', place: [line, name], before: { kind: 'text', text: written(value) } });
  for (const { name, value } of lonely(now.parts, 1))
    changes.push({ kind: 'added', place: [line, name], after: { kind: 'text', text: written(value) } });
  return changes;
}

/** Straight pipe between two parts that both files have; where a part came between, all of it together. */
function runChanges(old: Stations, now: Stations, pairs: Pairs, line: string): readonly InputChange[] {
  const changes: InputChange[] = [];
  let [lastOld, lastNow] = [-1, -1];
  for (const [i, j] of pairs) {
    const runs = old.parts.slice(lastOld + 1, i + 1).flatMap((part) => part.before);
    const runsNow = now.parts.slice(lastNow + 1, j + 1).flatMap((part) => part.before);
    if (!sameRun(runs, runsNow)) {
      const from = now.parts[lastNow]?.name ?? 'the pump';
      changes.push({
        kind: 'changed',
        place: [line, `straight pipe from ${from} to ${now.parts[j]?.name ?? 'the end'}`],
        before: { kind: 'length', value: lengthOf(runs) },
        after: { kind: 'length', value: lengthOf(runsNow) },
      });
    }
    [lastOld, lastNow] = [i, j];
  }
  return changes;
}

function compareSupports(old: Stations, now: Stations, pairs: Pairs, line: string): ComparedWalk {
  const changes: InputChange[] = [];
  const renamed = new Map<string, string>();
  const counterpart = new Map(pairs.map(([i, j]) => [i, j]));
  counterpart.set(-1, -1);
  const past = ({ parts }: Stations, support: Support): string => parts[support.past]?.name ?? 'the pump';
  const stands = (one: Support, other: Support): boolean =>
    counterpart.get(one.past) === other.past && sameRun(one.run, other.run);
  const open = { before: [...old.supports], after: [...now.supports] };
  const pair = (one: Support, other: Support): void => {
    open.before = open.before.filter((support) => support !== one);
    open.after = open.after.filter((support) => support !== other);
    const place = [line, other.mark];
    if (one.mark !== other.mark) {
      renamed.set(one.mark, other.mark);
      const [before, after] = [one.mark, other.mark].map((mark) => ({ kind: 'text', text: mark }) as const);
      changes.push({ kind: 'renamed', place, ...(before && { before }), ...(after && { after }) });
    }
    if (!stands(one, other)) {
      const [before, after] = [stationSide(one, past(old, one)), stationSide(other, past(now, other))];
      changes.push({ kind: 'moved', place, before, after });
    }
    if (one.kind !== other.kind) {
      const [before, after] = [one.kind, other.kind].map((kind) => ({ kind: 'text', text: kind }) as const);
      changes.push({
        kind: 'changed',
        place: [...place, 'kind'],
        ...(before && { before }),
        ...(after && { after }),
      });
    }
    compareMaps(one.value, other.value, place, changes, ['mark']);
  };
  for (const other of now.supports) {
    const one = open.before.find(({ mark }) => mark === other.mark);
    if (one) pair(one, other);
  }
  // What stands in the same place and holds in the same way was given another mark; what is left, in order.
  for (const other of [...open.after]) {
    const one = open.before.find((support) => support.kind === other.kind && stands(support, other));
    if (one) pair(one, other);
  }
  for (const other of [...open.after]) {
    const same = open.before.filter(
      (support) =>
        support.kind === other.kind &&
        sameData({ ...asMap(support.value), mark: '' }, { ...asMap(other.value), mark: '' }),
    );
    if (same.length === 1 && same[0] && open.before.length === open.after.length) pair(same[0], other);
  }
  const loose = (supports: readonly Support[], stations: Stations): readonly LooseSupport[] =>
    supports.map((support) => ({ line, support, past: past(stations, support) }));
  return { changes, renamed, loose: { before: loose(open.before, old), after: loose(open.after, now) } };
}

const asMap = (value: unknown) => (isMap(value) ? value : {});
