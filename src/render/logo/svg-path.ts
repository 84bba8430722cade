/** Path data of SVG to lines and cubic curves (SVG 1.1, chapter 8, and appendix F.6 for arcs). */
import type { PathStep } from '../shapes.js';
import { arcSteps } from './svg-arc.js';

const NUMBER = /^[\s,]*([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)/;
const FLAG = /^[\s,]*([01])/;
/** Numbers each letter takes. */
const COUNTS: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};

/**
 * Reads path data.
 *
 * @param text - value of the attribute `d`
 * @param most - most steps to read
 * @returns steps in absolute places, or undefined where the data cannot be read or are too long
 */
export function readPathData(text: string, most: number): readonly PathStep[] | undefined {
  const steps: PathStep[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  // The last control point, which smooth curves mirror, and the letter it belongs to.
  let [controlX, controlY, before] = [0, 0, ''];
  let rest = text;
  let letter = '';
  while (/[^\s,]/.test(rest.slice(0, 64)) || rest.trim() !== '') {
    const [whole, found] = /^[\s,]*([MLHVCSQTAZmlhvcsqtaz])/.exec(rest) ?? [];
    if (whole !== undefined && found !== undefined) {
      letter = found;
      rest = rest.slice(whole.length);
    } else if (letter === '' || letter.toUpperCase() === 'Z') return undefined;
    const upper = letter.toUpperCase();
    if (steps.length === 0 && upper !== 'M') return undefined;
    const numbers: number[] = [];
    for (let i = 0; i < (COUNTS[upper] ?? 0); i++) {
      const match = (upper === 'A' && (i === 3 || i === 4) ? FLAG : NUMBER).exec(rest);
      const value = Number(match?.[1]);
      if (!match || !Number.isFinite(value) || Math.abs(value) > 1e7) return undefined;
      numbers.push(value);
      rest = rest.slice(match[0].length);
    }
    const isRelative = letter !== upper;
    const [dx, dy] = isRelative ? [x, y] : [0, 0];
    const n = (i: number): number => numbers[i] ?? 0;
    const [endX, endY] = [n(numbers.length - 2) + dx, n(numbers.length - 1) + dy];
    const curve = (c1x: number, c1y: number, c2x: number, c2y: number): void =>
      void steps.push(['C', c1x, c1y, c2x, c2y, endX, endY]);
    const mirrored = (letters: string): readonly [number, number] =>
      letters.includes(before) && before !== '' ? [2 * x - controlX, 2 * y - controlY] : [x, y];
    if (upper === 'Z') {
      steps.push(['Z']);
      [x, y] = [startX, startY];
    } else if (upper === 'H' || upper === 'V') {
      [x, y] = upper === 'H' ? [n(0) + dx, y] : [x, n(0) + dy];
      steps.push(['L', x, y]);
    } else {
      if (upper === 'M') {
        steps.push(['M', endX, endY]);
        [startX, startY] = [endX, endY];
        // Further pairs behind a move are lines.
        letter = isRelative ? 'l' : 'L';
      } else if (upper === 'L') steps.push(['L', endX, endY]);
      else if (upper === 'A') steps.push(...arcSteps(x, y, numbers, endX, endY));
      else if (upper === 'C' || upper === 'S') {
        const [c1x, c1y] = upper === 'C' ? [n(0) + dx, n(1) + dy] : mirrored('CS');
        [controlX, controlY] = upper === 'C' ? [n(2) + dx, n(3) + dy] : [n(0) + dx, n(1) + dy];
        curve(c1x, c1y, controlX, controlY);
      } else {
        [controlX, controlY] = upper === 'Q' ? [n(0) + dx, n(1) + dy] : mirrored('QT');
        const third = (from: number, to: number): number => from + ((to - from) * 2) / 3;
        curve(third(x, controlX), third(y, controlY), third(endX, controlX), third(endY, controlY));
      }
      [x, y] = [endX, endY];
    }
    before = upper;
    if (steps.length > most) return undefined;
  }
  return steps;
}
