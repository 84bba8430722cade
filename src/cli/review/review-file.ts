/** From a file name to a review: what `review` and `check` have in common. */
import { type Review, readInstallation, review } from '../../index.js';
import { IssuesError } from '../../issues/issue.js';
import type { Environment } from '../environment.js';
import { type InputText, readInput } from '../files/read-input.js';
import { showIssues } from '../terminal/show-failure.js';

/** A review with what it was made from. */
export interface ReviewedFile {
  readonly input: InputText;
  readonly review: Review;
}

/**
 * Reads and reviews one file. Warnings are told at once; errors are thrown, all together.
 *
 * @param file - name as given, or `-`
 * @param environment - where to read, and to tell warnings
 * @returns the review
 * @throws IssuesError with everything wrong in the input; EngineError when it cannot be read or worked out
 */
export async function reviewFile(file: string, environment: Environment): Promise<ReviewedFile> {
  const input = await readInput(file, environment);
  const reading = readInstallation(input.text, { file: input.name });
  if (!reading.ok) throw new IssuesError(reading.issues);
  showIssues(reading.warnings, environment);
  return { input, review: review(reading.installation) };
}
