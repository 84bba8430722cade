import { expect, test } from 'vitest';
import { motorWay, wayOut } from '../../src/checks/room/way-out.js';
import { accessSubject, box, findingOf, walls } from './access-subject.js';

test('an open way to a wide door meets, and keeps its width all along', () => {
  const finding = findingOf(wayOut);
  expect(finding.verdict).toBe('meets');
  expect(finding.limit).toBeCloseTo(36 * 0.0254, 12);
  expect(motorWay(accessSubject())?.route.route?.at(-1)).toEqual([5.1, 0]);
});

test('a narrow opening exceeds', () => {
  const room = { 'way-out': { east: '5.1 m', north: '0 m', width: '800 mm' } };
  expect(findingOf(wayOut, { room })).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.way-out.opening' },
  });
});

test('racks that narrow the only way exceed, and are named', () => {
  const racks = [
    box('rack A', 'other', [2, 0.35, 0], [3, 5, 2]),
    box('rack B', 'other', [2, -5, 0], [3, -0.35, 2]),
  ];
  const finding = findingOf(wayOut, { objects: [...walls, ...racks] });
  expect(finding.verdict).toBe('exceeds');
  expect(finding.demand).toBeCloseTo(0.7, 1);
  expect(String(finding.reason?.data.obstacle)).toContain('rack');
});

test('a wall across the whole room leaves no way', () => {
  const bar = box('bar', 'wall', [2, -5, 0], [2.2, 5, 4]);
  expect(findingOf(wayOut, { objects: [...walls, bar] }).verdict).toBe('exceeds');
});

test('a motor that is longer than a passage is wide asks for its diagonal', () => {
  const finding = findingOf(wayOut, {
    outline: { 'motor-top': '1600 mm', 'motor-diameter': '400 mm' },
    dimensions: { eyes: '1600 mm' },
  });
  expect(finding.limit).toBeCloseTo(Math.hypot(0.4, 1), 9);
});

test('without a way out, a floor or walls it cannot be told', () => {
  expect(findingOf(wayOut, { room: { 'way-out': undefined } }).verdict).toBe('cannot-tell');
  expect(findingOf(wayOut, { room: { floor: undefined } }).verdict).toBe('cannot-tell');
  expect(findingOf(wayOut, { objects: [] }).verdict).toBe('cannot-tell');
});
