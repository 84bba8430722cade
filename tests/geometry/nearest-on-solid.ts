import type { Capsule, Cylinder, TurnedBox, Vec3 } from '../../src/geometry/index.js';

/**
 * An outside way to the distance, that shares nothing with the product: the nearest point of a box, cylinder or capsule
 * to a point is known in closed form, and going to and fro between two convex solids comes ever nearer to their distance
 * from above.
 */
export type Known = TurnedBox | Cylinder | Capsule;

const sub = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const add = (a: Vec3, b: Vec3, f = 1): Vec3 => [a[0] + f * b[0], a[1] + f * b[1], a[2] + f * b[2]];
const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

export function nearestOn(solid: Known, point: Vec3): Vec3 {
  if (solid.kind === 'turned-box') {
    const [s, c] = [Math.sin(solid.bearing), Math.cos(solid.bearing)];
    const off = sub(point, solid.centre);
    const [w, d, h] = solid.size;
    const x = clamp(off[0] * c - off[1] * s, -w / 2, w / 2);
    const y = clamp(off[0] * s + off[1] * c, -d / 2, d / 2);
    const z = clamp(off[2], -h / 2, h / 2);
    return add(solid.centre, [x * c + y * s, -x * s + y * c, z]);
  }
  const axis = sub(solid.to, solid.from);
  const off = sub(point, solid.from);
  const share = clamp(dot(off, axis) / dot(axis, axis), 0, 1);
  const foot = add(solid.from, axis, share);
  if (solid.kind === 'capsule') {
    const away = sub(point, foot);
    const length = Math.hypot(...away);
    return length <= solid.radius ? point : add(foot, away, solid.radius / length);
  }
  const along = dot(off, axis) / dot(axis, axis);
  const side = sub(off, [axis[0] * along, axis[1] * along, axis[2] * along]);
  const length = Math.hypot(...side);
  return add(foot, side, length <= solid.radius ? 1 : solid.radius / length);
}

/** Upper bound of the distance after a number of rounds of going to and fro. */
export function distanceToAndFro(a: Known, b: Known, rounds: number): number {
  let onA: Vec3 = a.kind === 'turned-box' ? a.centre : a.from;
  let onB = onA;
  for (let round = 0; round < rounds; round++) {
    onB = nearestOn(b, onA);
    const next = nearestOn(a, onB);
    if (next[0] === onA[0] && next[1] === onA[1] && next[2] === onA[2]) break;
    onA = next;
  }
  return Math.hypot(...sub(onA, onB));
}
