/** Compares maps of a file key by key, and lists by what their entries are called. */
import type { InputChange, Side } from './comparison.js';
import { entryOf, isMap, type PlainMap, sameData, written } from './plain.js';

const text = (value: unknown): Side => ({ kind: 'text', text: written(value) });

/**
 * Compares two maps.
 *
 * @param before - map of the older file, if there
 * @param after - map of the newer, if there
 * @param place - where they stand
 * @param changes - receives the changes
 * @param leftOut - keys that are compared elsewhere
 */
export function compareMaps(
  before: unknown,
  after: unknown,
  place: readonly string[],
  changes: InputChange[],
  leftOut: readonly string[] = [],
): void {
  const keysOf = (value: unknown): readonly string[] => (isMap(value) ? Object.keys(value) : []);
  const keys = new Set([...keysOf(after), ...keysOf(before)]);
  for (const key of keys) {
    if (leftOut.includes(key)) continue;
    compareValues(entryOf(before, key), entryOf(after, key), [...place, key], changes);
  }
}

/** Compares what two files hold in one place. */
export function compareValues(
  before: unknown,
  after: unknown,
  place: readonly string[],
  changes: InputChange[],
): void {
  if (before === undefined && after === undefined) return;
  if (before === undefined) changes.push({ kind: 'added', place, after: text(after) });
  else if (after === undefined) changes.push({ kind: 'removed', place, before: text(before) });
  else if (isMap(before) && isMap(after)) compareMaps(before, after, place, changes);
  else if (Array.isArray(before) && Array.isArray(after)) compareLists(before, after, place, changes);
  else if (!sameData(before, after))
    changes.push({ kind: 'changed', place, before: text(before), after: text(after) });
}

/** What an entry of a list is called: by its mark, its name, or what it is for and where. */
function nameOf(entry: PlainMap): string | undefined {
  const at = entryOf(entry, 'at');
  const named = entryOf(entry, 'mark') ?? entryOf(entry, 'name');
  if (named !== undefined) return String(named);
  const purpose = entryOf(entry, 'purpose');
  if (purpose === undefined) return undefined;
  return typeof at === 'string' ? `${purpose} at ${at}` : String(purpose);
}

function compareLists(
  before: readonly unknown[],
  after: readonly unknown[],
  place: readonly string[],
  changes: InputChange[],
): void {
  const named = (list: readonly unknown[]): ReadonlyMap<string, unknown> | undefined => {
    const entries = list.map((entry) => [isMap(entry) ? nameOf(entry) : undefined, entry] as const);
    const names = new Set(entries.map(([name]) => name));
    const isSound = !names.has(undefined) && names.size === list.length;
    return isSound ? new Map(entries.map(([name, entry]) => [String(name), entry])) : undefined;
  };
  const [old, now] = [named(before), named(after)];
  if (old && now) {
    for (const name of new Set([...now.keys(), ...old.keys()]))
      compareValues(old.get(name), now.get(name), [...place, name], changes);
    return;
  }
  if (before.length === after.length && [...before, ...after].every(isMap)) {
    before.forEach((entry, i) => {
      compareValues(entry, after[i], [...place, String(i + 1)], changes);
    });
  } else if (!sameData(before, after))
    changes.push({ kind: 'changed', place, before: text(before), after: text(after) });
}
