/** Checking one file. */
import { type Review, reviewResults, type UnitSystem } from '../../index.js';
import { type Environment, mayColour } from '../environment.js';
import { reviewFile } from '../review/review-file.js';
import { checkPicture } from './check-view.js';

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
 * @param environment - where to read and print
 * @returns the review
 * @throws IssuesError, EngineError as `reviewFile`
 */
export async function checkOne(
  file: string,
  options: CheckOptions,
  environment: Environment,
): Promise<Review> {
  const { output, variables } = environment;
  const { input, review } = await reviewFile(file, environment);
  if (options.json === true) output.write(`${JSON.stringify(reviewResults(review))}\n`);
  else {
    output.write(
      checkPicture(review, {
        file,
        name: input.name,
        colour: mayColour(output, variables, options.color),
        units: options.units ?? review.installation.review.units,
      }),
    );
  }
  return review;
}
