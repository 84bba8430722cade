/** Speeds across, frequencies up: lines of what shakes the pump, natural frequencies, and the speeds to keep out of. */
import { formatNumber } from '../../units/index.js';
import type { Drawing, Shape } from '../drawing.js';
import { line } from '../isometric/tube.js';
import { textWidth } from '../labels/text-width.js';
import {
  type Axes,
  crossings,
  excitationShapes,
  modeShapes,
  modeText,
  perMinute,
  SIZE,
  type SpeedMapRequest,
  text,
} from './speed-map-lines.js';

export type { SpeedMapRequest };

const LEFT = 40;
const TOP = 16;
const FOOT = 40;
/** Frequencies are drawn up to so many times the fastest turns a second. */
const TALLEST = 2.3;

/**
 * Map of speeds and frequencies. Where a sloping line crosses a level one, that vibration is excited.
 *
 * @param request - natural frequencies, excitations, speeds and size [1/72 in]
 * @returns drawing named `speed-map`
 */
export function speedMap(request: SpeedMapRequest): Drawing {
  const { width, height, units, speed, speeds } = request;
  const labels = request.modes.map((mode) => modeText(mode, units));
  const right = width - 8 - Math.max(60, ...labels.map((text) => textWidth(text, SIZE)));
  const fastest = 1.1 * Math.max(speed, speeds?.highest ?? 0);
  const highest = (TALLEST * fastest) / (2 * Math.PI);
  const bottom = height - FOOT;
  const axes: Axes = {
    x: (at) => LEFT + ((right - LEFT) * at) / fastest,
    y: (frequency) => bottom - ((bottom - TOP) * frequency) / highest,
    left: LEFT,
    top: TOP,
    right,
    bottom,
    fastest,
    highest,
  };
  const shapes = [
    ...rangeShapes(request, axes),
    ...modeShapes(request, axes),
    ...request.excitations.flatMap((excitation) => excitationShapes(excitation, axes)),
    ...crossings(request, axes),
    ...frameShapes(request, axes),
    ...footShapes(request),
  ];
  return { name: 'speed-map', width, height, title: 'Speeds and frequencies', alt: altText(request), shapes };
}

/** Speeds the drive may run at, and within them those to lock out. */
function rangeShapes({ speed, speeds, bands }: SpeedMapRequest, axes: Axes): readonly Shape[] {
  const strip = (from: number, to: number, fill: 'light' | 'hatch'): Shape =>
    line(
      [
        [axes.x(from), TOP],
        [axes.x(to), TOP],
        [axes.x(to), axes.bottom],
        [axes.x(from), axes.bottom],
      ],
      fill === 'hatch' ? 'fine' : 'none',
      fill,
      true,
    );
  const upright = (at: number): Shape =>
    line(
      [
        [axes.x(at), TOP],
        [axes.x(at), axes.bottom],
      ],
      'medium',
    );
  if (speeds === undefined) return [upright(speed)];
  return [
    strip(speeds.lowest, speeds.highest, 'light'),
    ...bands.map(({ from, to }) => strip(from, to, 'hatch')),
    upright(speeds.lowest),
    upright(speeds.highest),
  ];
}

/** Axes with round numbers. */
function frameShapes({ units, speed, speeds }: SpeedMapRequest, axes: Axes): readonly Shape[] {
  const { bottom, right, highest } = axes;
  const step = [5, 10, 20, 25, 50, 100].find((s) => highest / s <= 8) ?? 200;
  const ticks = Array.from({ length: Math.floor(highest / step) + 1 }, (_, i) => i * step);
  const shown = speeds === undefined ? [speed] : [speeds.lowest, speeds.highest];
  return [
    line(
      [
        [LEFT, TOP],
        [LEFT, bottom],
        [right, bottom],
      ],
      'medium',
    ),
    ...ticks.flatMap((frequency): readonly Shape[] => [
      line(
        [
          [LEFT - 3, axes.y(frequency)],
          [LEFT, axes.y(frequency)],
        ],
        'fine',
      ),
      text([LEFT - 5, axes.y(frequency) + SIZE * 0.33], formatNumber(frequency, 'frequency', units), 'end'),
    ]),
    text([LEFT - 5, TOP - 5], 'Hz', 'end', 'bold'),
    text([LEFT, bottom + 11], '0', 'middle'),
    ...shown.map((at) => text([axes.x(at), bottom + 11], perMinute(at, units), 'middle', 'bold')),
  ];
}

function footShapes(request: SpeedMapRequest): readonly Shape[] {
  const { height, speeds, bands, margin } = request;
  const crossing =
    speeds === undefined
      ? 'Circles: what shakes the pump at its speed.'
      : `Grey: range of the drive.${bands.length === 0 ? '' : ' Hatched: to be locked out.'} Circles: a vibration of the pump is excited.`;
  const words = [
    'Level lines: natural frequencies, strong where the pump moves, dotted where the pipe does.',
    `${crossing}${margin === undefined ? ' No margin given.' : ''}`,
  ];
  return words.map((row, i) => ({
    kind: 'text',
    at: [3, height - 15 + i * 9.5],
    text: row,
    size: 7.2,
    anchor: 'start',
    weight: 'regular',
    ink: 'black',
  }));
}

function altText(request: SpeedMapRequest): string {
  const { modes, excitations, speed, speeds, bands, units } = request;
  const range =
    speeds === undefined
      ? `speed ${perMinute(speed, units)}`
      : `speeds ${perMinute(speeds.lowest, units)} to ${perMinute(speeds.highest, units)}`;
  const locked = bands.map(({ from, to }) => `${perMinute(from, units)} to ${perMinute(to, units)}`);
  const listed = modes.map((mode) => `${modeText(mode, units)}${mode.counts ? ' (pump)' : ''}`);
  return `Map of ${range} against natural frequencies ${listed.join(', ')}; lines of ${excitations.map(({ name }) => name).join(', ')}.${locked.length === 0 ? '' : ` To be locked out: ${locked.join('; ')}.`}`;
}
