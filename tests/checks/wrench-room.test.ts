import { expect, test } from 'vitest';
import { wrenchRoom } from '../../src/checks/room/wrench-room.js';
import { box, findingOf, space, walls } from './access-subject.js';

const asked = [space('wrench room', { reach: '200 mm' })];
const post = (west: number) => box('post', 'other', [west, -0.05, 0], [west + 0.1, 0.05, 4]);

test('a post farther off the guard than the tools reach meets', () => {
  const finding = findingOf(wrenchRoom, { spaces: asked, objects: [...walls, post(0.36)] });
  expect(finding).toMatchObject({ verdict: 'meets', reason: { data: { obstacle: 'post' } } });
  expect(finding.demand).toBeCloseTo(0.21, 6);
});

test('a nearer one exceeds, with the move that clears', () => {
  const finding = findingOf(wrenchRoom, { spaces: asked, objects: [...walls, post(0.3)] });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { data: { obstacle: 'post', way: 'east' } } });
  expect(finding.demand).toBeCloseTo(0.15, 6);
  expect(finding.reason?.data.move).toBeCloseTo(0.05, 4);
});

test('a post through the coupling has no room at all', () => {
  expect(findingOf(wrenchRoom, { spaces: asked, objects: [...walls, post(0)] }).verdict).toBe('exceeds');
});

test('without a number or a room it cannot be told', () => {
  expect(findingOf(wrenchRoom).verdict).toBe('cannot-tell');
  expect(findingOf(wrenchRoom, { spaces: asked, objects: [] }).verdict).toBe('cannot-tell');
});
