/** Lines and words of the map of speeds and frequencies. */
import type { UnitSystem } from '../../input/installation.js';
import type { SpeedBand } from '../../mechanics/modes/lock-out-bands.js';
import { formatQuantity } from '../../units/index.js';
import type { Shape, Xy } from '../drawing.js';
import { line } from '../isometric/tube.js';

/** Size of all words [1/72 in]. */
export const SIZE = 7.5;

/** What the map is made of. */
export interface SpeedMapRequest {
  /** Natural frequencies, lowest first; `counts` for those that move the pump. */
  readonly modes: readonly {
    readonly number: number;
    readonly frequency: number;
    readonly counts: boolean;
  }[];
  readonly excitations: readonly { readonly name: string; readonly timesPerTurn: number }[];
  /** Rated speed [rad/s]. */
  readonly speed: number;
  /** Range of the drive [rad/s]. */
  readonly speeds?: { readonly lowest: number; readonly highest: number };
  /** Speeds to lock out. */
  readonly bands: readonly SpeedBand[];
  /** Margin as a share of the exciting frequency, where given [-]. */
  readonly margin?: number;
  readonly units: UnitSystem;
  /** [1/72 in] */
  readonly width: number;
  readonly height: number;
}

/** Where speeds and frequencies stand on the paper. */
export interface Axes {
  readonly x: (speed: number) => number;
  readonly y: (frequency: number) => number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** [rad/s] */
  readonly fastest: number;
  /** [Hz] */
  readonly highest: number;
}

type Listed = SpeedMapRequest['modes'][number];

/** Number and frequency of a vibration. @param mode - the vibration @param units - units @returns for example `4: 12.6 Hz` */
export const modeText = ({ number, frequency }: Listed, units: UnitSystem): string =>
  `${number}: ${formatQuantity(frequency, 'frequency', units)}`;

/** A speed as printed. @param speed - speed [rad/s] @param units - units @returns for example `1,770 rpm` */
export const perMinute = (speed: number, units: UnitSystem): string =>
  formatQuantity(speed, 'speed', units, { significant: 4 });

/** Words on a white plate. @param at - place on paper @param words - the words @param anchor - which end is there @param weight - weight @returns the shape */
export function text(
  at: Xy,
  words: string,
  anchor: 'start' | 'middle' | 'end',
  weight: 'regular' | 'bold' = 'regular',
): Shape {
  return { kind: 'text', at, text: words, size: SIZE, anchor, weight, ink: 'black', plate: true };
}

/**
 * Level lines of natural frequencies with their names at the right, pushed apart where they would overlap.
 *
 * @param request - natural frequencies and units
 * @param axes - where they stand
 * @returns lines and names
 */
export function modeShapes({ modes, units }: SpeedMapRequest, axes: Axes): readonly Shape[] {
  const drawn = modes.filter(({ frequency }) => frequency <= axes.highest);
  const places: number[] = [];
  for (const { frequency } of drawn) {
    const before = places.at(-1) ?? Number.POSITIVE_INFINITY;
    places.push(Math.min(axes.y(frequency), before - SIZE * 1.1));
  }
  // What was pushed over the top comes down again, and pushes those below it.
  for (let i = places.length - 1; i >= 0; i--) {
    const above = places[i + 1] ?? axes.top - SIZE * 1.1;
    places[i] = Math.max(places[i] ?? 0, above + SIZE * 1.1);
    if ((places[i + 1] ?? 0) === 0) places[i] = Math.max(places[i] ?? 0, axes.top);
  }
  return drawn.flatMap((mode, i) => {
    const y = axes.y(mode.frequency);
    const at = places[i] ?? y;
    return [
      line(
        [
          [axes.left, y],
          [axes.right, y],
        ],
        mode.counts ? 'medium' : 'dotted',
        'none',
        false,
        mode.counts ? 'black' : 'grey',
      ),
      line(
        [
          [axes.right, y],
          [axes.right + 6, at],
        ],
        'fine',
        'none',
        false,
        'grey',
      ),
      text(
        [axes.right + 8, at + SIZE * 0.33],
        modeText(mode, units),
        'start',
        mode.counts ? 'bold' : 'regular',
      ),
    ];
  });
}

/**
 * Sloping line of one excitation with its name.
 *
 * @param excitation - name and times per turn
 * @param axes - where it stands
 * @returns line and name
 */
export function excitationShapes(
  { name, timesPerTurn }: SpeedMapRequest['excitations'][number],
  axes: Axes,
): readonly Shape[] {
  const slope = timesPerTurn / (2 * Math.PI);
  const fastest = Math.min(axes.fastest, axes.highest / slope);
  const end: Xy = [axes.x(fastest), axes.y(slope * fastest)];
  const share = fastest < axes.fastest ? 0.86 : 0.93;
  const named: Xy = [axes.x(share * fastest) - 3, axes.y(slope * share * fastest) - 3];
  return [line([[axes.x(0), axes.y(0)], end], 'heavy', 'none'), text(named, name, 'end', 'bold')];
}

/**
 * Circles where running speed or a multiple of it meets a vibration of the pump within the speeds that are run.
 *
 * @param request - natural frequencies, excitations and speeds
 * @param axes - where they stand
 * @returns circles
 */
export function crossings(
  { modes, excitations, speed, speeds }: SpeedMapRequest,
  axes: Axes,
): readonly Shape[] {
  if (speeds === undefined) {
    return excitations.flatMap(({ timesPerTurn }) => {
      const frequency = (timesPerTurn * speed) / (2 * Math.PI);
      return frequency > axes.highest ? [] : [mark([axes.x(speed), axes.y(frequency)], 'white')];
    });
  }
  return excitations.flatMap(({ timesPerTurn }) =>
    modes.flatMap(({ frequency, counts }) => {
      const at = (2 * Math.PI * frequency) / timesPerTurn;
      const isRun = counts && at >= speeds.lowest && at <= speeds.highest && frequency <= axes.highest;
      return isRun ? [mark([axes.x(at), axes.y(frequency)], timesPerTurn === 1 ? 'dark' : 'white')] : [];
    }),
  );
}

const mark = (centre: Xy, fill: 'white' | 'dark'): Shape => ({
  kind: 'circle',
  centre,
  radius: 2.6,
  stroke: 'medium',
  fill,
  ink: 'accent',
});
