/** One reading once it is understood: a value in SI with the text it came from, or why there is none. */
import type { Issue } from '../issues/issue.js';
import type { AnswerPlace } from './answers.js';

interface ReadingBase {
  readonly id: string;
  /** As filled. */
  readonly text: string;
  readonly place: AnswerPlace;
  /** Unit printed beside the box, where it is one for a number. */
  readonly unit?: string;
}

/** What an answer says. */
export type ReadingValue =
  /** In the SI unit of the box's dimension; bare for a count. */
  | {
      readonly kind: 'number';
      readonly value: number;
      /** True for a value nobody expects there and nobody has confirmed: it never counts as a pass. */
      readonly unlikely?: boolean;
      /** True where the scale ended before the reading did: `> 1000` is at least that. */
      readonly atLeast?: boolean;
    }
  | { readonly kind: 'text' }
  /** In the words of the sheet. */
  | { readonly kind: 'choice'; readonly choice: string }
  | { readonly kind: 'tick'; readonly ticked: boolean }
  /** As `2026-10-02`. */
  | { readonly kind: 'date'; readonly date: string }
  /** With the reason; empty where none was given. */
  | { readonly kind: 'not-read'; readonly reason: string }
  | { readonly kind: 'unreadable'; readonly issue: Issue };

export type FieldReading = ReadingBase & ReadingValue;

/** Readings by the ids of their boxes; a box left empty is not there. */
export type ReadingsById = ReadonlyMap<string, FieldReading>;
