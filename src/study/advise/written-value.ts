/** Values as a file holds them: plain where YAML lets them be, quoted where it does not, JSON where the file is JSON. */
import { parseDocument } from 'yaml';
import type { Plain } from './edit.js';

/** How the file round a value is written. */
export interface Style {
  /** True where everything is quoted, as JSON asks. */
  readonly json: boolean;
  /** True where maps run over several lines. */
  readonly block: boolean;
  readonly lineEnd: string;
}

/** Quotes round a text. */
export type Quotes = 'plain' | 'single' | 'double';

/**
 * A value on one line.
 *
 * @param value - text, number, map or list
 * @param style - how the file is written
 * @param quotes - quotes that a text had before; plain ones are kept only where they can be
 * @returns for example `{mark: H5, rod: 3/4 in}`
 */
export function flowText(value: Plain, style: Style, quotes: Quotes = 'plain'): string {
  if (typeof value === 'string') return scalarText(value, style, quotes);
  if (value === null || typeof value !== 'object') return String(value);
  if (isList(value)) return `[${value.map((item) => flowText(item, style)).join(', ')}]`;
  const pairs = Object.entries(value).map(
    ([key, item]) => `${scalarText(key, style, 'plain')}: ${flowText(item, style)}`,
  );
  return `{${pairs.join(', ')}}`;
}

/**
 * A step of a walk behind the dash of its list: `hanger: {mark: H5}`, or over several lines.
 *
 * @param step - map of one key
 * @param style - how the file is written
 * @param indent - blanks in front of the dash
 * @returns text without line end at the end
 */
export function stepText(step: Plain, style: Style, indent: string): string {
  if (!isMap(step)) return flowText(step, style);
  const lines = (map: { readonly [key: string]: Plain }, before: string): readonly string[] =>
    Object.entries(map).flatMap(([key, value]) => {
      const name = scalarText(key, style, 'plain');
      return style.block && isMap(value)
        ? [`${before}${name}:`, ...lines(value, `${before}  `)]
        : [`${before}${name}: ${flowText(value, style)}`];
    });
  return lines(step, `${indent}  `).join(style.lineEnd).trimStart();
}

/** A text in the middle of a line, inside brackets or not. */
function scalarText(text: string, { json }: Style, quotes: Quotes): string {
  if (json || quotes === 'double') return JSON.stringify(text);
  if (quotes === 'plain' && isPlain(text)) return text;
  return `'${text.replaceAll("'", "''")}'`;
}

/** Whether a text reads back as itself without quotes. */
function isPlain(text: string): boolean {
  const read = parseDocument(`{a: ${text}, b: 1}`, { version: '1.2', schema: 'core' });
  const value: unknown = read.errors.length === 0 ? read.toJS() : undefined;
  return isMap(value) && Object.keys(value).length === 2 && (value as Record<string, unknown>).a === text;
}

/** Whether a value is a list. */
export function isList(value: unknown): value is readonly Plain[] {
  return Array.isArray(value);
}

/** Whether a value is a map. */
export function isMap(value: unknown): value is { readonly [key: string]: Plain } {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
