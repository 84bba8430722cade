/** One entry of what a sentence is made of. */
export type Datum = string | number | readonly string[];

/** Plain data a sentence is made of. */
export type IssueData = Readonly<Record<string, Datum>>;

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

/** One sentence per code. Each names the data it is made of, and whoever raises the code has to give them. */
export type Sentences = Readonly<Record<string, (data: never) => Sentence>>;
