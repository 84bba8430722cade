/** From a file name to a review: what `review` and `check` have in common. */
import { type Review, readInstallation, review } from '../index.js';
import { IssuesError } from '../issues/issue.js';
import { type InputText, readInput } from './read-input.js';
import { showIssues } from './show-failure.js';
import type { Surroundings } from './surroundings.js';

/** A review with what it was made from. */
export interface ReviewedFile {
  readonly input: InputText;
  readonly review: Review;
}

/**
 * Reads and reviews one file. Warnings are told at once; errors are thrown, all together.
 *
 * @param file - name as given, or `-`
 * @param surroundings - where to read, and to tell warnings
 * @returns the review
 * @throws IssuesError with everything wrong in the input; EngineError when it cannot be read or worked out
 */
export async function reviewFile(file: string, surroundings: Surroundings): Promise<ReviewedFile> {
  const input = await readInput(file, surroundings);
  const reading = readInstallation(input.text, { file: input.name });
  if (!reading.ok) throw new IssuesError(reading.issues);
  showIssues(reading.warnings, surroundings);
  return { input, review: review(reading.installation) };
}
