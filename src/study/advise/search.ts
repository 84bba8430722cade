/**
 * The search: every single change first, then pairs and more, led by what single changes did to what is still wrong.
 * The same file gives the same advice, however many trials run side by side.
 */
import type { OpenedFile } from '../../input/open-for-trials.js';
import { allChanges, type Kept } from './all-changes.js';
import { type Change, effortOf, type OwnEfforts } from './change.js';
import type { Edit } from './edit.js';
import type { ScreenOutcome, ScreenPlan } from './screen.js';
import { changedSituation, type Situation } from './situation.js';

/** How trials are run; the caller decides where. */
export interface Trials {
  /** Quick looks, in the order asked. */
  readonly screenMany: (
    plan: ScreenPlan,
    chains: readonly (readonly Edit[])[],
  ) => Promise<readonly (ScreenOutcome | undefined)[]>;
  /** Told how many trials have been made, and how many ways out were found. */
  readonly onProgress?: (trials: number, found: number) => void;
  readonly isCancelled?: () => boolean;
}

/** What to search for. */
export interface SearchOptions {
  /** Most changes made together. */
  readonly changes: number;
  /** Most trials. */
  readonly trials: number;
  readonly kept: Kept;
  readonly efforts: OwnEfforts;
}

/** Some changes made together, and what a look at them saw. */
export interface Combination {
  readonly changes: readonly Change[];
  readonly effort: number;
  readonly outcome: ScreenOutcome;
}

/** What a search gave. */
export interface SearchResult {
  /** Combinations after which nothing that a look sees exceeds, by growing effort. */
  readonly solved: readonly Combination[];
  /** The others, those that leave least first. */
  readonly partial: readonly Combination[];
  readonly trials: number;
  readonly ended: 'done' | 'cancelled' | 'out of trials';
}

/** How many combinations are taken further at each number of changes. */
const BEAM = [1, 10, 8, 6, 6];
/** How many further changes each of them is tried with. */
const FURTHER = 50;
/** Trials between two looks at whether the search was cancelled. */
const BATCH = 64;
/** A way out is looked for with one change more while the least found takes more than this for each of its changes, */
const CHEAP = 2;
/** and fewer sorts of way than this were found. */
const ENOUGH_SORTS = 3;

/**
 * Searches for changes after which nothing exceeds.
 *
 * @param opened - the file
 * @param plan - what a trial looks at
 * @param base - what a look at the file itself saw
 * @param options - how far to search
 * @param run - how trials are run
 * @returns what was found
 */
export async function search(
  opened: OpenedFile,
  plan: ScreenPlan,
  base: ScreenOutcome,
  options: SearchOptions,
  run: Trials,
): Promise<SearchResult> {
  const { kept, efforts } = options;
  let trials = 0;
  let ended: SearchResult['ended'] = 'done';
  const all: Combination[] = [];
  const solved = () => all.filter(isSolved);

  const tryAll = async (wanted: readonly (readonly Change[])[]): Promise<readonly Combination[]> => {
    const found: Combination[] = [];
    for (let at = 0; at < wanted.length && ended === 'done'; at += BATCH) {
      const room = options.trials - trials;
      const batch = wanted.slice(at, at + Math.min(BATCH, room));
      const chains = batch.map((changes) => changes.flatMap(({ edits }) => edits));
      const outcomes = await run.screenMany(plan, chains);
      batch.forEach((changes, index) => {
        const outcome = outcomes[index];
        if (outcome) found.push({ changes, effort: effortOf(changes, efforts), outcome });
      });
      trials += batch.length;
      run.onProgress?.(trials, solved().length + found.filter(isSolved).length);
      if (run.isCancelled?.() === true) ended = 'cancelled';
      else if (batch.length < BATCH && batch.length === room) ended = 'out of trials';
    }
    all.push(...found);
    return found;
  };

  const start: Combination = { changes: [], effort: 0, outcome: base };
  const singles = await tryAll(changesFrom(opened, start, kept).map((change) => [change]));
  const known = new Map(singles.map((single) => [single.changes[0]?.key ?? '', single.outcome]));
  let level = singles;
  for (let count = 2; count <= options.changes && ended === 'done'; count += 1) {
    const least = Math.min(...solved().map(({ effort }) => effort));
    if (least <= CHEAP * count || distinct(solved()).length >= ENOUGH_SORTS) break;
    const beam = distinct(level.filter((one) => !isSolved(one)).sort(byWhatIsLeft)).slice(
      0,
      BEAM[count - 1] ?? BEAM.at(-1),
    );
    const seen = new Set<string>();
    const further = beam.flatMap((from) =>
      furtherChanges(opened, from, base, known, options)
        .map((change) => [...from.changes, change])
        .filter((changes) => {
          const key = changes
            .map((change) => change.key)
            .sort()
            .join('\n');
          return !seen.has(key) && seen.add(key);
        }),
    );
    level = await tryAll(further);
  }
  return {
    solved: solved().sort(byEffort),
    partial: all.filter((one) => !isSolved(one)).sort(byWhatIsLeft),
    trials,
    ended,
  };
}

/** Whether nothing that was looked at exceeds, and nothing got worse. */
export function isSolved({ outcome }: Combination): boolean {
  return Object.keys(outcome.excess).length === 0 && outcome.worse.length === 0;
}

/**
 * Every change from where some changes have led.
 *
 * @param opened - the file
 * @param from - changes made so far, and what a look at them saw
 * @param kept - what must stay as it is
 * @param extra - further distances to move supports by [m]
 * @returns changes, always in the same order
 */
export function changesFrom(
  opened: OpenedFile,
  from: Combination,
  kept: Kept,
  extra: readonly number[] = [],
): readonly Change[] {
  const changed = changedSituation(
    opened,
    from.changes.flatMap(({ edits }) => edits),
  );
  if (changed === undefined) return [];
  const situation: Situation = { ...changed, filled: from.outcome.filled };
  return allChanges(situation, opened, kept, extra);
}

/** Changes that, made alone, made smaller what is still wrong; and those of supports named in what is wrong. */
function furtherChanges(
  opened: OpenedFile,
  from: Combination,
  base: ScreenOutcome,
  known: ReadonlyMap<string, ScreenOutcome>,
  { kept, efforts }: SearchOptions,
): readonly Change[] {
  const taken = new Set(from.changes.flatMap(({ target, data }) => [target, String(data.mark ?? target)]));
  const wrong = [...Object.keys(from.outcome.excess), ...from.outcome.worse];
  const names = new Set(wrong.map((key) => key.split(' | ')[1]?.split(' ')[0]));
  const gainOf = (change: Change): number => {
    const outcome = known.get(change.key);
    const isNamed = names.has(String(change.data.mark));
    if (outcome === undefined) return isNamed ? 1 : 0;
    const gain = wrong.reduce((sum, key) => sum + (base.excess[key] ?? 0) - (outcome.excess[key] ?? 0), 0);
    return isNamed ? Math.max(gain, 0.01) : gain;
  };
  return changesFrom(opened, from, kept)
    .filter(({ target, kind, data }) => !taken.has(target) && !(taken.has(String(data.mark)) && !isRod(kind)))
    .map((change) => ({ change, gain: gainOf(change) }))
    .filter(({ gain }) => gain > 1e-6)
    .sort(
      (a, b) =>
        b.gain / (1 + effortOf([b.change], efforts)) - a.gain / (1 + effortOf([a.change], efforts)) ||
        byText(a.change.key, b.change.key),
    )
    .slice(0, FURTHER)
    .map(({ change }) => change);
}

/** A rod is made larger also where the support was moved. */
function isRod(kind: Change['kind']): boolean {
  return kind === 'rod-size';
}

/** What is left wrong, and a little for the work: of two that mend as much, the easier one is taken further. */
function leftOf({ outcome, effort }: Combination): number {
  const told = Object.values(outcome.excess).reduce((sum, excess) => sum + Math.min(excess, 3), 0);
  return told + 0.5 * outcome.worse.length + 0.004 * effort;
}

function byWhatIsLeft(a: Combination, b: Combination): number {
  return leftOf(a) - leftOf(b) || byText(keyOf(a), keyOf(b));
}

/** Less effort first; of the same effort, what leaves more in hand. */
export function byEffort(a: Combination, b: Combination): number {
  return a.effort - b.effort || a.outcome.tightest - b.outcome.tightest || byText(keyOf(a), keyOf(b));
}

function keyOf({ changes }: Combination): string {
  return changes.map(({ key }) => key).join('\n');
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * The first combination of each sort: the same kinds of change of the same supports count as one.
 *
 * @param combinations - in the order of preference
 * @returns one of each sort, in the same order
 */
export function distinct(combinations: readonly Combination[]): readonly Combination[] {
  const sorts = new Map<string, Combination>();
  for (const one of combinations) {
    const sort = one.changes.map(sortOf).sort().join('\n');
    if (!sorts.has(sort)) sorts.set(sort, one);
  }
  return [...sorts.values()];
}

/** Kind and support; a new support counts as the same along the whole of its stretch. */
function sortOf({ kind, target, size, key }: Change): string {
  if (kind.startsWith('add-')) return `${kind} ${target.split(' ').slice(0, 2).join(' ')}`;
  return `${kind} ${target}${size > 0 && / -\d+$/.test(key) ? ' back' : ''}`;
}
