import type { PathStep } from '../shapes.js';

/**
 * An elliptic arc of SVG as cubic curves, none over a quarter turn (SVG 1.1, appendix F.6).
 *
 * @param x - where it starts
 * @param y - where it starts
 * @param numbers - both radii, turn of the ellipse [degrees], large-arc flag, sweep flag, and the end as written
 * @param endX - where it ends
 * @param endY - where it ends
 * @returns curves, or one line where a radius is zero
 */
export function arcSteps(
  x: number,
  y: number,
  numbers: readonly number[],
  endX: number,
  endY: number,
): readonly PathStep[] {
  const [givenX = 0, givenY = 0, degrees = 0, large = 0, sweep = 0] = numbers;
  let [rx, ry] = [Math.abs(givenX), Math.abs(givenY)];
  if (x === endX && y === endY) return [];
  if (rx === 0 || ry === 0) return [['L', endX, endY]];
  const turn = (degrees * Math.PI) / 180;
  const [sin, cos] = [Math.sin(turn), Math.cos(turn)];
  const [halfX, halfY] = [(x - endX) / 2, (y - endY) / 2];
  const [px, py] = [cos * halfX + sin * halfY, -sin * halfX + cos * halfY];
  // Radii too small to reach are made just long enough.
  const reach = Math.sqrt((px / rx) ** 2 + (py / ry) ** 2);
  if (reach > 1) [rx, ry] = [rx * reach, ry * reach];
  const [a, b] = [(rx * py) ** 2, (ry * px) ** 2];
  const root = Math.sqrt(Math.max(0, (rx * ry) ** 2 - a - b) / (a + b)) * (large === sweep ? -1 : 1);
  const [cx, cy] = [(root * rx * py) / ry, (-root * ry * px) / rx];
  const first = Math.atan2((py - cy) / ry, (px - cx) / rx);
  let angle = Math.atan2((-py - cy) / ry, (-px - cx) / rx) - first;
  if (sweep === 1 && angle < 0) angle += 2 * Math.PI;
  if (sweep === 0 && angle > 0) angle -= 2 * Math.PI;
  const [middleX, middleY] = [cos * cx - sin * cy + (x + endX) / 2, sin * cx + cos * cy + (y + endY) / 2];
  const parts = Math.max(1, Math.ceil(Math.abs(angle) / (Math.PI / 2) - 1e-9));
  const each = angle / parts;
  const k = (4 / 3) * Math.tan(each / 4);
  const at = (u: number, v: number): readonly [number, number] => [
    middleX + cos * rx * u - sin * ry * v,
    middleY + sin * rx * u + cos * ry * v,
  ];
  return Array.from({ length: parts }, (_, i): PathStep => {
    const [from, to] = [first + i * each, first + (i + 1) * each];
    const c1 = at(Math.cos(from) - k * Math.sin(from), Math.sin(from) + k * Math.cos(from));
    const c2 = at(Math.cos(to) + k * Math.sin(to), Math.sin(to) - k * Math.cos(to));
    const end = i === parts - 1 ? ([endX, endY] as const) : at(Math.cos(to), Math.sin(to));
    return ['C', ...c1, ...c2, ...end];
  });
}
