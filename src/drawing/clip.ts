/** Cutting lines off at the edge of a window. */
import type { Xy } from './drawing.js';
import { type Box, offset } from './plane.js';

/**
 * Part of a segment inside a window.
 *
 * @param a - end [-]
 * @param b - end [-]
 * @param window - window [-]
 * @returns the part, and which ends were cut; undefined when nothing is inside
 */
export function clippedSegment(
  a: Xy,
  b: Xy,
  window: Box,
): { readonly from: Xy; readonly to: Xy; readonly cutFrom: boolean; readonly cutTo: boolean } | undefined {
  let [low, high] = [0, 1];
  const run: Xy = [b[0] - a[0], b[1] - a[1]];
  const sides: readonly (readonly [number, number])[] = [
    [-run[0], a[0] - window.left],
    [run[0], window.right - a[0]],
    [-run[1], a[1] - window.top],
    [run[1], window.bottom - a[1]],
  ];
  for (const [speed, room] of sides) {
    if (Math.abs(speed) < 1e-12) {
      if (room < 0) return undefined;
      continue;
    }
    const t = room / speed;
    if (speed < 0) low = Math.max(low, t);
    else high = Math.min(high, t);
  }
  if (low >= high) return undefined;
  return { from: offset(a, run, low), to: offset(a, run, high), cutFrom: low > 0, cutTo: high < 1 };
}

/** Part of a box inside a window; undefined when nothing is. @param box - box [-] @param window - window [-] @returns box [-] */
export function clippedBox(box: Box, window: Box): Box | undefined {
  const cut = {
    left: Math.max(box.left, window.left),
    top: Math.max(box.top, window.top),
    right: Math.min(box.right, window.right),
    bottom: Math.min(box.bottom, window.bottom),
  };
  return cut.left < cut.right && cut.top < cut.bottom ? cut : undefined;
}

/** Whether a place lies in a window. @param p - place [-] @param window - window [-] @returns true when inside */
export function isInside(p: Xy, window: Box): boolean {
  return p[0] >= window.left && p[0] <= window.right && p[1] >= window.top && p[1] <= window.bottom;
}
