import { expect, test } from 'vitest';
import {
  findPipe,
  nominalInches,
  pipeSchedules,
  pipeSizes,
  tubeMassPerLength,
  tubeProperties,
} from '../../src/catalog/index.js';

const materials = ['carbon steel', 'stainless steel', 'copper'] as const;
const everyPipe = materials.flatMap((material) =>
  pipeSizes(material).flatMap((nps) =>
    pipeSchedules(nps, material).map((schedule) => [nps, schedule, material] as const),
  ),
);

test('a size is found however it is written', () => {
  const wanted = findPipe({ nps: '6', schedule: 'STD', material: 'carbon steel' });
  expect(wanted?.outsideDiameter).toBeCloseTo(0.168275, 9);
  expect(wanted?.wall).toBeCloseTo(0.007112, 9);
  expect(findPipe({ nps: 'DN 150', schedule: 'std', material: 'carbon steel' })).toEqual(wanted);
});

test.each([
  [{ nps: '7', schedule: 'STD', material: 'carbon steel' }],
  [{ nps: '6', schedule: '45', material: 'carbon steel' }],
  [{ nps: '6', schedule: 'L', material: 'carbon steel' }],
  [{ nps: '6', schedule: 'STD', material: 'brass' }],
  [{ nps: '6', schedule: 'STD', material: 'constructor' }],
  [{ nps: '6', schedule: 'STD', material: 'cast iron' }],
])('%o is not in the tables', (query) => {
  expect(findPipe(query)).toBeUndefined();
});

test('an unknown size has no schedules, an unknown material no sizes', () => {
  expect(pipeSchedules('7', 'carbon steel')).toEqual([]);
  expect(pipeSizes('brass')).toEqual([]);
  expect(pipeSizes('constructor')).toEqual([]);
  expect(pipeSizes('copper')).toContain('2-1/2');
});

test('sizes run from the smallest up', () => {
  const inches = pipeSizes().map((nps) => nominalInches(nps) ?? 0);
  expect(inches).toEqual([...inches].sort((a, b) => a - b));
});

test.each(everyPipe)(
  'NPS %s %s %s has a bore, a citation and the mass of its wall',
  (nps, schedule, material) => {
    const pipe = findPipe({ nps, schedule, material });
    if (pipe === undefined) throw new Error('listed and not found');
    expect(tubeProperties(pipe).bore).toBeGreaterThan(pipe.outsideDiameter / 2);
    const density = { 'carbon steel': 7841.6, 'stainless steel': 8027.1, copper: 8940.6 }[material];
    expect(pipe.massPerLength / tubeMassPerLength(pipe, density)).toBeCloseTo(1, 4);
    expect(pipe.massCitation.confidence).toBe('computed');
    expect(pipe.citation.clause).not.toBe('');
  },
);

test('extra strong pipe is thicker than standard in every size', () => {
  for (const nps of pipeSizes('carbon steel')) {
    const wall = (schedule: string) =>
      findPipe({ nps, schedule, material: 'carbon steel' })?.wall ?? Number.NaN;
    expect(wall('XS'), nps).toBeGreaterThan(wall('STD'));
    expect(wall('80'), nps).toBeGreaterThanOrEqual(wall('XS'));
  }
});

test('STD is schedule 40 up to NPS 10 and XS schedule 80 up to NPS 8, and not beyond', () => {
  const same = (nps: string, one: string, other: string) => {
    const walls = [one, other].map((schedule) => findPipe({ nps, schedule, material: 'carbon steel' })?.wall);
    return walls[0] !== undefined && walls[0] === walls[1];
  };
  expect(same('10', 'STD', '40')).toBe(true);
  expect(same('12', 'STD', '40')).toBe(false);
  expect(same('8', 'XS', '80')).toBe(true);
  expect(same('10', 'XS', '80')).toBe(false);
});

test('copper type K is thicker than L, and L thicker than M', () => {
  for (const nps of pipeSizes('copper')) {
    const wall = (schedule: string) => findPipe({ nps, schedule, material: 'copper' })?.wall ?? Number.NaN;
    expect(wall('K'), nps).toBeGreaterThan(wall('L'));
    expect(wall('L'), nps).toBeGreaterThan(wall('M'));
    expect(findPipe({ nps, schedule: 'M', material: 'copper' })?.citation.confidence).toBe('memory');
  }
});

test('10S is thinner than schedule 10 from NPS 14 to 22', () => {
  for (const nps of ['14', '16', '18', '20', '22']) {
    const thin = findPipe({ nps, schedule: '10S', material: 'stainless steel' });
    const steel = findPipe({ nps, schedule: '10', material: 'carbon steel' });
    expect(thin?.wall ?? Number.NaN, nps).toBeLessThan(steel?.wall ?? Number.NaN);
  }
});
