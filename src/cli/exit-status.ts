/**
 * Exit statuses: a promise to scripts. Over several files the worst one wins, in the order of `worstFirst`.
 */

import type { Verdict } from '../index.js';
import type { IssueCode } from '../issues/issue.js';

/** Every status the process can end with, by meaning. */
export const exitStatus = {
  /** Everything that could be judged meets its limit. */
  meets: 0,
  /** Something exceeds its limit. */
  exceeds: 1,
  /** The input or the arguments cannot be used. */
  unusable: 2,
  /** Something could not be read or written. */
  fileTrouble: 3,
  /** Nothing exceeds, but something cannot be told. */
  cannotTell: 4,
  /** A fault of the program itself. 70 is the custom of the operating system for it. */
  ourFault: 70,
} as const;

export type ExitStatus = (typeof exitStatus)[keyof typeof exitStatus];

const worstFirst: readonly ExitStatus[] = [
  exitStatus.ourFault,
  exitStatus.fileTrouble,
  exitStatus.unusable,
  exitStatus.exceeds,
  exitStatus.cannotTell,
  exitStatus.meets,
];

/**
 * The one status that stands for several files.
 *
 * @param statuses - one status a file
 * @returns the first of 70, 3, 2, 1, 4, 0 that occurs; 0 for an empty list
 */
export function worstStatus(statuses: readonly ExitStatus[]): ExitStatus {
  return worstFirst.find((status) => statuses.includes(status)) ?? exitStatus.meets;
}

const STATUS = {
  meets: exitStatus.meets,
  exceeds: exitStatus.exceeds,
  'cannot-tell': exitStatus.cannotTell,
  'does-not-apply': exitStatus.cannotTell,
} as const satisfies Record<Verdict, ExitStatus>;

/**
 * Status for the verdict of a review. A review in which nothing applies has judged nothing, which is no pass.
 *
 * @param verdict - verdict of the whole review
 * @returns 0, 1 or 4
 */
export function statusOfVerdict(verdict: Verdict): ExitStatus {
  return STATUS[verdict];
}

/**
 * Status for an error with a code: reading and writing is 3, everything else is the input's or the arguments'.
 *
 * @param code - code of an issue or an engine error
 * @returns 2 or 3
 */
export function statusOfCode(code: IssueCode): ExitStatus {
  return /^cli\.(read|write)\./.test(code) ? exitStatus.fileTrouble : exitStatus.unusable;
}
