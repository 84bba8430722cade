/** Circles round a pipe as the reader sees them. */
import type { Vec3 } from '../../model/conventions.js';
import { add, cross, dot, scale } from '../../model/vector.js';
import type { Xy } from '../drawing.js';
import { levelAcross } from '../space.js';
import type { View } from './projection.js';

/**
 * Half of a unit circle round a pipe that faces the reader, as offsets on paper for unit scale.
 *
 * @param pipe - direction of the pipe [-]
 * @param view - direction to look from
 * @returns offsets from the axis, from one outline of the pipe to the other [-]
 */
export function nearHalfRing(pipe: Vec3, view: View): readonly Xy[] {
  const side = levelAcross(pipe);
  const over = cross(pipe, side);
  // The visible half lies about the direction of the reader, seen in the plane of the ring.
  const middle = Math.atan2(dot(over, view.towards), dot(side, view.towards));
  return Array.from({ length: 15 }, (_, i): Xy => {
    const angle = middle - Math.PI / 2 + (Math.PI * i) / 14;
    const place = add(scale(side, Math.cos(angle)), scale(over, Math.sin(angle)));
    return [dot(place, view.right), -dot(place, view.up)];
  });
}
