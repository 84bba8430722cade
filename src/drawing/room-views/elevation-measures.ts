/** Measures of the side view. */
import type { Installation, Sourced, UnitSystem } from '../../input/installation.js';
import { formatQuantity } from '../../units/index.js';
import type { Ink, Shape, Xy } from '../drawing.js';
import { arrowHead } from '../isometric/part-symbols.js';
import { line } from '../isometric/tube.js';
import type { ElevationFrame } from './elevation-frame.js';

/** A measure between two elevations. */
export interface Measure {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  /** Place across the paper, from the middle of the pump [1/72 in]. */
  readonly x: number;
  /** How near to the middle of the pump its witness lines come [1/72 in]. */
  readonly reach: number;
  readonly words: string;
  readonly ink: Ink;
}

const assumed = (value: Sourced): string => (value.origin.kind === 'assumed' ? ' (assumed)' : '');

/**
 * Height needed and clear over the motor, motor top over the ports, ports over the floor; what is not given is left out.
 *
 * @param installation - pump and room [m]
 * @param units - units to print in
 * @param elevation - frame of the elevation
 * @returns measures
 */
export function measuresOf(
  installation: Installation,
  units: UnitSystem,
  elevation: ElevationFrame,
): readonly Measure[] {
  const { outline, position } = installation.pump;
  const print = (metres: number) => formatQuantity(metres, 'length', units, { feetInches: true });
  const half = (Math.max(outline.motorDiameter.value, 0.1) / 2) * elevation.projection.scale;
  const far = (elevation.window.right - elevation.window.left) / 2 - 10;
  const lowest = elevation.overhead[0];
  const needed = outline.withdrawal;
  const found: Measure[] = [];
  if (needed !== undefined)
    found.push({
      name: 'needed',
      low: elevation.motorTop,
      high: elevation.motorTop + needed.value,
      x: half + 9,
      reach: half + 9,
      words: `needed to draw the motor ${print(needed.value)}${assumed(needed)}`,
      ink: 'black',
    });
  if (lowest !== undefined) {
    const clear = lowest.at - elevation.motorTop;
    const short =
      needed !== undefined && clear < needed.value ? `, short by ${print(needed.value - clear)}` : '';
    const clash =
      clear <= 0
        ? `${lowest.name} reaches ${print(-clear)} under the motor top`
        : `clear ${print(clear)} to ${lowest.name}${short}`;
    found.push({
      name: 'clear',
      low: elevation.motorTop,
      high: lowest.at,
      x: -half - 9,
      reach: half + 9,
      words: clash,
      ink: short !== '' || clear <= 0 ? 'accent' : 'black',
    });
  }
  found.push({
    name: 'motor top',
    low: position[2],
    high: elevation.motorTop,
    x: far,
    reach: half,
    words: `motor top ${print(outline.motorTop.value)} over port centre${assumed(outline.motorTop)}`,
    ink: 'black',
  });
  if (elevation.floor.given && installation.room.floor !== undefined)
    found.push({
      name: 'port',
      low: installation.room.floor,
      high: position[2],
      x: -far,
      reach: 0,
      words: `port centre ${print(position[2] - installation.room.floor)} over floor`,
      ink: 'black',
    });
  return found;
}

/** Ends of a measure on paper, the lower first. @param measure - the measure [m] @param elevation - frame of the elevation @returns places [-] */
export function measureEnds(measure: Measure, elevation: ElevationFrame): readonly [Xy, Xy] {
  const { projection, window, floor } = elevation;
  const y = (at: number) => window.bottom - (at - floor.at) * projection.scale;
  const x = (window.left + window.right) / 2 + measure.x;
  return [
    [x, y(measure.low)],
    [x, y(measure.high)],
  ];
}

/** Line of a measure with arrows, ticks and witness lines. @param measure - the measure [m] @param elevation - frame of the elevation @returns shapes */
export function measureShapes(measure: Measure, elevation: ElevationFrame): readonly Shape[] {
  const [low, high] = measureEnds(measure, elevation);
  if (Math.abs(low[1] - high[1]) < 0.5) return [];
  const head = Math.min(4.5, Math.abs(low[1] - high[1]) / 2);
  const tick = (p: Xy): Shape =>
    line(
      [
        [p[0] - 4, p[1]],
        [p[0] + 4, p[1]],
      ],
      'fine',
      'none',
      false,
      measure.ink,
    );
  const centre = (elevation.window.left + elevation.window.right) / 2;
  const inward = centre + Math.sign(low[0] - centre) * Math.min(Math.abs(measure.x), measure.reach);
  const witness = [low, high]
    .filter((p) => p[1] < elevation.window.bottom - 1)
    .map(
      (p): Shape =>
        line(
          [
            [p[0], p[1]],
            [inward, p[1]],
          ],
          'dotted',
          'none',
          false,
          'grey',
        ),
    );
  return [
    ...(Math.abs(inward - low[0]) > 12 ? witness : []),
    line([low, high], 'fine', 'none', false, measure.ink),
    arrowHead(low, high, head, measure.ink),
    arrowHead(high, low, head, measure.ink),
    tick(low),
    tick(high),
  ];
}
