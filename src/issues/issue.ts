/**
 * What an error, a warning or a hint is: a code that is a promise, a place, and data. Sentences live apart, in
 * `sentences/`, so that a test can read every one of them and callers can act on codes. Which codes there are, and what
 * each has to be told with, follows from the sentences: a code without a sentence, or without a datum of its sentence,
 * does not compile.
 */

import type { sentences } from './sentences/index.js';
import type { IssueData, Sentence } from './sentences/sentence.js';

export type { IssueData } from './sentences/sentence.js';

/** A place in an input file. Lines and columns count from 1. */
export interface Place {
  /** File name as the user gave it, where known. */
  readonly file?: string;
  readonly line: number;
  readonly column: number;
  /** Path of the value, in words a user sees in the file: `piping.lines[0].walk[3].elbow.turn`. */
  readonly path: string;
}

/** Every code there is. */
export type IssueCode = keyof typeof sentences;

/** What the sentence of a code is made of; of several codes, what all of them together need. */
type SentenceData<Code extends IssueCode> = [(typeof sentences)[Code]] extends [
  (data: infer Data) => Sentence,
]
  ? Data
  : never;

/** What a code has to be told with. More may be given. */
export type IssueDataOf<Code extends IssueCode> = SentenceData<Code> & IssueData;

/** The same where some of it is added for all codes alike. */
export type IssueDataBeside<Code extends IssueCode, Given> = Omit<SentenceData<Code>, keyof Given> &
  IssueData;

/** Codes whose sentence needs nothing but what is given. */
export type CodesFrom<Given> = {
  [Code in IssueCode]: Given extends IssueDataOf<Code> ? Code : never;
}[IssueCode];

/** The data of a code as the last arguments of a function; none are wanted where the sentence needs none. */
export type DataArguments<Code extends IssueCode> =
  Readonly<Record<never, never>> extends IssueDataOf<Code>
    ? [data?: IssueDataOf<Code>]
    : [data: IssueDataOf<Code>];

/** What may stand behind a beginning: `TailsOf<'render.markup'>` has `too-large`. */
export type TailsOf<Beginning extends string> = {
  [Code in IssueCode]: Code extends `${Beginning}.${infer Tail}` ? Tail : never;
}[IssueCode];

/** A code with the data of its sentence. */
export type Coded<Code extends IssueCode = IssueCode> = {
  readonly [Each in Code]: { readonly code: Each; readonly data: IssueDataOf<Each> };
}[Code];

export type Issue = Coded & {
  readonly severity: 'error' | 'warning' | 'hint';
  readonly place?: Place;
};

/**
 * A code with its data, where the code is not a word of the program text but one of several.
 *
 * @param code - the code [-]
 * @param data - what its sentence is made of; of several codes, what all need [-]
 * @returns both in one [-]
 */
export function coded<Code extends IssueCode>(code: Code, data: IssueDataOf<Code>): Coded {
  return matched({ code, data });
}

/**
 * The same code with more data, which its sentence may use but does not need.
 *
 * @param told - code and data [-]
 * @param more - what is said beside them; what is there already stays [-]
 * @returns both in one [-]
 */
export function withMore(told: Coded, more: IssueData): Coded {
  return matched({ code: told.code, data: { ...more, ...told.data } });
}

/**
 * An issue made of its parts.
 *
 * @param severity - how grave it is [-]
 * @param told - code and data [-]
 * @param place - where it stands, where known [-]
 * @returns the issue [-]
 */
export function issueOf(severity: Issue['severity'], told: Coded, place?: Place): Issue {
  const issue = { code: told.code, severity, data: told.data, ...(place && { place }) };
  return issue as Issue;
}

/** The compiler sees two parts and not that they match; that they do stands in the signatures above. */
function matched(told: { readonly code: IssueCode; readonly data: IssueData }): Coded {
  return told as Coded;
}

/**
 * Error of the engine: something that cannot be worked out, with a code and data, never a sentence.
 * The sentence is made from `sentences/` when the error is shown.
 */
export class EngineError<Code extends IssueCode = IssueCode> extends Error {
  override readonly name = 'EngineError';
  readonly code: Code;
  readonly data: IssueData;
  constructor(code: Code, ...data: DataArguments<Code>) {
    super(`${code} ${JSON.stringify(data[0] ?? {})}`);
    this.code = code;
    this.data = data[0] ?? {};
  }

  /** Code and data as they belong together. */
  get told(): Coded {
    return matched({ code: this.code, data: this.data });
  }
}

/**
 * The error of a code and data that were kept.
 *
 * @param told - code and data [-]
 * @returns an error to throw [-]
 */
export function engineError(told: Coded): EngineError {
  return new EngineError(told.code, told.data as never);
}

/** Error that carries every issue found in one go. */
export class IssuesError extends Error {
  override readonly name = 'IssuesError';
  constructor(readonly issues: readonly Issue[]) {
    super(issues.map((issue) => issue.code).join(', '));
  }
}
