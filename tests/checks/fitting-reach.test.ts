import { expect, test } from 'vitest';
import { fittingReach } from '../../src/checks/room/fitting-reach.js';
import { box, findingOf, space, walls } from './access-subject.js';

/** The drain is 1 m south of the shaft. */
const suction = [
  { straight: '600 mm' },
  { drain: { size: '3/4 in' } },
  { straight: '2 m' },
  { end: 'anchored' },
];
const asked = (change = {}) => [
  space('drain', {
    at: 'drain 1',
    side: 'east',
    width: '300 mm',
    depth: '500 mm',
    height: '300 mm',
    ...change,
  }),
];
const rack = (west: number) => box('rack', 'other', [west, -2, 0], [west + 0.3, 0, 2]);

test('room as deep as asked meets', () => {
  const finding = findingOf(fittingReach, {
    suction,
    spaces: asked({ from: '100 mm' }),
    objects: [...walls, rack(0.7)],
  });
  expect(finding).toMatchObject({ verdict: 'meets', reason: { data: { obstacle: 'rack' } } });
  expect(finding.demand).toBeCloseTo(0.599, 3);
});

test('a rack in front of it exceeds', () => {
  const finding = findingOf(fittingReach, {
    suction,
    spaces: asked({ from: '100 mm' }),
    objects: [...walls, rack(0.5)],
  });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { data: { obstacle: 'rack', way: 'east' } } });
  expect(finding.reason?.data.move).toBeCloseTo(0.1, 3);
});

test('without a distance the room begins at the skin of the pipe', () => {
  const finding = findingOf(fittingReach, { suction, spaces: asked(), objects: [...walls, rack(0.7)] });
  expect(finding.demand).toBeCloseTo(0.7 - 0.168275 / 2 - 0.001, 3);
});

test('room under it is measured down to the floor', () => {
  const finding = findingOf(fittingReach, { suction, spaces: asked({ side: 'down', from: '100 mm' }) });
  expect(finding).toMatchObject({ verdict: 'meets', reason: { data: { obstacle: 'floor' } } });
  expect(finding.demand).toBeCloseTo(0.899, 3);
});

test('where nothing is asked for there is nothing to judge', () => {
  expect(findingOf(fittingReach, { suction }).verdict).toBe('does-not-apply');
});
