import { describe, expect, test } from 'vitest';
import { speedMap } from '../../src/drawing/charts/speed-map.js';
import type { SpeedMapRequest } from '../../src/drawing/charts/speed-map-lines.js';
import { modeShapeDrawing } from '../../src/drawing/isometric/mode-shape.js';
import { reviewed } from '../report/fixture.js';
import { expectSound, textsOf } from './judge.js';

const RPM = Math.PI / 30;

describe('the picture of a vibration', () => {
  const { installation, layout, frequencies } = reviewed();
  const built = { installation, layout };
  const request = { units: 'si' as const, width: 498, height: 230, number: 1, name: 'vibration-1' };
  const modes = frequencies?.modes ?? [];
  const [lowest] = modes;
  if (lowest === undefined) throw new Error('nothing vibrates');

  test.each(modes.slice(0, 5))('at $frequency Hz is sound', (mode) => {
    const words = 'the motor top sways east and west';
    const drawing = modeShapeDrawing({ ...built, ...request, mode, words });
    expectSound(drawing);
    expect(drawing.name).toBe('vibration-1');
    expect(drawing.alt).toContain(words);
  });

  test('shows both ends of the swing, one dash-dot and one dotted, on either side', () => {
    const drawing = modeShapeDrawing({ ...built, ...request, mode: lowest, words: 'it swings' });
    const strokes = drawing.shapes.flatMap((s) => (s.kind === 'path' ? [s.stroke] : []));
    const count = (style: string) => strokes.filter((stroke) => stroke === style).length;
    expect(count('dash-dot')).toBeGreaterThan(10);
    expect(count('dotted')).toBe(count('dash-dot'));
  });

  test('a shape of nothing, or of metres, stays on the paper', () => {
    const rest = { frequency: 1, shape: {}, modalMass: 1, massShare: [0, 0, 0] } as const;
    expectSound(modeShapeDrawing({ ...built, ...request, mode: rest, words: 'nothing moves' }));
    const wild = Object.fromEntries(
      Object.keys(lowest.shape).map((name, i) => [
        name,
        { translation: [3 * (i % 2), -4, 5] as const, rotation: [0.3, 2, -4] as const },
      ]),
    );
    expectSound(
      modeShapeDrawing({ ...built, ...request, mode: { ...lowest, shape: wild }, words: 'all of it' }),
    );
  });
});

describe('the map of speeds', () => {
  const modes = [1.6, 5.4, 9.5, 12.6, 17.7, 20.6, 24.7, 26.2, 28.7, 35.1, 40.4, 50.9].map((frequency, i) => ({
    number: i + 1,
    frequency,
    counts: i % 2 === 0,
  }));
  const plain: SpeedMapRequest = {
    modes,
    excitations: [
      { name: 'running speed', timesPerTurn: 1 },
      { name: 'twice running speed', timesPerTurn: 2 },
      { name: 'blade passing', timesPerTurn: 6 },
    ],
    speed: 1770 * RPM,
    bands: [],
    units: 'us',
    width: 498,
    height: 250,
  };
  const drive: SpeedMapRequest = {
    ...plain,
    speeds: { lowest: 700 * RPM, highest: 1770 * RPM },
    bands: [{ from: 820 * RPM, to: 1005 * RPM, frequencies: [15.1] }],
    margin: 0.1,
  };

  test.each([
    ['one speed', plain],
    ['a range', drive],
    ['no vibration', { ...plain, modes: [] }],
    [
      'many that crowd',
      {
        ...drive,
        modes: Array.from({ length: 18 }, (_, i) => ({
          number: i + 1,
          frequency: 60 + i / 50,
          counts: true,
        })),
      },
    ],
  ])('of %s keeps its lines and words on the paper', (_what, request) => {
    const drawing = speedMap(request);
    const names = textsOf(drawing).filter((text) => /^\d+: /.test(text));
    expect(names.length).toBe(request.modes.length);
    for (const shape of drawing.shapes) {
      const points =
        shape.kind === 'path' ? shape.points : shape.kind === 'circle' ? [shape.centre] : [shape.at];
      for (const [x, y] of points) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(drawing.width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(drawing.height);
      }
    }
  });

  test('names of vibrations never lie on each other', () => {
    const drawing = speedMap(drive);
    const heights = drawing.shapes
      .flatMap((s) => (s.kind === 'text' && /^\d+: /.test(s.text) ? [s.at[1]] : []))
      .sort((a, b) => a - b);
    heights.slice(1).forEach((height, i) => {
      expect(height - (heights[i] ?? 0)).toBeGreaterThan(7.5);
    });
  });

  test('marks where a vibration of the pump meets running speed within the range, and no other', () => {
    const dark = speedMap(drive).shapes.filter((s) => s.kind === 'circle' && s.fill === 'dark');
    // Counting: 17.7, 24.7 and 28.7 Hz lie between 700 and 1770 rpm; 9.5 Hz below, 40.4 Hz above.
    expect(dark).toHaveLength(3);
  });

  test('says the speeds to lock out, and that no margin is given', () => {
    expect(speedMap(drive).alt).toContain('To be locked out: 820 rpm to 1,005 rpm');
    expect(textsOf(speedMap(plain)).join(' ')).toContain('No margin given');
    expect(textsOf(speedMap(drive)).join(' ')).not.toContain('No margin given');
  });
});
