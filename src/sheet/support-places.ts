/** Where a support stands along its line, told from what a tape can be held to. */
import type { Installation, Part } from '../input/installation.js';
import { isSupportPart } from '../model/support-parts.js';

/** A support that stands on straight pipe. */
export interface SupportPlace {
  readonly mark: string;
  /** What the tape starts from: `elbow 2`, `H1`, `the suction flange of the pump`. */
  readonly from: string;
  /** Length of pipe from there [m]. */
  readonly distance: number;
}

/** Small things on the pipe, and the pipe itself: no tape is held to them. */
const NO_MARK: readonly Part['kind'][] = ['straight', 'fitting', 'weight'];

/**
 * Places of all supports that stand on straight pipe, side legs included.
 *
 * @param installation - lines
 * @returns places in walking order
 */
export function supportPlaces({ lines }: Installation): readonly SupportPlace[] {
  return lines.flatMap(({ walk, from }) => placesIn(walk, `the ${from} flange of the pump`));
}

function placesIn(walk: readonly Part[], start: string): readonly SupportPlace[] {
  const places: SupportPlace[] = [];
  let from = start;
  let distance = 0;
  for (const part of walk) {
    if (part.kind === 'straight') distance += part.length;
    if (isSupportPart(part)) places.push({ mark: part.mark, from, distance });
    if (part.kind === 'tee') places.push(...placesIn(part.side.walk, `the branch of ${part.name}`));
    if (NO_MARK.includes(part.kind)) continue;
    from = isSupportPart(part) ? part.mark : `the end of ${part.name}`;
    distance = 0;
  }
  return places;
}
