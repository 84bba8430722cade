import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isometricDrawing } from '../../src/drawing/isometric/isometric.js';
import type { Vec3 } from '../../src/model/conventions.js';
import {
  type Built,
  branches,
  build,
  type Case,
  DOWN,
  EAST,
  finding,
  fourHangers,
  longRiser,
  NORTH,
  SOUTH,
  type Step,
  UP,
  WEST,
} from './fixture.js';
import { expectSound, straying, textsOf, textsOnTexts } from './judge.js';

const draw = (built: Built, more: Partial<Parameters<typeof isometricDrawing>[0]> = {}) =>
  isometricDrawing({ ...built, findings: [], units: 'us', width: 530, height: 400, ...more });

describe.each([
  ['four hangers', fourHangers],
  ['a long riser', longRiser],
  ['branches', branches],
])('the picture of a line with %s', (_name, made) => {
  test.each([0, Math.PI / 2, Math.PI, -Math.PI / 2, 0.4])(
    'is sound when the plan is turned by %d rad',
    (turned) => {
      expectSound(draw(build({ ...made, turned })));
    },
  );

  test('comes out the same twice', () => {
    expect(draw(build(made))).toEqual(draw(build(made)));
  });

  test('shows every mark with its load, and names it for those who cannot see it', () => {
    const built = build(made);
    const drawing = draw(built);
    for (const { mark } of built.layout.supports) {
      expect(textsOf(drawing)).toContain(mark);
      expect(drawing.alt).toContain(mark);
    }
    expect(textsOf(drawing).filter((t) => t.endsWith('lb hot')).length).toBeGreaterThanOrEqual(
      built.layout.supports.length,
    );
  });

  test('fits a narrow page', () => {
    expectSound(draw(build(made), { width: 320, height: 260 }));
  });
});

test('a plan turned by a quarter, a half and three quarters is drawn the same, but for the north arrow', () => {
  const marks = (turned: number) =>
    textsOf(draw(build({ ...fourHangers, turned })))
      .filter((t) => !t.startsWith('Seen') && !t.startsWith('(axial'))
      .sort();
  for (const quarter of [1, 2, 3]) expect(marks((quarter * Math.PI) / 2)).toEqual(marks(0));
});

test('a support and a nozzle that exceed something say so in words', () => {
  const drawing = draw(build(fourHangers), {
    findings: [
      finding({ at: 'H2', verdict: 'exceeds' }),
      finding({ at: 'suction nozzle', verdict: 'exceeds' }),
      finding({ at: 'elbow 3', verdict: 'exceeds' }),
    ],
  });
  expect(textsOf(drawing)).toEqual(
    expect.arrayContaining(['H2 exceeds', 'suction nozzle exceeds', 'elbow 3 exceeds']),
  );
});

test('a comparison that exceeds does not mark a support', () => {
  const drawing = draw(build(fourHangers), {
    findings: [finding({ at: 'H2', verdict: 'exceeds', comparison: true })],
  });
  expect(textsOf(drawing)).toContain('H2');
});

test('the loads of one condition are those of that condition', () => {
  const built = build(fourHangers);
  const h1 = built.response.conditions.filled?.supports.H1?.load.force[2] ?? Number.NaN;
  const pounds = Math.round(-h1 / 4.4482216152605);
  expect(textsOf(draw(built, { condition: 'filled' }))).toContain(`${pounds} lb filled`);
});

test('a hanger that goes slack is said to lift off', () => {
  const built = build(fourHangers);
  const hot = built.response.conditions.hot as NonNullable<(typeof built.response.conditions)['hot']>;
  const slack = {
    load: { force: [0, 0, 0] as Vec3, moment: [0, 0, 0] as Vec3 },
    states: ['lifted' as const],
  };
  const response = {
    ...built.response,
    conditions: { ...built.response.conditions, hot: { ...hot, supports: { ...hot.supports, H1: slack } } },
  };
  expect(textsOf(draw({ ...built, response }))).toContain('lifts off: hot');
});

test('long runs are shortened and the picture says so; a short line is left as it is', () => {
  expect(draw(build(longRiser)).alt).toContain('Long runs shortened');
  const short: Case = {
    diameter: 0.168,
    walks: [
      {
        from: 'suction',
        steps: [
          { do: 'straight', length: 0.5 },
          { do: 'end', end: 'anchored' },
        ],
      },
      {
        from: 'discharge',
        steps: [
          { do: 'straight', length: 0.5 },
          { do: 'end', end: 'anchored' },
        ],
      },
    ],
  };
  expect(draw(build(short)).alt).not.toContain('shortened');
});

test('a line so crowded that not every label fits leaves labels out, says which, and prints none on another', () => {
  const steps: Step[] = Array.from({ length: 60 }, (_, i): Step[] => [
    { do: 'straight', length: 0.4 },
    { do: 'support', kind: 'hanger', mark: `H${i + 1}` },
  ]).flat();
  const built = build({
    diameter: 0.1,
    walks: [
      { from: 'suction', steps: [...steps, { do: 'end', end: 'free' }] },
      { from: 'discharge', steps: [{ do: 'straight', length: 0.5 }] },
    ],
  });
  const drawing = draw(built, { width: 300, height: 220 });
  expectSound(drawing);
  expect(drawing.alt).toContain('for want of room');
});

const turns: readonly Vec3[] = [EAST, WEST, NORTH, SOUTH, UP, DOWN];
const anyStep = (n: number): fc.Arbitrary<Step> =>
  fc.oneof(
    fc.double({ min: 0.15, max: 14, noNaN: true }).map((length): Step => ({ do: 'straight', length })),
    fc.constantFrom(...turns).map((turn): Step => ({ do: 'elbow', turn })),
    fc.constantFrom<Step>(
      { do: 'valve', valve: 'gate', length: 0.3 },
      { do: 'valve', valve: 'swing check', length: 0.4 },
      { do: 'flange' },
      { do: 'grooved' },
      { do: 'connector', length: 0.2 },
      { do: 'reducer', diameter: 0.114, length: 0.2 },
    ),
    fc
      .constantFrom(
        'hanger' as const,
        'spring-hanger' as const,
        'rest' as const,
        'guide' as const,
        'stop' as const,
        'anchor' as const,
        'stand' as const,
      )
      .map((kind): Step => ({ do: 'support', kind, mark: `M${n}` })),
  );

/** A walk in which no elbow turns straight on or back. */
const anyWalk = (first: Vec3, marks: number): fc.Arbitrary<readonly Step[]> =>
  fc.tuple(...Array.from({ length: 14 }, (_, i) => anyStep(marks + i))).map((steps) => {
    let way = first;
    return steps.filter((step) => {
      if (step.do !== 'elbow') return true;
      if (Math.abs(way[0] * step.turn[0] + way[1] * step.turn[1] + way[2] * step.turn[2]) > 0.5) return false;
      way = step.turn;
      return true;
    });
  });

test('any walk gives a picture inside its frame without text on text', () => {
  fc.assert(
    fc.property(
      anyWalk(SOUTH, 100),
      anyWalk(NORTH, 200),
      fc.constantFrom(0.06, 0.168, 0.508),
      fc.double({ min: -3, max: 3, noNaN: true }),
      (suction, discharge, diameter, turned) => {
        const drawing = draw(
          build({
            diameter,
            turned,
            walks: [
              { from: 'suction', steps: suction },
              { from: 'discharge', steps: discharge },
            ],
          }),
        );
        expect(straying(drawing)).toEqual([]);
        expect(textsOnTexts(drawing)).toEqual([]);
      },
    ),
    { numRuns: 40, seed: 20260914 },
  );
});
