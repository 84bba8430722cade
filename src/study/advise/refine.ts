/** What was found, made smaller: changes that are not needed left out, nothing moved, set or enlarged more than needed. */
import type { OpenedFile } from '../../input/open-for-trials.js';
import type { Change } from './change.js';
import { effortOf } from './change.js';
import type { ScreenOutcome, ScreenPlan } from './screen.js';
import { type Combination, changesFrom, isSolved, type SearchOptions, type Trials } from './search.js';
import { unitsOfFile } from './units-of-file.js';

/** Kinds whose size is a length that may be any number of steps. */
const BY_STEPS: readonly Change['kind'][] = ['move-support', 'lengthen-leg'];

/**
 * Makes a combination smaller while it still solves everything.
 *
 * @param opened - the file
 * @param plan - what a trial looks at
 * @param base - what a look at the file itself saw
 * @param found - the combination
 * @param options - what must stay, and efforts
 * @param run - how trials are run
 * @returns the smallest that was found, looked at by the same plan; undefined where not even `found` solves by it
 */
export async function refine(
  opened: OpenedFile,
  plan: ScreenPlan,
  base: ScreenOutcome,
  found: Combination,
  options: SearchOptions,
  run: Trials,
): Promise<Combination | undefined> {
  const look = async (wanted: readonly (readonly Change[])[]): Promise<readonly Combination[]> => {
    const outcomes = await run.screenMany(
      plan,
      wanted.map((changes) => changes.flatMap(({ edits }) => edits)),
    );
    return wanted.flatMap((changes, index) => {
      const outcome = outcomes[index];
      return outcome ? [{ changes, effort: effortOf(changes, options.efforts), outcome }] : [];
    });
  };
  const [first] = await look([found.changes]);
  if (first === undefined || !isSolved(first)) return undefined;
  let best = first;
  for (let at = 0; best.changes.length > 1 && at < best.changes.length; ) {
    const others = remade(opened, base, best.changes.map(({ key }) => key).toSpliced(at, 1), options);
    const [without] = others === undefined ? [] : await look([others]);
    if (without !== undefined && isSolved(without)) best = without;
    else at += 1;
  }
  const { step } = unitsOfFile(opened.installation.review.units);
  for (const [at, change] of best.changes.entries()) {
    const before = best.changes.slice(0, at);
    const steps = BY_STEPS.includes(change.kind) ? Math.round(change.size / step) - 1 : 0;
    const sizes = Array.from({ length: Math.min(steps, MOST_STEPS) }, (_, index) => (steps - index) * step);
    const smaller = changesFrom(opened, { changes: before, effort: 0, outcome: base }, options.kept, sizes)
      .filter((other) => isAlike(other, change) && other.size < change.size - 1e-9)
      .flatMap(({ key }) => {
        const keys = best.changes.map((one) => one.key).with(at, key);
        const changes = remade(opened, base, keys, options, sizes);
        return changes === undefined ? [] : [changes];
      });
    const enough = Math.max(IN_HAND, best.outcome.tightest);
    const looked = (await look(smaller)).filter(
      (one) => isSolved(one) && one.outcome.tightest <= enough + 1e-9,
    );
    best = looked.reduce((least, next) => (next.effort < least.effort ? next : least), best);
  }
  return best;
}

/** Nothing is moved so little that what it mends is left nearer to its limit than this: a clamp an inch off undoes it. */
const IN_HAND = 0.97;
/** Steps back that are tried. */
const MOST_STEPS = 8;

/** Whether two changes do the same to the same support, one more of it than the other. */
function isAlike(one: Change, other: Change): boolean {
  const isBack = ({ key }: Change) => / -\d+$/.test(key);
  return one.kind === other.kind && one.target === other.target && isBack(one) === isBack(other);
}

/** The changes of some keys, made one after the other from the file. */
function remade(
  opened: OpenedFile,
  base: ScreenOutcome,
  keys: readonly string[],
  { kept }: SearchOptions,
  extra: readonly number[] = [],
): readonly Change[] | undefined {
  const changes: Change[] = [];
  for (const key of keys) {
    const from = { changes, effort: 0, outcome: base };
    const next = changesFrom(opened, from, kept, extra).find((change) => change.key === key);
    if (next === undefined) return undefined;
    changes.push(next);
  }
  return changes;
}
