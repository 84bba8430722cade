import type { Installation, Part } from '../../input/installation.js';

/**
 * Every part of every line, side legs of tees in their place.
 *
 * @param installation - the lines
 * @returns parts in walking order
 */
export function partsOfLines(installation: Installation): readonly Part[] {
  return installation.lines.flatMap(({ walk }) => everyPart(walk));
}

function everyPart(walk: readonly Part[]): readonly Part[] {
  return walk.flatMap((part) => (part.kind === 'tee' ? [part, ...everyPart(part.side.walk)] : [part]));
}
