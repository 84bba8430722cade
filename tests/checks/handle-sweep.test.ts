import { expect, test } from 'vitest';
import { handleSweep } from '../../src/checks/room/handle-sweep.js';
import { box, findingOf, space, walls } from './access-subject.js';

/** The valve's middle is 1.15 m south of the shaft at 1 m; its handle turns 0.3 m east of it. */
const suction = [
  { straight: '600 mm' },
  { valve: { kind: 'butterfly', weight: '20 kg', length: '300 mm', contents: '2 l', ends: 'welded' } },
  { straight: '2 m' },
  { end: 'anchored' },
];
const wheel = {
  at: 'butterfly valve 1',
  side: 'east',
  from: '300 mm',
  reach: '200 mm',
  depth: '60 mm',
  angle: '360 deg',
};
const asked = (change = {}) => [space('handle', { ...wheel, ...change })];
const shelf = (low: number) => box('shelf', 'other', [0.2, -1.5, low], [0.5, -0.8, low + 0.05]);

test('a shelf above the wheel meets, with the radius there is', () => {
  const finding = findingOf(handleSweep, { suction, spaces: asked(), objects: [...walls, shelf(1.25)] });
  expect(finding).toMatchObject({ verdict: 'meets', reason: { data: { obstacle: 'shelf' } } });
  expect(finding.demand).toBeCloseTo(0.25, 3);
});

test('a shelf in the sweep exceeds, with the radius there is', () => {
  const finding = findingOf(handleSweep, { suction, spaces: asked(), objects: [...walls, shelf(1.1)] });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { data: { obstacle: 'shelf', way: 'up' } } });
  expect(finding.demand).toBeCloseTo(0.1, 3);
});

test('a lever that never comes there does not strike it', () => {
  const lever = asked({ angle: '90 deg', start: 'down' });
  expect(findingOf(handleSweep, { suction, spaces: lever, objects: [...walls, shelf(1.05)] }).verdict).toBe(
    'meets',
  );
});

test('where no handle is described there is nothing to judge', () => {
  expect(findingOf(handleSweep, { suction }).verdict).toBe('does-not-apply');
});
