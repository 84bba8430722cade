import type { IssueData } from '../issue.js';

/** The parts of a message shown to a person. Every sentence ends without a full stop; the printer adds none. */
export interface Sentence {
  /** What is wrong, with what was found. */
  readonly message: string;
  /** What is wanted instead. */
  readonly wanted?: string;
  /** Something that can be copied into the file or the terminal. */
  readonly example?: string;
  /** A near miss or the next step. */
  readonly hint?: string;
}

/** One sentence per code. */
export type Sentences = Readonly<Record<string, (data: IssueData) => Sentence>>;
