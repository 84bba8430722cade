/** Checking one file. */
import { type Review, reviewResults, type UnitSystem } from '../index.js';
import { checkPicture } from './check-picture.js';
import { reviewFile } from './review-file.js';
import { mayColour, type Surroundings } from './surroundings.js';

/** Options of the command as the parser of arguments gives them. */
export interface CheckOptions {
  /** False when `--no-color` was given. */
  readonly color: boolean;
  readonly json?: boolean;
  readonly watch?: boolean;
  readonly units?: UnitSystem;
}

/**
 * Checks one file and prints its picture, or its results.
 *
 * @param file - as given
 * @param options - options of the command
 * @param surroundings - where to read and print
 * @returns the review
 * @throws IssuesError, EngineError as `reviewFile`
 */
export async function checkOne(
  file: string,
  options: CheckOptions,
  surroundings: Surroundings,
): Promise<Review> {
  const { output, environment } = surroundings;
  const { input, review } = await reviewFile(file, surroundings);
  if (options.json === true) output.write(`${JSON.stringify(reviewResults(review))}\n`);
  else {
    output.write(
      checkPicture(review, {
        file,
        name: input.name,
        colour: mayColour(output, environment, options.color),
        units: options.units ?? review.installation.review.units,
      }),
    );
  }
  return review;
}
