import { describe, expect, test } from 'vitest';
import { ratioBars } from '../../src/drawing/charts/ratio-bars.js';
import type { Shape } from '../../src/drawing/drawing.js';
import { exaggeration } from '../../src/drawing/isometric/moved-line.js';
import { movementDrawing } from '../../src/drawing/isometric/movement.js';
import { elevationDrawing } from '../../src/drawing/room-views/elevation.js';
import { branches, build, finding, fourHangers, longRiser } from './fixture.js';
import { expectSound, textsOf } from './judge.js';

const paths = (shapes: readonly Shape[]) =>
  shapes.filter((s): s is Extract<Shape, { kind: 'path' }> => s.kind === 'path');

describe('the picture of movement', () => {
  const request = { units: 'si' as const, width: 530, height: 400, condition: 'hot' };

  test.each([fourHangers, longRiser, branches])('is sound', (made) => {
    expectSound(movementDrawing({ ...build(made), ...request }));
  });

  test('states how much it enlarges, the largest movement and where', () => {
    const built = build(fourHangers);
    const drawing = movementDrawing({ ...built, ...request });
    const sizes = Object.values(built.response.conditions.hot?.movements ?? {}).map((m) =>
      Math.hypot(...m.translation),
    );
    const largest = Math.max(...sizes) * 1000;
    expect(drawing.alt).toMatch(/drawn \d+ times as large as they are/);
    expect(drawing.alt).toContain(`${Number(largest.toPrecision(3))} mm`);
    expect(paths(drawing.shapes).some((s) => s.stroke === 'dash-dot')).toBe(true);
  });

  test('says so when nothing moves', () => {
    const built = build(fourHangers);
    const hot = built.response.conditions.hot as NonNullable<(typeof built.response.conditions)['hot']>;
    const still = Object.fromEntries(
      Object.keys(hot.movements).map((name) => [
        name,
        { translation: [0, 0, 0] as const, rotation: [0, 0, 0] as const },
      ]),
    );
    const response = { ...built.response, conditions: { hot: { ...hot, movements: still } } };
    expect(movementDrawing({ ...built, ...request, response }).alt).toContain('Nothing moves');
  });

  test('says so when the condition was not solved', () => {
    expect(movementDrawing({ ...build(fourHangers), ...request, condition: 'test' }).alt).toContain(
      'was not solved',
    );
  });

  test('stays inside its frame when an end moves by metres', () => {
    const built = build(branches);
    const hot = built.response.conditions.hot as NonNullable<(typeof built.response.conditions)['hot']>;
    const wild = Object.fromEntries(
      Object.keys(hot.movements).map((name, i) => [
        name,
        { translation: [3 * (i % 2), -4, 5] as const, rotation: [0.3, 0.2, -0.4] as const },
      ]),
    );
    expectSound(
      movementDrawing({
        ...built,
        ...request,
        response: { ...built.response, conditions: { hot: { ...hot, movements: wild } } },
      }),
    );
  });

  test.each([
    [0.003, 50, 200],
    [0.01, 50, 50],
    [0.5, 80, 1],
    [0, 50, 1],
  ])('a movement of %d m at %d points per metre is drawn %d times as large', (largest, scale, factor) => {
    expect(exaggeration(largest, scale)).toBe(factor);
  });
});

describe('the bars of ratio', () => {
  const findings = [
    finding({ at: 'H1', verdict: 'meets', ratio: 0.82 }),
    finding({ at: 'H2', verdict: 'exceeds', ratio: 1.3 }),
    finding({ at: 'suction nozzle', verdict: 'exceeds', ratio: 7.2 }),
    finding({ at: 'H3', verdict: 'cannot-tell' }),
    finding({ at: 'H4', verdict: 'does-not-apply' }),
  ];
  const drawing = ratioBars({ findings, units: 'us', width: 530 });

  test('are sound, also without any finding and with long names', () => {
    expectSound(drawing);
    expectSound(ratioBars({ findings: [], units: 'us', width: 530 }));
    expectSound(
      ratioBars({
        findings: [
          finding({
            at: 'a part with a name that never seems to end',
            title: 'Equivalent pressure of the flange joint against its rating at temperature',
            verdict: 'meets',
            ratio: 0.99,
          }),
        ],
        units: 'si',
        width: 260,
      }),
    );
  });

  test('come worst first; what does not apply is left out', () => {
    const names = textsOf(drawing).filter((t) => t.includes(': '));
    expect(names.slice(0, 4).map((t) => t.split(':')[0])).toEqual(['suction nozzle', 'H2', 'H1', 'H3']);
    expect(drawing.alt).not.toContain('H4');
  });

  test('what exceeds is hatched, reaches over the limit and says so; what cannot be told is an open dashed bar with the words', () => {
    const hatched = paths(drawing.shapes).filter((s) => s.fill === 'hatch');
    const limit = paths(drawing.shapes).find((s) => s.stroke === 'heavy')?.points[0]?.[0] ?? Number.NaN;
    expect(hatched).toHaveLength(2);
    for (const bar of hatched) expect(Math.max(...bar.points.map((p) => p[0]))).toBeGreaterThan(limit);
    expect(textsOf(drawing)).toEqual(expect.arrayContaining(['7.20 exceeds', '1.30 exceeds', 'cannot tell']));
    expect(paths(drawing.shapes).filter((s) => s.stroke === 'dashed' && s.fill === 'none')).toHaveLength(1);
  });

  test('at most fifteen are shown, some of them kept for what cannot be told, and the rest is counted', () => {
    const many = [
      ...Array.from({ length: 30 }, (_, i) => finding({ at: `H${i}`, verdict: 'meets', ratio: i / 40 })),
      ...Array.from({ length: 6 }, (_, i) => finding({ at: `V${i}`, verdict: 'cannot-tell' })),
    ];
    const crowded = ratioBars({ findings: many, units: 'us', width: 530 });
    expect(textsOf(crowded).filter((t) => t.includes(': Load'))).toHaveLength(15);
    expect(crowded.alt).toContain('21 more in the tables');
    expect(crowded.alt).toContain('cannot tell');
  });

  test('bars are as long as their ratios', () => {
    const bars = ratioBars({
      findings: [
        finding({ at: 'H1', verdict: 'meets', ratio: 0.8 }),
        finding({ at: 'H2', verdict: 'meets', ratio: 0.4 }),
      ],
      units: 'us',
      width: 530,
    });
    const lengths = paths(bars.shapes)
      .filter((s) => s.fill === 'mid')
      .map((s) => Math.max(...s.points.map((p) => p[0])) - Math.min(...s.points.map((p) => p[0])));
    expect((lengths[0] ?? 0) / (lengths[1] ?? 1)).toBeCloseTo(2, 9);
  });
});

describe('the side view', () => {
  const request = { units: 'us' as const, width: 530, height: 330 };

  test.each(
    [fourHangers, longRiser, branches].flatMap((made) =>
      [0, 1.3, Math.PI].map((turned) => ({ ...made, turned })),
    ),
  )('is sound', (made) => {
    expectSound(elevationDrawing({ ...build(made), ...request }));
  });

  test('shows the height needed and the height clear', () => {
    const words = textsOf(elevationDrawing({ ...build(fourHangers), ...request }));
    // 0.6 m is 23.62 in; from 1.4 + 1.25 m to a ceiling at 4 m there are 1.35 m, 53.15 in.
    expect(words).toContain('needed to draw the motor 1\'-11 5/8"');
    expect(words).toContain('clear 4\'-5 1/8" to ceiling');
  });

  test('names what stands over the motor and how much is missing', () => {
    const room = {
      floor: 0,
      ceiling: 5,
      objects: [
        {
          name: 'duct 2',
          kind: 'duct' as const,
          low: [-1, -1, 3] as const,
          high: [1, 1, 3.4] as const,
          path: 'fixture',
        },
      ],
    };
    const words = textsOf(elevationDrawing({ ...build({ ...fourHangers, room }), ...request, units: 'si' }));
    expect(words).toContain('clear 350 mm to duct 2, short by 250 mm');
  });

  test('says when something reaches into the motor', () => {
    const room = {
      objects: [
        {
          name: 'beam',
          kind: 'beam' as const,
          low: [-1, -1, 2.5] as const,
          high: [1, 1, 2.8] as const,
          path: 'fixture',
        },
      ],
    };
    const drawing = elevationDrawing({ ...build({ ...fourHangers, room }), ...request, units: 'si' });
    expectSound(drawing);
    expect(textsOf(drawing)).toContain('beam reaches 150 mm under the motor top');
  });

  test('draws dashed and names what is not given', () => {
    const drawing = elevationDrawing({ ...build(branches), ...request });
    expect(textsOf(drawing)).toEqual(
      expect.arrayContaining(['floor not given', 'ceiling not given', 'height to draw the motor not given']),
    );
    expect(paths(drawing.shapes).filter((s) => s.stroke === 'dashed').length).toBeGreaterThanOrEqual(4);
    expect(drawing.alt).toContain('ceiling not given');
  });
});
