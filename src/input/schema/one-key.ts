import type * as z from 'zod';

/**
 * Requires that exactly one of the keys of a map is given. Looks at what was written, also where the rest is wrong,
 * so that every fault is told at once.
 *
 * @param schema - map with optional keys, alone or among words that may stand in its place [-]
 * @param code - code of the issue [-]
 * @returns the same schema with the rule [-]
 */
export function exactlyOneKey<S extends z.ZodType>(
  schema: S,
  code: 'input.one-key' | 'input.one-start' | 'input.one-end' = 'input.one-key',
): S {
  return schema.refine(
    (value) => !isMap(value) || Object.values(value).filter((entry) => entry !== undefined).length === 1,
    {
      when: ({ value }) => isMap(value),
      params: { code, data: {} },
    },
  );
}

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
