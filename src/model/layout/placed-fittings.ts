import type { PlacedFitting } from './layout.js';
import type { PlacedPart } from './place-parts.js';

/**
 * Every small thing on the pipe with its place along the line, side legs too.
 *
 * @param placed - parts in walking order, stations in [m]
 * @returns fittings in walking order
 */
export function placedFittings(placed: readonly PlacedPart[]): readonly PlacedFitting[] {
  return placed.flatMap(({ part, line, from, start, directionIn, side }) => {
    if (part.kind === 'fitting') {
      const { name, fitting, section } = part;
      return [{ name, fitting, line, at: from.at, along: directionIn, station: start, section }];
    }
    return side === undefined ? [] : placedFittings(side.parts);
  });
}
