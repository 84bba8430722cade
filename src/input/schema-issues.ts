/** Issues of the schema library to issues of ours: a code, data for its sentence, what was wanted, an example. */
import type * as z from 'zod';
import { type Coded, type IssueCode, type IssueData, withMore } from '../issues/issue.js';
import { exampleText } from './example-text.js';
import { nearMiss } from './near-miss.js';
import { type Path, type PendingIssue, pendingIssueOf } from './pending-issue.js';
import { schemaAt } from './schema/schema-at.js';

type Found = z.core.$ZodIssue;

/** Where a map has one key and that is not known, this says nothing more. */
const ONE_KEY: readonly IssueCode[] = ['input.one-key', 'input.one-start', 'input.one-end'];

/**
 * Every issue the schema found, as pending issues.
 *
 * @param issues - issues of the schema library [-]
 * @param content - what the file holds [-]
 * @param root - the schema [-]
 * @returns pending issues, in no order [-]
 */
export function schemaIssues(
  issues: readonly Found[],
  content: unknown,
  root: z.core.$ZodType,
): readonly PendingIssue[] {
  const pendingIssues = issues.flatMap((issue) => pendingIssuesOf(issue, [], content, root));
  // A slip in a key makes two issues, the unknown key and the missing one; the first says it all.
  const meant = new Set(
    pendingIssues
      .filter(({ code }) => code === 'input.unknown-key')
      .map(({ path, data }) => `${path.slice(0, -1).join('.')}.${data.nearest}`),
  );
  const strange = new Set(
    pendingIssues
      .filter(({ code }) => code === 'input.unknown-key')
      .map(({ path }) => path.slice(0, -1).join('.')),
  );
  return pendingIssues.filter(({ code, path }) => {
    if (code === 'input.missing') return !meant.has(path.join('.'));
    return !ONE_KEY.includes(code) || !strange.has(path.join('.'));
  });
}

function pendingIssuesOf(
  issue: Found,
  above: Path,
  content: unknown,
  root: z.core.$ZodType,
): readonly PendingIssue[] {
  const path: Path = [
    ...above,
    ...issue.path.map((step) => (typeof step === 'number' ? step : String(step))),
  ];
  const found = valueAt(content, path);
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    return meantOption(issue.errors, found).flatMap((inner) => pendingIssuesOf(inner, path, content, root));
  }
  if (issue.code === 'unrecognized_keys') {
    const known = schemaAt(root, path).keys;
    return issue.keys.map((key) => unknownKey(key, path, known));
  }
  if (found === undefined && path.length > 0) {
    const data = { key: String(path.at(-1)), ...stated(root, path) };
    return [{ code: 'input.missing', path, at: 'holder', data }];
  }
  return [pendingIssueOf(withMore(codeAndData(issue, found), stated(root, path)), path, 'value')];
}

function unknownKey(key: string, path: Path, known: readonly string[]): PendingIssue {
  const nearest = nearMiss(key, known);
  return {
    code: 'input.unknown-key',
    path: [...path, key],
    at: 'key',
    data: { key, known, ...(nearest !== undefined && { nearest }) },
  };
}

/** What the schema says of a place: what is wanted there, and an example. */
export function stated(root: z.core.$ZodType, path: Path): IssueData {
  const { description, example } = schemaAt(root, path);
  const last = path.at(-1);
  return {
    ...(description !== undefined && { wanted: description }),
    ...(example !== undefined && {
      example: exampleText(typeof last === 'string' ? last : undefined, example),
    }),
  };
}

/** Of the options of a union, the one the writer meant: the one of the same shape as what was found. */
function meantOption(options: readonly (readonly Found[])[], found: unknown): readonly Found[] {
  const isMap = typeof found === 'object' && found !== null;
  const strange: readonly string[] = isMap ? ['invalid_type', 'invalid_value', 'custom'] : ['invalid_type'];
  // What starts like a number is meant as a quantity, also where a word could stand.
  const number = typeof found === 'string' && /^\s*[\d.+-]/u.test(found);
  const quantity = number
    ? options.find((option) => option.some((issue) => issue.code === 'custom'))
    : undefined;
  if (quantity) return quantity;
  const meant = options.find(
    (option) => !option.some((issue) => issue.path.length === 0 && strange.includes(issue.code)),
  );
  return (meant ?? options[0] ?? []).slice();
}

function codeAndData(issue: Found, found: unknown): Coded {
  const shown = foundText(found);
  switch (issue.code) {
    case 'custom': {
      // Put there by `refuse`, which knows what goes with the code.
      const refused = issue.params as Coded;
      const data: IssueData = refused.data;
      const list = [data.sizes, data.words].find(Array.isArray);
      const nearest = list && typeof data.found === 'string' ? nearMiss(data.found, list) : undefined;
      return nearest === undefined ? refused : withMore(refused, { nearest });
    }
    case 'invalid_value': {
      const words = issue.values.map(String);
      const nearest = typeof found === 'string' ? nearMiss(found, words) : undefined;
      return {
        code: 'input.not-one-of',
        data: { found: shown, words, ...(nearest !== undefined && { nearest }) },
      };
    }
    case 'too_small':
      if (issue.origin === 'string' || issue.origin === 'array')
        return { code: 'input.empty', data: { found: shown } };
      return { code: 'input.too-small', data: { found: shown, least: Number(issue.minimum) } };
    case 'too_big':
      if (issue.origin === 'string')
        return { code: 'input.text-too-long', data: { most: Number(issue.maximum) } };
      if (issue.origin === 'array')
        return { code: 'input.list-too-long', data: { most: Number(issue.maximum) } };
      return { code: 'input.too-large', data: { found: shown, most: Number(issue.maximum) } };
    default:
      return { code: 'input.wrong-type', data: { found: shown } };
  }
}

const LONGEST_SHOWN = 60;

/** What was found, short enough for a message. */
export function foundText(found: unknown): string {
  if (found === null || found === undefined) return 'nothing';
  if (Array.isArray(found)) return 'a list';
  if (typeof found === 'object') return 'a map';
  const text = String(found);
  const short = text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text;
  return typeof found === 'string' ? `"${short}"` : short;
}

/** Value at a path, or undefined. */
export function valueAt(content: unknown, path: Path): unknown {
  let value = content;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Readonly<Record<string, unknown>>)[step];
  }
  return value;
}
