import * as z from 'zod';
import { fileSchema } from './schema/file-schema.js';

/** JSON Schema of the input file, as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * The JSON Schema of an input file, pending issue 2020-12, for editors that complete and check as one types. It says what may
 * be written; units, tables and what one field says against another are checked on reading.
 *
 * @returns the schema as plain data [-]
 */
export function installationJsonSchema(): JsonSchema {
  const schema = z.toJSONSchema(fileSchema(), {
    io: 'input',
    target: 'draft-2020-12',
    // The library drops the examples of everything that is turned into numbers on reading; editors show them.
    override: ({ zodSchema, jsonSchema }) => {
      const examples = z.globalRegistry.get(zodSchema)?.examples;
      if (Array.isArray(examples) && jsonSchema.$ref === undefined) jsonSchema.examples = examples;
    },
  });
  return { ...schema };
}
