/** `pipeborne schema`: prints the JSON Schema of the input, or of the results. */
import { installationJsonSchema, resultsJsonSchema } from '../index.js';
import { type ExitStatus, exitStatus } from './exit-status.js';
import type { Surroundings } from './surroundings.js';

/**
 * Runs `schema`.
 *
 * @param options - `results` for the schema of the results
 * @param surroundings - where to print
 * @returns 0
 */
export function schemaCommand(
  options: { readonly results?: boolean },
  surroundings: Surroundings,
): ExitStatus {
  const schema = options.results === true ? resultsJsonSchema() : installationJsonSchema();
  surroundings.output.write(`${JSON.stringify(schema, null, 2)}\n`);
  return exitStatus.meets;
}
