/** `pipeborne check`: prints what a review would say, and writes nothing. */
import { reviewResults, type UnitSystem } from '../index.js';
import { checkPicture } from './check-picture.js';
import { eachFile } from './each-file.js';
import { type ExitStatus, statusOfVerdict } from './exit-status.js';
import { reviewFile } from './review-file.js';
import { mayColour, type Surroundings } from './surroundings.js';

/** Options of the command as the parser of arguments gives them. */
export interface CheckOptions {
  /** False when `--no-color` was given. */
  readonly color: boolean;
  readonly json?: boolean;
  readonly units?: UnitSystem;
}

/**
 * Runs `check`.
 *
 * @param files - inputs as given
 * @param options - options of the command
 * @param surroundings - where to read and print
 * @returns the worst status of all files
 */
export async function checkCommand(
  files: readonly string[],
  options: CheckOptions,
  surroundings: Surroundings,
): Promise<ExitStatus> {
  const { output, environment } = surroundings;
  const colour = mayColour(output, environment, options.color);
  let printed = false;
  return eachFile(files, surroundings, async (file) => {
    const { input, review } = await reviewFile(file, surroundings);
    if (options.json === true) {
      output.write(`${JSON.stringify(reviewResults(review))}\n`);
    } else {
      output.write(
        `${printed ? '\n' : ''}${checkPicture(review, {
          file,
          name: input.name,
          colour,
          units: options.units ?? review.installation.review.units,
        })}`,
      );
      printed = true;
    }
    return statusOfVerdict(review.verdict);
  });
}
