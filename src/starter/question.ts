/** What a question is that a new file is made from. */
import type { Dimension, UnitSystem } from '../units/index.js';

/** How the pump stands in its pipe. */
export const ARRANGEMENTS = ['elbows', 'riser', 'header', 'base'] as const;
export type Arrangement = (typeof ARRANGEMENTS)[number];

/** What may be answered. */
export type AnswerKind =
  | { readonly is: 'choice'; readonly choices: readonly Choice[] }
  | { readonly is: 'quantity'; readonly dimension: Dimension }
  | { readonly is: 'insulation' | 'size' | 'text' | 'day' };

export interface Choice {
  readonly value: string;
  /** What it means, where the word does not say it. */
  readonly means?: string;
}

export interface Question {
  /** Name of the option, and of the answer. */
  readonly key: string;
  /** The question, in few words. */
  readonly asks: string;
  /** The question in a header run, where it means something else. */
  readonly asksInHeader?: string;
  readonly kind: AnswerKind;
  /** An answer, by system of units. */
  readonly example: string | Readonly<Record<UnitSystem, string>>;
  /** Arrangements it belongs to; all where left out. */
  readonly only?: readonly Arrangement[];
  /** What is taken where it is not answered; a question without it must be answered. */
  readonly otherwise?: string;
}

/** A quantity of a dimension. */
export const quantity = (dimension: Dimension): AnswerKind => ({ is: 'quantity', dimension });
/**
 * The example of a question.
 *
 * @param question - one of the table [-]
 * @param units - system of units [-]
 * @returns something that can be typed [-]
 */
export function exampleOf({ example }: Question, units: UnitSystem): string {
  return typeof example === 'string' ? example : example[units];
}

/**
 * Whether a question belongs to an arrangement.
 *
 * @param question - one of the table [-]
 * @param arrangement - how the pump stands [-]
 * @returns true where it is asked or may be told [-]
 */
export function belongsTo({ only }: Question, arrangement: string | undefined): boolean {
  return only === undefined || arrangement === undefined || only.some((one) => one === arrangement);
}

/**
 * The words of a question.
 *
 * @param question - one of the table [-]
 * @param arrangement - how the pump stands, where it is known [-]
 * @returns the question, in few words [-]
 */
export function asksIn({ asks, asksInHeader }: Question, arrangement: string | undefined): string {
  return arrangement === 'header' ? (asksInHeader ?? asks) : asks;
}
