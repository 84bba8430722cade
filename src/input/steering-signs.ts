/**
 * Signs that are not read but steer what shows the text: they could draw what they like on a terminal or a page. And
 * codes that are no signs at all: halves of a pair, and those that Unicode keeps free for good, which no page can hold.
 */
import { type Document, visit } from 'yaml';

/** Control signs other than tab and line feed, signs that turn the direction of reading, halves of pairs, no signs. */
const STEERING =
  /(?![\t\n])\p{Cc}|[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]|\p{Cs}|\p{Noncharacter_Code_Point}/u;

/** A sign and where the text that holds it begins [characters from the start of the file]. */
export interface SteeringSign {
  readonly sign: string;
  readonly offset: number;
}

/**
 * Every key and value of a document that holds a steering sign.
 *
 * @param document - as read [-]
 * @returns the first sign of each, named as U+001B, in the order of the file [-]
 */
export function steeringSigns(document: Document): readonly SteeringSign[] {
  const found: SteeringSign[] = [];
  visit(document, {
    Scalar: (_key, node) => {
      const sign = typeof node.value === 'string' ? STEERING.exec(node.value)?.[0] : undefined;
      if (sign === undefined) return;
      const digits = (sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
      found.push({ sign: `U+${digits}`, offset: node.range?.[0] ?? 0 });
    },
  });
  return found;
}
