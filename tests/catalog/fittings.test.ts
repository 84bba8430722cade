import { expect, test } from 'vitest';
import {
  elbowSizes,
  findElbow,
  findPipe,
  findReducer,
  findTee,
  reducerSizes,
  reducerSmallEnds,
  teeBranches,
  teeSizes,
} from '../../src/catalog/index.js';

const steel = { material: 'carbon steel', schedule: 'STD' } as const;
const right = Math.PI / 2;
const POUND = 0.45359237;

test('the long-radius elbow of NPS 6 is 9 in and 23.5 lb as listed', () => {
  const elbow = findElbow({ ...steel, nps: '6', radius: 'long', angle: right });
  expect(elbow?.radius.value).toBeCloseTo(0.2286, 9);
  expect(elbow?.centreToEnd.value).toBeCloseTo(0.2286, 9);
  expect((elbow?.mass.value ?? 0) / POUND).toBeCloseTo(23.5, 9);
  expect(elbow?.mass.citation.confidence).toBe('read');
});

test('half the turn is half the mass, and says that it is computed', () => {
  const half = findElbow({ ...steel, nps: '6', radius: 'long', angle: right / 2 });
  expect((half?.mass.value ?? 0) / POUND).toBeCloseTo(11.75, 9);
  expect(half?.mass.citation.confidence).toBe('computed');
  expect(half?.centreToEnd.value).toBeCloseTo(3.75 * 0.0254, 9);
});

test.each(elbowSizes())('the listed elbows of NPS %s lie within 3 %% of the rule for other walls', (nps) => {
  for (const schedule of ['STD', 'XS']) {
    const listed = findElbow({ nps, schedule, material: 'carbon steel', radius: 'long', angle: right });
    const pipe = findPipe({ nps, schedule, material: 'carbon steel' });
    const arc = (listed?.radius.value ?? Number.NaN) * right;
    const rule = arc * (pipe?.massPerLength ?? Number.NaN) * 1.045;
    // Weights of a few pounds are printed to a tenth of a pound, which is more than the rule strays.
    const room = 0.03 * rule + (nps.startsWith('2') ? 0.05 * POUND : 0);
    expect(Math.abs((listed?.mass.value ?? Number.NaN) - rule), schedule).toBeLessThanOrEqual(room);
  }
});

test('a short-radius elbow is lighter than a long one, an extra strong one heavier', () => {
  for (const nps of elbowSizes()) {
    const mass = (schedule: string, radius: 'long' | 'short') =>
      findElbow({ nps, schedule, material: 'carbon steel', radius, angle: right })?.mass.value ?? Number.NaN;
    expect(mass('STD', 'short'), nps).toBeLessThan(mass('STD', 'long'));
    expect(mass('XS', 'short'), nps).toBeGreaterThan(mass('STD', 'short'));
  }
});

test('a schedule with the wall of STD shares the listed weight, another is computed from its wall', () => {
  const of = (nps: string, schedule: string) =>
    findElbow({ nps, schedule, material: 'carbon steel', radius: 'long', angle: right })?.mass;
  expect(of('6', '40')?.value).toBe(of('6', 'STD')?.value);
  expect(of('12', '40')?.citation.confidence).toBe('computed');
  expect(of('12', '40')?.value ?? 0).toBeGreaterThan(of('12', 'STD')?.value ?? Number.NaN);
});

test('stainless and copper elbows are computed from their wall', () => {
  const thin = findElbow({
    nps: '6',
    schedule: '10S',
    material: 'stainless steel',
    radius: 'long',
    angle: right,
  });
  expect(thin?.mass.citation.confidence).toBe('computed');
  const copper = findElbow({ nps: '3', schedule: 'L', material: 'copper', radius: 'short', angle: right });
  expect([copper?.mass.citation.confidence, copper?.radius.citation.confidence]).toEqual([
    'computed',
    'common practice',
  ]);
});

test.each([0, -1, Math.PI, Number.NaN, Number.POSITIVE_INFINITY])(
  'an elbow of %d rad is refused',
  (angle) => {
    expect(findElbow({ ...steel, nps: '6', radius: 'long', angle })).toBeUndefined();
  },
);

test('unknown sizes have no fitting', () => {
  expect(findElbow({ ...steel, nps: '7', radius: 'long', angle: right })).toBeUndefined();
  expect(findTee({ ...steel, nps: '7' })).toBeUndefined();
  expect(findReducer({ ...steel, large: '7', small: '6' })).toBeUndefined();
  expect(teeBranches('7')).toEqual([]);
  expect(reducerSmallEnds('7')).toEqual([]);
});

test('the straight tee takes the larger of the listed weights', () => {
  const tee = findTee({ ...steel, nps: '24' });
  expect((tee?.mass.value ?? 0) / POUND).toBeCloseTo(528, 9);
  expect(tee?.centreToRunEnd.value).toBeCloseTo(17 * 0.0254, 9);
  expect(tee?.centreToBranchEnd.value).toBe(tee?.centreToRunEnd.value);
});

test.each(teeSizes())(
  'every tee of NPS %s is heavier than its run of pipe and no longer at the outlet',
  (nps) => {
    for (const branchNps of teeBranches(nps)) {
      const tee = findTee({ ...steel, nps, branchNps });
      const straight = findTee({ ...steel, nps });
      const pipe = findPipe({ ...steel, nps });
      const run = 2 * (tee?.centreToRunEnd.value ?? Number.NaN) * (pipe?.massPerLength ?? Number.NaN);
      expect(tee?.mass.value ?? Number.NaN, branchNps).toBeGreaterThan(0.95 * run);
      expect(tee?.mass.value ?? Number.NaN, branchNps).toBeLessThanOrEqual(
        straight?.mass.value ?? Number.NaN,
      );
      expect(tee?.centreToBranchEnd.value ?? Number.NaN).toBeLessThanOrEqual(
        straight?.centreToBranchEnd.value ?? Number.NaN,
      );
      expect(tee?.centreToBranchEnd.value ?? Number.NaN).toBeGreaterThan((pipe?.outsideDiameter ?? 0) / 2);
    }
  },
);

test('a tee with an outlet that is not made, or larger than the run, is not listed', () => {
  expect(findTee({ ...steel, nps: '12', branchNps: '2' })).toBeUndefined();
  expect(findTee({ ...steel, nps: '6', branchNps: '8' })).toBeUndefined();
});

test('tees of other walls and metals scale with the pipe', () => {
  const standard = findTee({ ...steel, nps: '8' })?.mass.value ?? Number.NaN;
  const thin = findTee({ nps: '8', schedule: '10S', material: 'stainless steel' });
  expect(thin?.mass.value ?? Number.NaN).toBeLessThan(standard);
  expect(thin?.mass.citation.confidence).toBe('computed');
  const copper = findTee({ nps: '4', schedule: 'L', material: 'copper' });
  expect(copper?.mass.value ?? Number.NaN).toBeLessThan(findTee({ ...steel, nps: '4' })?.mass.value ?? 0);
});

test('the reducer 8 × 6 is 6 in and 13.2 lb as listed', () => {
  const reducer = findReducer({ ...steel, large: '8', small: '6' });
  expect(reducer?.length.value).toBeCloseTo(0.1524, 9);
  expect((reducer?.mass.value ?? 0) / POUND).toBeCloseTo(13.2, 9);
  expect(reducer?.mass.citation.confidence).toBe('read');
});

test.each(reducerSizes())(
  'reducers from NPS %s weigh between both pipes over their length, with a margin',
  (large) => {
    for (const small of reducerSmallEnds(large)) {
      const reducer = findReducer({ ...steel, large, small });
      const length = reducer?.length.value ?? Number.NaN;
      const mass = (nps: string) => (findPipe({ ...steel, nps })?.massPerLength ?? Number.NaN) * length;
      expect(reducer?.mass.value ?? Number.NaN, small).toBeGreaterThan(mass(small));
      expect(reducer?.mass.value ?? Number.NaN, small).toBeLessThan(1.1 * mass(large));
    }
  },
);

test('a reducer is not listed backwards, level or beyond what is made', () => {
  expect(findReducer({ ...steel, large: '6', small: '8' })).toBeUndefined();
  expect(findReducer({ ...steel, large: '6', small: '6' })).toBeUndefined();
  expect(findReducer({ ...steel, large: '12', small: '2' })).toBeUndefined();
});

test('a reducer between schedules is computed from both walls', () => {
  const mixed = findReducer({ ...steel, large: '8', small: '6', smallSchedule: 'XS' });
  expect(mixed?.mass.citation.confidence).toBe('computed');
});

test('lengths of copper fittings are taken from butt-weld fittings and say so', () => {
  const tee = findTee({ nps: '4', branchNps: '3', schedule: 'L', material: 'copper' });
  const reducer = findReducer({ large: '4', small: '3', schedule: 'L', material: 'copper' });
  expect([tee?.centreToRunEnd.citation.confidence, reducer?.length.citation.confidence]).toEqual([
    'common practice',
    'common practice',
  ]);
});
