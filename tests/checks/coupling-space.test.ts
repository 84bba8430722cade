import { expect, test } from 'vitest';
import { couplingSpace } from '../../src/checks/room/coupling-space.js';
import { box, findingOf, space, walls } from './access-subject.js';

const asked = (change: Readonly<Record<string, string>> = {}) => [
  space('coupling and seal', { depth: '500 mm', width: '300 mm', ...change }),
];
/** The guard is 0.15 m from the shaft. */
const panel = box('panel', 'panel', [0.55, -1, 1], [0.8, 1, 2]);

test('the freest side counts where none is named', () => {
  const finding = findingOf(couplingSpace, { spaces: asked(), objects: [...walls, panel] });
  expect(finding).toMatchObject({ verdict: 'meets', reason: { data: { side: 'west' } } });
  expect(finding.demand).toBeCloseTo(4.85, 9);
});

test('a panel on the side that is named exceeds, with the move that clears', () => {
  const finding = findingOf(couplingSpace, { spaces: asked({ side: 'east' }), objects: [...walls, panel] });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { data: { obstacle: 'panel', way: 'east' } } });
  expect(finding.demand).toBeCloseTo(0.4, 9);
  expect(finding.reason?.data.move).toBeCloseTo(0.1, 9);
});

test('a panel too low to matter does not', () => {
  const low = box('panel', 'panel', [-0.8, -1, 0], [-0.55, 1, 1.2]);
  const finding = findingOf(couplingSpace, { spaces: asked({ side: 'west' }), objects: [...walls, low] });
  expect(finding.demand).toBeCloseTo(4.85, 9);
});

test('without a number, a window or a room it cannot be told', () => {
  expect(findingOf(couplingSpace).verdict).toBe('cannot-tell');
  expect(findingOf(couplingSpace, { spaces: asked(), dimensions: { spacer: undefined } }).verdict).toBe(
    'cannot-tell',
  );
  expect(findingOf(couplingSpace, { spaces: asked(), objects: [] })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.access.no-room' },
  });
});

test('a close-coupled pump has no coupling', () => {
  expect(findingOf(couplingSpace, { pump: { build: 'close-coupled' } }).verdict).toBe('does-not-apply');
});
