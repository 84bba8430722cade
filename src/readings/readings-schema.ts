/** Shape of a readings file, published as a JSON Schema. */

import * as z from 'zod';
import { once } from '../input/once.js';

/** Format of a readings file. */
export const READINGS_FORMAT = 'pipeborne-readings/1';

const value = once(() =>
  z
    .union([z.string().max(2000), z.number(), z.boolean(), z.null()])
    .describe('A number with its unit, or in the unit printed beside the box; a word; a day as 2026-10-02.'),
);

const notRead = once(() =>
  z
    .strictObject({ 'not-read': z.string().max(2000).describe('Why it was not read.') })
    .describe('Not read, with the reason.'),
);

/** Shape of a readings file. */
export const readingsSchema = once(() =>
  z.strictObject({
    format: z.literal(READINGS_FORMAT),
    sheet: z.string().describe('Fingerprint of the input the sheet was made from, as printed on it.'),
    content: z
      .string()
      .optional()
      .describe('Digests of what that input describes, as a program wrote them; may be left away.'),
    mark: z.string().optional().describe('Mark of the pump.'),
    units: z.enum(['us', 'si']).optional().describe('Units of the sheet; those of the input where not said.'),
    kept: z
      .record(z.string(), z.unknown())
      .optional()
      .describe(
        'What a store has written: source, day, person, instruments, digests of the entries before it.',
      ),
    readings: z
      .record(z.string().regex(/^[a-z0-9-]+(\.[a-z0-9-]+)+$/u), z.union([value(), notRead()]))
      .describe('Readings by the id of the box.'),
  }),
);

/** Content of a readings file. */
export type ReadingsFile = z.infer<ReturnType<typeof readingsSchema>>;

/**
 * The JSON Schema of a readings file, draft 2020-12.
 *
 * @returns the schema as plain data
 */
export function readingsJsonSchema(): Readonly<Record<string, unknown>> {
  return { ...z.toJSONSchema(readingsSchema(), { target: 'draft-2020-12', io: 'input' }) };
}
