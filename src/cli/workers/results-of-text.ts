/** Job: the results of the review of one input. */
import { type ResultsFile, readInstallation, review, reviewResults } from '../../index.js';
import { IssuesError } from '../../issues/issue.js';
import type { InputText } from '../files/read-input.js';

/**
 * Reads and reviews the text of one input.
 *
 * @param input - name for messages, and text
 * @returns results for machines
 * @throws IssuesError with everything wrong in the text; EngineError when it cannot be worked out
 */
export function resultsOfText({ name, text }: InputText): ResultsFile {
  const reading = readInstallation(text, { file: name });
  if (!reading.ok) throw new IssuesError(reading.issues);
  return reviewResults(review(reading.installation));
}
