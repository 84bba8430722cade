import { distance } from 'fastest-levenshtein';

/**
 * The word that was probably meant.
 *
 * @param found - what was written [-]
 * @param known - what may be written [-]
 * @returns the nearest known word, or undefined where none is near [-]
 */
export function nearMiss(found: string, known: readonly string[]): string | undefined {
  const bare = simple(found);
  let nearest: string | undefined;
  let least = Math.max(1, Math.floor(bare.length / 3)) + 1;
  for (const word of known) {
    const apart = isSwapped(bare, simple(word)) ? 1 : distance(bare, simple(word));
    if (apart < least) {
      least = apart;
      nearest = word;
    }
  }
  return nearest;
}

/** Two neighbouring letters changed places: one slip, though two letters are wrong. */
function isSwapped(found: string, word: string): boolean {
  const at = [...found].findIndex((letter, index) => letter !== word[index]);
  if (at < 0 || found.length !== word.length) return false;
  return found.slice(0, at) + found.charAt(at + 1) + found.charAt(at) + found.slice(at + 2) === word;
}

/** Capitals, dashes and blanks are not what a slip is about. */
function simple(word: string): string {
  return word
    .toLowerCase()
    .replace(/[\s_-]+/gu, '-')
    .slice(0, 60);
}
