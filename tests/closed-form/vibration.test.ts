// Closed form: natural frequencies of single masses, uniform beams, bars and shafts. NPS 4 schedule 40, E = 29e6 psi.
import { describe, expect, test } from 'vitest';
import { naturalFrequencies } from '../../src/mechanics/modes/frequencies.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import {
  anchor,
  condition,
  frame,
  INCH,
  NPS4,
  of,
  POUND_FORCE,
  pipe,
  prop,
  restraint,
  STEEL,
  support,
} from '../mechanics/small-frames.js';
import { relativeError } from '../published/printed-value.js';

/** Mass of a weight of 1 lb where g is taken as 386.4 in/s², as in the numbers below. */
const POUND = POUND_FORCE / (386.4 * INCH);
const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
const I = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - inside ** 4);
const A = (Math.PI / 4) * (NPS4.outsideDiameter ** 2 - inside ** 2);
const EI = STEEL.modulus * I;
const EAST: Vec3 = [1, 0, 0];
const NORTH: Vec3 = [0, 1, 0];
const UP: Vec3 = [0, 0, 1];

function line(length: number, pieces: number, mass: number, changes: Partial<Frame> = {}): Frame {
  const points = Object.fromEntries(
    Array.from({ length: pieces + 1 }, (_, i) => [`p${i}`, [(i * length) / pieces, 0, 0] as Vec3]),
  );
  const members = Array.from({ length: pieces }, (_, i) =>
    pipe(`m${i}`, `p${i}`, `p${i + 1}`, { mass: { metal: mass, covering: 0 } }),
  );
  return frame({ points, members, options: { withoutShear: true }, ...changes });
}

const lumped = (at: string, place: Vec3, mass: number) => [
  { name: 'lump', points: [at], masses: [{ name: 'lump', at: place, mass, contents: 0, contentsGroup: '' }] },
];
const twist = support('twist', 'p0', [restraint(EAST, { acts: 'rotation' })]);
const pinned = (last: string) => [prop('A', 'p0', EAST, NORTH, UP), prop('B', last, NORTH, UP), twist];
const first = (built: Frame, count = 1) =>
  naturalFrequencies(built, condition(), count).modes[0]?.frequency ?? 0;

describe('one mass of 500 lb on a light beam', () => {
  const m = 500 * POUND;
  const hertz = (k: number) => Math.sqrt(k / m) / (2 * Math.PI);

  test('at the tip of a cantilever of 60 in: 3 E I/L³', () => {
    const L = 60 * INCH;
    const found = first(line(L, 1, 0, { supports: [anchor('A', 'p0')], bodies: lumped('p1', [L, 0, 0], m) }));
    expect(relativeError(found, hertz((3 * EI) / L ** 3))).toBeLessThan(1e-10);
    expect(found).toBeCloseTo(7.5515, 3);
  });

  test('in the middle of 120 in on two pins: 48 E I/L³', () => {
    const L = 120 * INCH;
    const found = first(line(L, 2, 0, { supports: pinned('p2'), bodies: lumped('p1', [L / 2, 0, 0], m) }));
    expect(relativeError(found, hertz((48 * EI) / L ** 3))).toBeLessThan(1e-10);
    expect(found).toBeCloseTo(10.6794, 3);
  });

  test('in the middle of 120 in built in: 192 E I/L³, and off the middle 3 E I L³/(a³ b³)', () => {
    const L = 120 * INCH;
    const ends = [anchor('A', 'p0'), anchor('B', 'p4')];
    const middle = first(line(L, 4, 0, { supports: ends, bodies: lumped('p2', [L / 2, 0, 0], m) }));
    expect(relativeError(middle, hertz((192 * EI) / L ** 3))).toBeLessThan(1e-10);
    expect(middle).toBeCloseTo(21.3589, 3);
    const off = first(line(L, 4, 0, { supports: ends, bodies: lumped('p1', [L / 4, 0, 0], m) }));
    expect(relativeError(off, hertz((3 * EI * L ** 3) / ((L / 4) ** 3 * ((3 * L) / 4) ** 3)))).toBeLessThan(
      1e-10,
    );
  });

  test('in the middle of a propped beam: 768 E I/(7 L³)', () => {
    const L = 120 * INCH;
    const found = first(
      line(L, 2, 0, {
        supports: [anchor('A', 'p0'), prop('B', 'p2', NORTH, UP)],
        bodies: lumped('p1', [L / 2, 0, 0], m),
      }),
    );
    expect(relativeError(found, hertz((768 * EI) / (7 * L ** 3)))).toBeLessThan(1e-10);
  });

  test('has three modes and no more, whatever is asked for', () => {
    const L = 60 * INCH;
    const found = naturalFrequencies(
      line(L, 1, 0, { supports: [anchor('A', 'p0')], bodies: lumped('p1', [L, 0, 0], m) }),
      condition(),
      10,
    );
    expect(found.modes).toHaveLength(3);
    expect(found.counted).toBe(3);
    const share = found.modes.reduce(
      (sum, mode) => sum + mode.massShare[0] + mode.massShare[1] + mode.massShare[2],
      0,
    );
    expect(share).toBeCloseTo(3, 9);
  });
});

describe('a uniform beam of 120 in, water-filled', () => {
  const L = 120 * INCH;
  const m = (16.3 * POUND) / (12 * INCH);
  const constant = (found: number) => 2 * Math.PI * found * Math.sqrt((m * L ** 4) / EI);

  test.each([
    { name: 'on two pins', supports: pinned('p10'), c: 9.8696044, hertz: 26.645 },
    {
      name: 'built in and pinned',
      supports: [anchor('A', 'p0'), prop('B', 'p10', NORTH, UP)],
      c: 15.4182057,
      hertz: 41.625,
    },
    {
      name: 'built in at both ends',
      supports: [anchor('A', 'p0'), anchor('B', 'p10')],
      c: 22.3732854,
      hertz: 60.402,
    },
    { name: 'built in at one end', supports: [anchor('A', 'p0')], c: 3.5160153, hertz: 9.492 },
  ])('$name', ({ supports, c, hertz }) => {
    const found = first(line(L, 10, m, { supports }), 4);
    expect(relativeError(constant(found), c)).toBeLessThan(5e-5);
    expect(found).toBeCloseTo(hertz, 2);
  });

  test('comes nearer from above as it is cut finer', () => {
    const at = (pieces: number) => constant(first(line(L, pieces, m, { supports: [anchor('A', 'p0')] })));
    const exact = 3.51601526850015;
    expect(at(2) - exact).toBeGreaterThan(at(4) - exact);
    expect(at(4) - exact).toBeGreaterThan(at(8) - exact);
    expect(at(8)).toBeGreaterThan(exact);
    expect(relativeError(at(16), exact)).toBeLessThan(1e-6);
  });

  test.each([
    [0.1, 2.96784],
    [0.5, 2.0163],
    [2, 1.1582],
    [10, 0.541375],
  ])('with %f of its mass at its tip', (share, c) => {
    const bodies = lumped('p10', [L, 0, 0], share * m * L);
    expect(
      relativeError(constant(first(line(L, 10, m, { supports: [anchor('A', 'p0')], bodies }))), c),
    ).toBeLessThan(2e-5);
  });
});

test('a bar built in at one end vibrates along itself and about itself as waves travel', () => {
  // f = c / 4 L with c² = E A / m along, and c² = G / ρ about (metal alone turns).
  const L = 2;
  const density = 7850;
  const built = line(L, 16, density * A, { supports: [anchor('A', 'p0')], options: {} });
  const found = naturalFrequencies(built, condition(), 30);
  const along = Math.sqrt(STEEL.modulus / density) / (4 * L);
  const about = Math.sqrt(STEEL.modulus / 2.6 / density) / (4 * L);
  const nearest = (wanted: number) =>
    Math.min(...found.modes.map(({ frequency }) => relativeError(frequency, wanted)));
  expect(nearest(along)).toBeLessThan(1e-3);
  expect(nearest(about)).toBeLessThan(1e-3);
});

test('a rigid body on springs vibrates by its mass and by its rotary inertia', () => {
  const [m, k, turn] = [80, 2e5, 5e4];
  const inertia: Vec3 = [3, 5, 7];
  const springs = support('S', 'p', [
    ...[EAST, NORTH, UP].map((axis) => restraint(axis, { stiffness: k })),
    ...[EAST, NORTH, UP].map((axis) => restraint(axis, { acts: 'rotation', stiffness: turn })),
  ]);
  const built = frame({
    points: { p: [1, 2, 3] },
    bodies: [
      {
        name: 'B',
        points: ['p'],
        masses: [{ name: 'B', at: [1, 2, 3], mass: m, contents: 0, contentsGroup: '', inertia }],
      },
    ],
    supports: [springs],
  });
  const found = naturalFrequencies(built, condition(), 6);
  const exact = [
    ...inertia.map((j) => Math.sqrt(turn / j)),
    Math.sqrt(k / m),
    Math.sqrt(k / m),
    Math.sqrt(k / m),
  ]
    .map((omega) => omega / (2 * Math.PI))
    .sort((a, b) => a - b);
  found.modes.forEach(({ frequency }, i) => {
    expect(relativeError(frequency, exact[i] ?? 0)).toBeLessThan(1e-9);
  });
  expect(found.counted).toBe(6);
  const [lowest] = found.modes;
  expect(of(lowest?.shape ?? {}, 'p').translation[2]).toBeDefined();
});

test('frequencies of an arc of consistent mass come nearer to those of many pieces as it is cut', () => {
  const R = 1;
  const arc = (pieces: number) => {
    const place = (i: number): Vec3 => [
      R * Math.cos((Math.PI * i) / (2 * pieces)),
      R * Math.sin((Math.PI * i) / (2 * pieces)),
      0,
    ];
    return frame({
      points: Object.fromEntries(Array.from({ length: pieces + 1 }, (_, i) => [`p${i}`, place(i)])),
      members: Array.from({ length: pieces }, (_, i) => ({
        ...pipe(`m${i}`, `p${i}`, `p${i + 1}`, { mass: { metal: 16, covering: 0 } }),
        kind: 'bend' as const,
        centre: [0, 0, 0] as Vec3,
        flexibility: 3,
      })),
      supports: [anchor('A', 'p0')],
    });
  };
  const exact = first(arc(16));
  expect(first(arc(1))).toBeGreaterThan(exact);
  expect(relativeError(first(arc(1)), exact)).toBeLessThan(0.01);
  expect(relativeError(first(arc(4)), exact)).toBeLessThan(1e-4);
});
