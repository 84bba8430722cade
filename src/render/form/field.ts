/** What the form of a PDF asks, as the layout and the painter see it. */

/** What may be put into a field. */
export type FieldKind = 'number' | 'text' | 'choice' | 'tick' | 'date' | 'signature';

/** One field of the form. A choice of few answers has a button for each, one of many has a list. */
export interface FormField {
  /** Whole name, words separated by dots. */
  readonly name: string;
  readonly kind: FieldKind;
  /** Shown when the pointer rests on the field, and read aloud. */
  readonly tip: string;
  readonly choices: readonly string[];
  readonly isList: boolean;
  /** Lines to write on. */
  readonly lines: number;
}

/** Most signs taken by a field of each kind: a reading is short, and a reason must fit beside `N/A`. */
export const MOST_SIGNS: Readonly<Record<FieldKind, number>> = {
  number: 60,
  date: 30,
  text: 200,
  signature: 120,
  choice: 0,
  tick: 0,
};
/** Most signs a line of a longer text holds. */
export const SIGNS_OF_LINE = 110;

/**
 * Name of the state a button of a choice has when it is pressed: the words of the choice where every program can
 * write them, its number from 1 otherwise.
 *
 * @param choices - all choices of the field
 * @param index - which, from 0
 * @returns a name without signs that need escaping, unlike those of the other choices and unlike `Off`
 */
export function choiceState(choices: readonly string[], index: number): string {
  const plain = choices.every((choice) => /^[A-Za-z0-9][A-Za-z0-9-]{0,30}$/.test(choice));
  const isApart = new Set(choices.map((choice) => choice.toLowerCase())).size === choices.length;
  const isOff = choices.some((choice) => choice.toLowerCase() === 'off');
  return plain && isApart && !isOff ? (choices[index] ?? '') : `choice-${index + 1}`;
}

/** State of a tick box that is ticked. */
export const TICKED = 'Yes';
