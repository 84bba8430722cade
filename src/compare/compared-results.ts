/** What is compared of a results file, and how its names are brought to those of the newer one. */
import { conditionId, roleOfId } from '../model/conditions/condition-roles.js';
import type { FindingSide, VerdictWord } from './comparison.js';

type Three = readonly [number, number, number];
interface Wrench {
  readonly force: Three;
  readonly moment: Three;
}

/** What is compared of a results file. */
export interface ComparedResults {
  readonly input: { readonly sha256: string };
  readonly pump: { readonly mark: string };
  readonly verdict: VerdictWord;
  readonly conditions: Readonly<
    Record<
      string,
      {
        readonly nozzles?: { readonly suction: Wrench; readonly discharge: Wrench } | undefined;
        readonly supports: Readonly<Record<string, Wrench>>;
      }
    >
  >;
  readonly weights: readonly {
    readonly part: string;
    readonly dry: number;
    readonly contents: number;
    readonly insulation: number;
  }[];
  readonly frequencies: readonly number[];
  readonly findings: readonly (FindingSide & {
    readonly check: string;
    readonly at: string;
    readonly condition?: string | undefined;
    readonly unit: string;
    readonly comparison: boolean;
  })[];
  readonly assumptions: readonly { readonly path: string; readonly value: string }[];
}

/** What a support is called now: alone, in a place such as `H3 to H9`, and in the name of the condition it is slack in. */
export function nowCalled(name: string, renamed: ReadonlyMap<string, string> | undefined): string {
  if (!renamed || renamed.size === 0) return name;
  const role = roleOfId(name);
  if (role.kind === 'slack') return conditionId({ ...role, support: nowCalled(role.support, renamed) });
  // All at once: marks may have been swapped.
  const marks = [...renamed.keys()].map((mark) => mark.replace(/[^\w]/gu, '\\$&')).join('|');
  const whole = new RegExp(`(?<![\\w-])(?:${marks})(?![\\w-])`, 'gu');
  return name.replace(whole, (mark) => renamed.get(mark) ?? mark);
}

/** By key; what has the key of an earlier one is numbered. */
export function withoutRepeats<Item>(
  items: readonly Item[],
  keyOf: (item: Item) => string,
): ReadonlyMap<string, Item> {
  const map = new Map<string, Item>();
  for (const item of items) {
    const key = keyOf(item);
    let free = key;
    for (let i = 2; map.has(free); i++) free = `${key}|${i}`;
    map.set(free, item);
  }
  return map;
}
