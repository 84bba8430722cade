import * as z from 'zod';
import type { IssueCode, IssueDataOf } from '../../issues/issue.js';
import { once } from '../once.js';

/** Longest text a file may hold in one place. */
const LONGEST_TEXT = 400;

/** An example as it would stand in the file, in plain YAML data. */
export type Example = string | number | readonly Example[] | { readonly [key: string]: Example };

/**
 * Describes a field for messages, editors and the JSON Schema.
 *
 * @param schema - what the field may hold [-]
 * @param description - what it is, in words [-]
 * @param example - something that can be copied [-]
 * @returns the described schema [-]
 */
export function field<S extends z.ZodType>(schema: S, description: string, example: Example): S {
  return schema.meta({ description, examples: [example] });
}

/**
 * A map whose keys are all known; any other key is an issue.
 *
 * @param shape - fields by key [-]
 * @returns schema [-]
 */
export function map<Shape extends z.ZodRawShape>(shape: Shape): z.ZodObject<Shape, z.core.$strict> {
  return z.strictObject(shape);
}

/**
 * Words the user chooses: a name, a mark, a note. Numbers are taken as they are written.
 *
 * @returns schema that gives trimmed text [-]
 */
export function text() {
  return anyText();
}

// Made once: a schema costs more to make than to use.
const anyText = once(() =>
  z.union([z.string().trim().min(1).max(LONGEST_TEXT), z.number()]).transform(String),
);

/**
 * One of a few words.
 *
 * @param words - what may be written [-]
 * @returns schema that gives the word [-]
 */
export function oneOf<const Words extends readonly [string, ...string[]]>(words: Words) {
  return z.enum(words);
}

/**
 * Adds an issue of ours to a transform: a code and data for its sentence.
 *
 * @param context - context of the transform [-]
 * @param code - code of the issue [-]
 * @param data - data of its sentence [-]
 * @returns the value that ends a transform [-]
 */
export function refuse<Code extends IssueCode>(
  context: z.core.$RefinementCtx,
  code: Code,
  data: IssueDataOf<Code>,
): never {
  context.addIssue({ code: 'custom', params: { code, data } });
  return z.NEVER;
}
