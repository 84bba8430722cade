/** Plain data of a file: maps, lists, and what stands in them. */
import { sameWritten } from '../input/written-value.js';

export type PlainMap = Readonly<Record<string, unknown>>;

export const isMap = (value: unknown): value is PlainMap =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** An entry of a map; undefined where there is none of its own. */
export const entryOf = (value: unknown, key: string): unknown =>
  isMap(value) && Object.hasOwn(value, key) ? value[key] : undefined;

export const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** Longest text of a value in a comparison. */
const LONGEST = 120;

/** A value in the words of the file, shortened where it is long. */
export function written(value: unknown): string {
  const text = flow(value);
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text;
}

function flow(value: unknown): string {
  if (Array.isArray(value)) return value.map(flow).join(', ');
  if (!isMap(value)) return value === true ? 'yes' : value === false ? 'no' : String(value);
  return Object.entries(value)
    .map(([key, inner]) => `${key} ${isMap(inner) ? `(${flow(inner)})` : flow(inner)}`)
    .join(', ');
}

/** Whether two values say the same, whatever the units and the order of keys. */
export function sameData(before: unknown, after: unknown): boolean {
  if (isMap(before) && isMap(after)) {
    const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
    return [...keys].every((key) => sameData(entryOf(before, key), entryOf(after, key)));
  }
  if (Array.isArray(before) && Array.isArray(after))
    return before.length === after.length && before.every((item, i) => sameData(item, after[i]));
  return before === after || sameWritten(before, after);
}
