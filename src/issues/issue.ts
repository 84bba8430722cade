/**
 * What an error, a warning or a hint is: a code that is a promise, a place, and data. Sentences live apart, in
 * `sentences/`, so that a test can read every one of them and callers can act on codes.
 */

/** A place in an input file. Lines and columns count from 1. */
export interface Place {
  /** File name as the user gave it, where known. */
  readonly file?: string;
  readonly line: number;
  readonly column: number;
  /** Path of the value, in words a user sees in the file: `piping.lines[0].walk[3].elbow.turn`. */
  readonly path: string;
}

/** Plain data a sentence is made of. */
export type IssueData = Readonly<Record<string, string | number | readonly string[]>>;

export interface Issue {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'hint';
  readonly data: IssueData;
  readonly place?: Place;
}

/**
 * Error of the engine: something that cannot be worked out, with a code and data, never a sentence.
 * The sentence is made from `sentences/` when the error is shown.
 */
export class EngineError extends Error {
  override readonly name = 'EngineError';
  constructor(
    readonly code: string,
    readonly data: IssueData = {},
  ) {
    super(`${code} ${JSON.stringify(data)}`);
  }
}

/** Error that carries every issue found in one go. */
export class IssuesError extends Error {
  override readonly name = 'IssuesError';
  constructor(readonly issues: readonly Issue[]) {
    super(issues.map((issue) => issue.code).join(', '));
  }
}
