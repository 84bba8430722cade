/** What changed between two inputs: by line, walk, mark and path; another unit or another order of keys is no change. */
import { compareMaps } from './compare-maps.js';
import { compareWalks } from './compare-walks.js';
import type { InputChange } from './comparison.js';
import { entryOf, listOf } from './plain.js';
import { type LooseSupport, leftOver } from './stations.js';

/** Changes of the input, and what supports are called now by what they were called. */
export interface ComparedInputs {
  readonly changes: readonly InputChange[];
  readonly renamed: ReadonlyMap<string, string>;
}

/**
 * Compares two inputs.
 *
 * @param before - content of the older file, plain data
 * @param after - content of the newer
 * @returns changes in the order of the newer file
 */
export function compareInputs(before: unknown, after: unknown): ComparedInputs {
  const changes: InputChange[] = [];
  const renamed = new Map<string, string>();
  const loose: { before: LooseSupport[]; after: LooseSupport[] } = { before: [], after: [] };
  const compareLines = (): void => {
    const [old, now] = [before, after].map((file) => listOf(entryOf(entryOf(file, 'piping'), 'lines')));
    for (const from of ['suction', 'discharge']) {
      const [one, other] = [old, now].map((lines) => lines?.find((line) => entryOf(line, 'from') === from));
      if (one === undefined && other === undefined) continue;
      const name = String(entryOf(other, 'name') ?? entryOf(one, 'name') ?? `${from} line`);
      if (one === undefined || other === undefined) {
        changes.push({ kind: one === undefined ? 'added' : 'removed', place: [name] });
        continue;
      }
      compareMaps(one, other, [name], changes, ['walk', 'from']);
      const walk = compareWalks(listOf(entryOf(one, 'walk')), listOf(entryOf(other, 'walk')), name);
      changes.push(...walk.changes);
      for (const [mark, now] of walk.renamed) renamed.set(mark, now);
      loose.before.push(...walk.loose.before);
      loose.after.push(...walk.loose.after);
    }
  };
  compareMaps(before, after, [], changes, ['format', 'piping']);
  compareMaps(entryOf(before, 'piping'), entryOf(after, 'piping'), ['piping'], changes, ['lines']);
  compareLines();
  changes.push(...leftOver(loose.before, loose.after));
  return { changes: changes.filter(({ place }) => place.length > 0), renamed };
}
