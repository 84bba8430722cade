/** `pipeborne schema`: prints the JSON Schema of the input, of readings, or of results. */
import {
  asInstalledJsonSchema,
  installationJsonSchema,
  readingsJsonSchema,
  resultsJsonSchema,
} from '../../index.js';
import type { Environment } from '../environment.js';
import { type ExitStatus, exitStatus } from '../exit-status.js';

/** Which schema. */
export interface SchemaOptions {
  readonly results?: boolean;
  readonly readings?: boolean;
  readonly asInstalled?: boolean;
}

function schemaOf({ results, readings, asInstalled }: SchemaOptions) {
  if (results === true) return resultsJsonSchema();
  if (readings === true) return readingsJsonSchema();
  return asInstalled === true ? asInstalledJsonSchema() : installationJsonSchema();
}

/**
 * Runs `schema`.
 *
 * @param options - which schema; that of the input where none is named
 * @param environment - where to print
 * @returns 0
 */
export function schemaCommand(options: SchemaOptions, environment: Environment): ExitStatus {
  const schema = schemaOf(options);
  environment.output.write(`${JSON.stringify(schema, null, 2)}\n`);
  return exitStatus.meets;
}
