/** Places on the paper, in points (1/72 in), y down. */
import type { Shape, Xy } from './drawing.js';
import { CAPITAL_HEIGHT, TAIL_DEPTH, textWidth } from './labels/text-width.js';

/** Upright rectangle. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Straight stroke with a half width. */
export interface Capsule {
  readonly from: Xy;
  readonly to: Xy;
  readonly radius: number;
}

/** Distance of two places. @param a - place [-] @param b - place [-] @returns distance [-] */
export function distance(a: Xy, b: Xy): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** Place s times v away from a. @param a - place [-] @param v - direction [-] @param s - how far [-] @returns place [-] */
export function offset(a: Xy, v: Xy, s: number): Xy {
  return [a[0] + v[0] * s, a[1] + v[1] * s];
}

/** Unit direction from a to b; to the right where they coincide. @param a - place [-] @param b - place [-] @returns direction [-] */
export function heading(a: Xy, b: Xy): Xy {
  const length = distance(a, b);
  return length < 1e-9 ? [1, 0] : [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}

/** Whether two boxes share more than an edge, with some room between asked for. @param a - box [-] @param b - box [-] @param room - gap wanted [-] @returns true when they overlap */
export function boxesOverlap(a: Box, b: Box, room = 0): boolean {
  return (
    a.left < b.right + room && b.left < a.right + room && a.top < b.bottom + room && b.top < a.bottom + room
  );
}

/** Whether a box lies in another. @param inner - box [-] @param outer - box [-] @returns true when nothing sticks out */
export function boxInside(inner: Box, outer: Box): boolean {
  return (
    inner.left >= outer.left &&
    inner.right <= outer.right &&
    inner.top >= outer.top &&
    inner.bottom <= outer.bottom
  );
}

/** Smallest box round all boxes. @param boxes - boxes [-] @returns box [-] */
export function unionBox(boxes: readonly Box[]): Box {
  return boxes.reduce(
    (a, b) => ({
      left: Math.min(a.left, b.left),
      top: Math.min(a.top, b.top),
      right: Math.max(a.right, b.right),
      bottom: Math.max(a.bottom, b.bottom),
    }),
    { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity },
  );
}

/**
 * Box that a shape covers; text with its letters' heights.
 *
 * @param shape - any shape
 * @returns box [-]
 */
export function shapeBox(shape: Shape): Box {
  switch (shape.kind) {
    case 'path': {
      const xs = shape.points.map((p) => p[0]);
      const ys = shape.points.map((p) => p[1]);
      return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
    }
    case 'circle': {
      const [x, y] = shape.centre;
      return {
        left: x - shape.radius,
        top: y - shape.radius,
        right: x + shape.radius,
        bottom: y + shape.radius,
      };
    }
    case 'text': {
      const wide = textWidth(shape.text, shape.size, shape.weight);
      const left = shape.at[0] - (shape.anchor === 'start' ? 0 : shape.anchor === 'middle' ? wide / 2 : wide);
      const [, base] = shape.at;
      return {
        left,
        top: base - CAPITAL_HEIGHT * shape.size,
        right: left + wide,
        bottom: base + TAIL_DEPTH * shape.size,
      };
    }
  }
}

/** Distance of a place from a segment. @param p - place [-] @param a - end [-] @param b - end [-] @returns distance [-] */
export function segmentDistance(p: Xy, a: Xy, b: Xy): number {
  const run: Xy = [b[0] - a[0], b[1] - a[1]];
  const square = run[0] * run[0] + run[1] * run[1];
  const t =
    square < 1e-12 ? 0 : Math.min(1, Math.max(0, ((p[0] - a[0]) * run[0] + (p[1] - a[1]) * run[1]) / square));
  return distance(p, offset(a, run, t));
}

/** Where two segments come nearest to each other. */
export interface Approach {
  /** Distance there [-]. */
  readonly gap: number;
  /** Shares of the way along each [-]. */
  readonly first: number;
  readonly second: number;
}

/**
 * Nearest approach of two segments; for segments that run on top of each other the middle of the common part.
 *
 * @param a - first segment [-]
 * @param b - second segment [-]
 * @returns gap and where [-]
 */
export function nearestApproach(a: Capsule, b: Capsule): Approach {
  const [ax, ay, bx, by] = [a.from[0], a.from[1], b.from[0], b.from[1]];
  const [ux, uy, vx, vy] = [a.to[0] - ax, a.to[1] - ay, b.to[0] - bx, b.to[1] - by];
  const turn = ux * vy - uy * vx;
  if (Math.abs(turn) > 1e-9) {
    const s = ((bx - ax) * vy - (by - ay) * vx) / turn;
    const t = ((bx - ax) * uy - (by - ay) * ux) / turn;
    if (s >= 0 && s <= 1 && t >= 0 && t <= 1) return { gap: 0, first: s, second: t };
  }
  let [gap, first, second, count] = [Number.POSITIVE_INFINITY, 0, 0, 0];
  const consider = (s: number, t: number): void => {
    const d = Math.hypot(ax + ux * s - bx - vx * t, ay + uy * s - by - vy * t);
    if (d > gap + 1e-6) return;
    if (d < gap - 1e-6) [gap, first, second, count] = [d, 0, 0, 0];
    [first, second, count] = [first + s, second + t, count + 1];
  };
  const [uu, vv] = [ux * ux + uy * uy, vx * vx + vy * vy];
  for (const s of [0, 1]) consider(s, held(((ax + ux * s - bx) * vx + (ay + uy * s - by) * vy) / vv));
  for (const t of [0, 1]) consider(held(((bx + vx * t - ax) * ux + (by + vy * t - ay) * uy) / uu), t);
  return { gap, first: first / count, second: second / count };
}

/** A share held between 0 and 1; 0 for a segment without length. */
function held(share: number): number {
  return share > 0 ? Math.min(1, share) : 0;
}

/** Whether two segments cross. @param a - end of the first [-] @param b - other end [-] @param c - end of the second [-] @param d - other end [-] @returns true when they do */
export function segmentsCross(a: Xy, b: Xy, c: Xy, d: Xy): boolean {
  const side = (p: Xy, q: Xy, r: Xy) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** Whether a segment passes through a box. @param a - end [-] @param b - end [-] @param box - box [-] @returns true when it does */
export function segmentCrossesBox(a: Xy, b: Xy, box: Box): boolean {
  if (Math.max(a[0], b[0]) < box.left || Math.min(a[0], b[0]) > box.right) return false;
  if (Math.max(a[1], b[1]) < box.top || Math.min(a[1], b[1]) > box.bottom) return false;
  // The boxes overlap: they cross unless all corners lie on one side of the segment's line.
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const side = (x: number, y: number) => dx * (y - a[1]) - dy * (x - a[0]);
  const [one, two] = [side(box.left, box.top), side(box.right, box.bottom)];
  const [three, four] = [side(box.right, box.top), side(box.left, box.bottom)];
  return Math.min(one, two, three, four) <= 0 && Math.max(one, two, three, four) >= 0;
}

/** Box grown on all sides. @param box - box [-] @param room - by how much [-] @returns box [-] */
export function grown(box: Box, room: number): Box {
  return { left: box.left - room, top: box.top - room, right: box.right + room, bottom: box.bottom + room };
}
