import { distance } from 'fastest-levenshtein';

/** Longest name compared: a longer one is no slip of the hand. */
const LONGEST = 60;

/**
 * The name a template probably meant.
 *
 * @param found - name as written
 * @param available - names there are
 * @returns the nearest of them, or undefined where none is near
 */
export function nearName(found: string, available: readonly string[]): string | undefined {
  if (found.length > LONGEST) return undefined;
  const bare = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '');
  let least = Math.max(1, Math.floor(found.length / 3)) + 1;
  let nearest: string | undefined;
  for (const name of available) {
    const [wrote, is] = [bare(found), bare(name.slice(0, LONGEST))];
    const apart = isSwapped(wrote, is) ? 1 : distance(wrote, is);
    if (apart < least) [least, nearest] = [apart, name];
  }
  return nearest;
}

/** Two neighbouring letters changed places: one slip, though two letters are wrong. */
function isSwapped(found: string, name: string): boolean {
  const at = [...found].findIndex((letter, index) => letter !== name[index]);
  if (at < 0 || found.length !== name.length) return false;
  return found.slice(0, at) + found.charAt(at + 1) + found.charAt(at) + found.slice(at + 2) === name;
}
