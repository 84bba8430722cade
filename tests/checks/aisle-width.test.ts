import { expect, test } from 'vitest';
import { aisleWidth } from '../../src/checks/room/aisle-width.js';
import { box, findingOf, space, walls } from './access-subject.js';

const through = [
  { east: '2 m', north: '-4 m' },
  { east: '2 m', north: '4 m' },
];
const asked = [space('aisle', { width: '1 m', height: '2 m', through })];
const rack = (west: number) => box('rack', 'other', [west, 0, 0], [4, 1, 2]);

test('an aisle that is wide enough meets, by twice the nearer side', () => {
  const finding = findingOf(aisleWidth, { spaces: asked, objects: [...walls, rack(2.6)] });
  expect(finding.verdict).toBe('meets');
  expect(finding.demand).toBeCloseTo(1.2, 3);
});

test('a rack in it exceeds, with the move that clears', () => {
  const finding = findingOf(aisleWidth, { spaces: asked, objects: [...walls, rack(2.4)] });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { data: { obstacle: 'rack', way: 'east' } } });
  expect(finding.reason?.data.move).toBeCloseTo(0.1, 6);
});

test('without a floor it cannot be told, and without an aisle there is nothing to judge', () => {
  expect(findingOf(aisleWidth, { spaces: asked, room: { floor: undefined } }).verdict).toBe('cannot-tell');
  expect(findingOf(aisleWidth).verdict).toBe('does-not-apply');
});
