/** Keys of the maps of a document: each once, and not more than a description could have. */
import { type Document, isScalar, visit } from 'yaml';

/** Most keys of one map; a file of readings has one for each box of its sheet. */
export const MOST_KEYS = 10_000;
/** Longest key shown in a message. */
const LONGEST_SHOWN = 60;

/** A key that stands again where it stood before [characters from the start of the file]. */
export interface RepeatedKey {
  readonly key: string;
  readonly first: number;
  readonly again: number;
}

/** What the keys of a document are like. */
export interface KeysOfMaps {
  readonly repeated: readonly RepeatedKey[];
  /** Where the first map with too many keys begins, and how many it has. */
  readonly tooMany?: { readonly offset: number; readonly found: number };
}

/**
 * Looks through the maps of a document once, in time that grows as their keys do.
 *
 * @param document - as read, with repeated keys still in it [-]
 * @returns repeated keys in the order of the file, and a map that has too many [-]
 */
export function keysOfMaps(document: Document): KeysOfMaps {
  const repeated: RepeatedKey[] = [];
  let tooMany: KeysOfMaps['tooMany'];
  visit(document, {
    Map: (_at, map) => {
      if (map.items.length > MOST_KEYS) {
        tooMany = { offset: map.range?.[0] ?? 0, found: map.items.length };
        return visit.BREAK;
      }
      const seen = new Map<string, number>();
      for (const { key } of map.items) {
        if (!isScalar(key)) continue;
        const offset = key.range?.[0] ?? 0;
        // What becomes one key of an object is one key here, whether written as text or as a number.
        const name = String(key.value);
        const first = seen.get(name);
        if (first === undefined) seen.set(name, offset);
        else repeated.push({ key: name.slice(0, LONGEST_SHOWN), first, again: offset });
      }
      return undefined;
    },
  });
  return { repeated, ...(tooMany && { tooMany }) };
}
