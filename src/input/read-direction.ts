import { parseQuantity } from '../units/index.js';
import type { Vec3 } from './installation.js';

const half = Math.SQRT1_2;

/** Directions with a name: x east, y north, z up. */
const named: Readonly<Record<string, Vec3>> = {
  north: [0, 1, 0],
  'north-east': [half, half, 0],
  east: [1, 0, 0],
  'south-east': [half, -half, 0],
  south: [0, -1, 0],
  'south-west': [-half, -half, 0],
  west: [-1, 0, 0],
  'north-west': [-half, half, 0],
  up: [0, 0, 1],
  down: [0, 0, -1],
};

/** Words a direction may start with. */
export const directionWords: readonly string[] = [...Object.keys(named), 'bearing 30 deg'];

/**
 * Reads a direction of the building plan: `north`, `south-west`, `up`, `bearing 225 deg` (clockwise from north), each
 * level one also `rising 45 deg` or `falling 10 deg`.
 *
 * @param text - as written [-]
 * @returns unit vector, or undefined where it is no direction [-]
 */
export function readDirection(text: string): Vec3 | undefined {
  const plain = text.trim().toLowerCase().replace(/\s+/gu, ' ');
  const sloped = /^(.+) (rising|falling) (.+)$/u.exec(plain);
  if (!sloped) return levelDirection(plain) ?? (Object.hasOwn(named, plain) ? named[plain] : undefined);
  const level = levelDirection(sloped[1] ?? '');
  const slope = parseQuantity(sloped[3] ?? '', 'angle');
  if (!level || !slope.ok || !(slope.value > 0) || !(slope.value < Math.PI / 2)) return undefined;
  const rise = sloped[2] === 'rising' ? Math.sin(slope.value) : -Math.sin(slope.value);
  const run = Math.cos(slope.value);
  return [level[0] * run, level[1] * run, rise];
}

function levelDirection(plain: string): Vec3 | undefined {
  const bearing = /^bearing (.+)$/u.exec(plain);
  if (bearing) {
    const angle = parseQuantity(bearing[1] ?? '', 'angle');
    return angle.ok ? [clean(Math.sin(angle.value)), clean(Math.cos(angle.value)), 0] : undefined;
  }
  const word = plain.replace(/^(north|south)[ -]?(east|west)$/u, '$1-$2');
  const direction = Object.hasOwn(named, word) ? named[word] : undefined;
  return direction?.[2] === 0 ? direction : undefined;
}

/** Sine and cosine of right angles miss 0 and 1 by rounding; such dust would tilt a drawing. */
function clean(component: number): number {
  if (Math.abs(component) < 1e-12) return 0;
  return Math.abs(Math.abs(component) - 1) < 1e-12 ? Math.sign(component) : component;
}
