/** One row of what a decision rests on. */
import type { Citation } from '../../sources/index.js';
import type { FieldSubject } from '../judge.js';

/**
 * What a reading keeps from happening, the gravest first: a running pump is stopped and not started again; it is not started;
 * it may run and is not accepted; nothing, it stays on the list.
 */
export type Bars = 'running' | 'start' | 'acceptance' | 'nothing';

/** From the gravest to the least. */
export const GRAVEST_FIRST: readonly Bars[] = ['running', 'start', 'acceptance', 'nothing'];

/** The graver of two. */
export function graver(one: Bars, other: Bars): Bars {
  return GRAVEST_FIRST.indexOf(one) <= GRAVEST_FIRST.indexOf(other) ? one : other;
}

/** A factor on a limit past which it decides whatever its confidence, and more gravely. */
export interface Beyond {
  /** Times the limit [-]; nothing where it is not known for this unit. */
  readonly factor: number | ((subject: FieldSubject) => number | undefined);
  readonly bars: Bars;
  /** Why nobody disputes it, printed beside the reading. */
  readonly why: string;
  readonly citation: Citation;
}

/** One row of the table. */
export interface Requirement {
  /** Id of the judge whose judgements answer it. */
  readonly judge: string;
  /** What a reading that is against its limit keeps from happening. */
  readonly against: Bars;
  /** What is kept from happening as long as it is not known. */
  readonly unknown: Bars;
  /** What is kept from happening where only guidance is passed: written from memory, or a custom. */
  readonly guidance?: Bars;
  /** What is kept from happening by any reading but nought, where nobody says how much is allowed and nothing is predicted. */
  readonly unlimited?: Bars;
  readonly beyond?: Beyond;
}

/** Whether it keeps the pump from being started: what stops a running pump does so too. */
export function keepsFromStart(bars: Bars): boolean {
  return bars === 'running' || bars === 'start';
}
