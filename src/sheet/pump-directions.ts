/** The two level directions in which a pump in its pipe differs: along the pipe and across it. */

import type { Vec3 } from '../model/conventions.js';
import { nozzleAxes } from '../model/nozzle-axes.js';
import type { FieldContext } from './field-context.js';

/** Words of the plan for both directions: `north–south`. */
export interface PumpDirections {
  readonly along: string;
  readonly across: string;
}

/**
 * The level directions of a pump in words of the building plan.
 *
 * @param context - layout and writer
 * @returns along the nozzles, and square to them
 */
export function directionsOf({ review, write }: FieldContext): PumpDirections {
  const { axis } = review.layout.nozzles.discharge;
  const { along, upright, across } = nozzleAxes(axis);
  const level = Math.abs(along[2]) < 0.9;
  const both = (vector: Vec3): string => {
    const flat: Vec3 = [vector[0], vector[1], 0];
    const size = Math.hypot(flat[0], flat[1]);
    const one: Vec3 = [flat[0] / size, flat[1] / size, 0];
    const words = [write.bearing(one), write.bearing([-one[0], -one[1], 0])];
    return words.sort((a, b) => PLAN.indexOf(a) - PLAN.indexOf(b)).join('\u2013');
  };
  return level
    ? { along: both(along), across: both(across) }
    : { along: both(upright), across: both(across) };
}

/** North and east are named first. */
const PLAN: readonly string[] = [
  'north',
  'east',
  'north-east',
  'south-east',
  'south',
  'west',
  'south-west',
  'north-west',
];
