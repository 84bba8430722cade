/** Colour for a person at a terminal. It repeats what the words say, and never says more. */
import picocolors from 'picocolors';
import type { Verdict } from '../../index.js';

export interface Paint {
  readonly bold: (text: string) => string;
  readonly dim: (text: string) => string;
  readonly verdict: (verdict: Verdict, text: string) => string;
  /** By a verdict in words, or by what stands in place of one. */
  readonly word: (word: string, text: string) => string;
}

/**
 * Paints, or leaves as it is.
 *
 * @param colour - whether to colour
 * @returns functions from text to text
 */
export function paintFor(colour: boolean): Paint {
  const { bold, dim, green, red, yellow } = picocolors.createColors(colour);
  const byVerdict = { meets: green, exceeds: red, 'cannot-tell': yellow, 'does-not-apply': dim };
  const byWord: Readonly<Record<string, (text: string) => string>> = {
    exceeds: red,
    'cannot tell': yellow,
    unusable: red,
    unreadable: red,
    failed: red,
  };
  return {
    bold,
    dim,
    verdict: (verdict, text) => byVerdict[verdict](text),
    word: (word, text) => byWord[word]?.(text) ?? text,
  };
}
