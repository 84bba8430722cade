import { expect, test } from 'vitest';
import { casingLiftOut } from '../../src/checks/lift/casing-lift-out.js';
import { findingOf, space, walls } from './access-subject.js';

const asked = [space('casing lift-out', { height: '600 mm' })];
/** The casing's top is at 1.2 m, its ports at 1 m. */
const pipe = (elevation: number) => ({
  kind: 'pipe',
  name: 'branch',
  points: [
    { east: '-1 m', north: '350 mm', elevation: `${elevation} m` },
    { east: '1 m', north: '350 mm', elevation: `${elevation} m` },
  ],
  diameter: '100 mm',
});

test('a casing under a high ceiling lifts out', () => {
  const finding = findingOf(casingLiftOut, { spaces: asked });
  expect(finding.verdict).toBe('meets');
  expect(finding.demand).toBeCloseTo(2.8, 9);
});

test('a run over a port stops it: its underside less the top of the port', () => {
  const finding = findingOf(casingLiftOut, { spaces: asked, objects: [...walls, pipe(1.4)] });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { data: { obstacle: 'branch' } } });
  expect(finding.demand).toBeCloseTo(1.4 - 0.05 - (1 + 0.168275 / 2), 4);
});

test('its own lines, bolted face to face, do not hold it', () => {
  const plain = findingOf(casingLiftOut, { spaces: asked });
  expect(plain.reason?.data.obstacle).toBe('ceiling');
});

test('without a height it cannot be told, but what there is is given', () => {
  const finding = findingOf(casingLiftOut);
  expect(finding.verdict).toBe('cannot-tell');
  expect(finding.demand).toBeCloseTo(2.8, 9);
});
