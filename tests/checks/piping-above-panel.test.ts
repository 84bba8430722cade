import { expect, test } from 'vitest';
import { pipingAbovePanel } from '../../src/checks/electrical/piping-above-panel.js';
import { box, roomFinding } from './room-subject.js';

const panel = box('panel', 'MCC 1', [
  [4.6, -0.3, 0.5],
  [5, 0.3, 2],
]);
const across = (kind: string, up: number, north = 0) => ({
  kind,
  name: 'rain water pipe',
  points: [
    { east: '3 m', north: `${north} m`, elevation: `${up} m` },
    { east: '7 m', north: `${north} m`, elevation: `${up} m` },
  ],
  diameter: '100 mm',
});

test('a pipe that crosses the space above a panel exceeds, for comparison only', () => {
  expect(roomFinding(pipingAbovePanel, [panel, across('pipe', 3)])).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    basis: { source: 'nfpa-70', confidence: 'memory' },
    reason: { code: 'checks.piping-above-panel.exceeds', data: { obstacle: 'rain water pipe' } },
  });
});

test('a duct counts as well, a beam does not', () => {
  expect(roomFinding(pipingAbovePanel, [panel, across('duct', 3)]).verdict).toBe('exceeds');
  expect(roomFinding(pipingAbovePanel, [panel, across('beam', 3)]).verdict).toBe('meets');
});

test('a pipe beside the panel, or more than 6 ft above it, leaves it free', () => {
  expect(roomFinding(pipingAbovePanel, [panel, across('pipe', 3, 0.5)]).verdict).toBe('meets');
  const high = { room: { ceiling: '6 m' } };
  expect(roomFinding(pipingAbovePanel, [panel, across('pipe', 2 + 1.8288 + 0.06)], high).verdict).toBe(
    'meets',
  );
  expect(roomFinding(pipingAbovePanel, [panel, across('pipe', 2 + 1.8288 + 0.04)], high).verdict).toBe(
    'exceeds',
  );
});

test("the pump's own line counts", () => {
  const below = box('panel', 'MCC 1', [
    [-0.3, 1, 0.1],
    [0.3, 1.4, 0.8],
  ]);
  expect(roomFinding(pipingAbovePanel, [below])).toMatchObject({
    verdict: 'exceeds',
    reason: { data: { obstacle: expect.stringContaining('straight') } },
  });
});

test('above a panel that reaches the structure there is nothing to judge', () => {
  const whole = box('panel', 'MCC 1', [
    [4.6, -0.3, 0],
    [5, 0.3, 4],
  ]);
  expect(roomFinding(pipingAbovePanel, [whole, across('pipe', 3)])).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.piping-above-panel.to-structure' },
  });
});

test('a room without a panel has no place for it', () => {
  expect(roomFinding(pipingAbovePanel, [])).toMatchObject({ verdict: 'does-not-apply' });
});
