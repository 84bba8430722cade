/** Changes that a contractor can make, and the work each of them is. */
import type { Coded, CodesFrom, IssueCode } from '../../issues/issue.js';
import type { Edit } from './edit.js';

/** What can be changed. The names are promises: they are used on the command line. */
export const changeKinds = [
  'set-height',
  'spring-setting',
  'rod-size',
  'remove-guide',
  'move-support',
  'add-guide',
  'add-hanger',
  'spring-rate',
  'add-stand',
  'spring-for-rod',
  'lengthen-leg',
] as const;

export type ChangeKind = (typeof changeKinds)[number];

/** Sentences to heed that need no data. */
export type Caution = Extract<CodesFrom<Readonly<Record<never, never>>>, `advise.caution.${string}`>;

/** Sentences that say what to do. */
type ChangeCode = Extract<IssueCode, `advise.${ChangeKind}` | `advise.${ChangeKind}.${string}`>;

/** One change, ready to be made in the file. */
export type Change = Coded<ChangeCode> & {
  readonly kind: ChangeKind;
  /** Mark of the support, or the legs: changed once in an advice. */
  readonly target: string;
  /** The same for the same change, whatever else is changed with it. */
  readonly key: string;
  /** Changes of the file, in order; what else changed before is as it was when they were made. */
  readonly edits: readonly Edit[];
  /** How far: metres moved, or the share of a spring's load or rate that is altered; 0 where it has no size. */
  readonly size: number;
  /** Codes of sentences to heed. */
  readonly cautions: readonly Caution[];
};

/** Work of each kind: something to begin with, and more by how far it goes. */
export interface Effort {
  readonly base: number;
  /** Per unit of `Change.size`. */
  readonly more: number;
}

/**
 * Efforts by common practice, on a scale on which setting one spring is 1: an ordering, not hours. A spring is set with
 * a wrench and shows what it carries; a height that loads hang on has to be measured and kept; a rod is swapped in
 * place; a hanger needs an anchor in the structure; a leg is cut, welded and tested again.
 */
export const usualEffort: Readonly<Record<ChangeKind, Effort>> = {
  'set-height': { base: 2.5, more: 50 },
  'spring-setting': { base: 1, more: 0.5 },
  'rod-size': { base: 2, more: 0.5 },
  'remove-guide': { base: 2, more: 0 },
  'move-support': { base: 3, more: 0.5 },
  'add-guide': { base: 5, more: 0 },
  'add-hanger': { base: 6, more: 0 },
  'spring-rate': { base: 6, more: 0.5 },
  'add-stand': { base: 7, more: 0 },
  'spring-for-rod': { base: 8, more: 0 },
  'lengthen-leg': { base: 30, more: 5 },
};

/** Efforts to begin with that a user puts in the place of the usual ones. */
export type OwnEfforts = Readonly<Partial<Record<ChangeKind, number>>>;

/**
 * The work of some changes.
 *
 * @param changes - changes made together
 * @param own - the user's own efforts
 * @returns sum of their efforts [-]
 */
export function effortOf(changes: readonly Change[], own: OwnEfforts = {}): number {
  return changes.reduce((sum, { kind, size }) => {
    const { base, more } = usualEffort[kind];
    return sum + (own[kind] ?? base) + more * size;
  }, 0);
}
