/** The four places of a flange face where a gap is read, in words of the building plan. */

import type { Vec3 } from '../../model/conventions.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import { nozzleAxes } from '../../model/nozzle-axes.js';
import { scale } from '../../model/vector.js';
import type { Writer } from '../../report/writer.js';

/** One place at the rim of a face. */
export interface FacePlace {
  /** Last word of the box: `gap-1` is up, then round the right-handed way. */
  readonly key: 'up' | 'across' | 'down' | 'back';
  /** Unit vector from the centre of the face. */
  readonly towards: Vec3;
  /** `top`, `east`, `bottom`, `west`. */
  readonly word: string;
}

/**
 * The four places of a nozzle's face.
 *
 * @param nozzle - its axis
 * @param write - for directions of the plan
 * @returns upright, across, and their opposites
 */
export function facePlaces(nozzle: Pick<PlacedNozzle, 'axis'>, write: Writer): readonly FacePlace[] {
  const { upright, across } = nozzleAxes(nozzle.axis);
  const word = (towards: Vec3): string => {
    const plan = write.bearing(towards);
    return plan === 'up' ? 'top' : plan === 'down' ? 'bottom' : plan;
  };
  const places = [
    ['up', upright],
    ['across', across],
    ['down', scale(upright, -1)],
    ['back', scale(across, -1)],
  ] as const;
  return places.map(([key, towards]) => ({ key, towards, word: word(towards) }));
}
