/** A group of tests that is run together. */
export interface Lane {
  /** What it holds, in words. */
  readonly holds: string;
  /** Part of `npm test`. */
  readonly quick: boolean;
  /** Evidence is numbers known from outside or from theory; house rules are about the text of the project. */
  readonly proves: 'evidence' | 'behaviour' | 'house';
  /** Folders of tests. */
  readonly folders: readonly string[];
}

/** The lanes by name. */
export const lanes: Readonly<Record<string, Lane>>;
/** Lanes a word stands for: `quick`, `whole`, `all`, or the name of one. */
export function lanesOf(word: string): readonly string[];
/** Lanes of a test file by the first folder below tests: one, if all is well. */
export function lanesOfFile(file: string): readonly string[];
