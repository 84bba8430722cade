/** Words of the user's own as they stand in a YAML file. */

/** What needs no quotes, in a map of one line as well: letters and digits first, nothing that means something to YAML. */
const PLAIN = /^[\p{L}\d](?:[\p{L}\d ./()%"+-]*[\p{L}\d./()%"+-])?$/u;
/** What YAML would take for something else than text: numbers, truth values, nothing, days. */
const TAKEN = /^(?:[+-]?[\d.][\d._e+-]*|0[xob].*|true|false|yes|no|on|off|null|~|\d{4}-\d{2}-\d{2}.*)$/iu;

/**
 * A text as a scalar of YAML, in quotes where it needs them.
 *
 * @param text - one line [-]
 * @returns what stands in the file [-]
 */
export function yamlText(text: string): string {
  return PLAIN.test(text) && !TAKEN.test(text) ? text : `'${text.replaceAll("'", "''")}'`;
}

/**
 * A text inside a comment: comments end with their line.
 *
 * @param text - anything [-]
 * @returns one line [-]
 */
export function commentText(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, ' ');
}
