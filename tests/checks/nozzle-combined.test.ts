import { expect, test } from 'vitest';
import { nozzleCombined } from '../../src/checks/nozzles/nozzle-combined.js';
import type { Wrench } from '../../src/model/conventions.js';
import { findingAt, findingsOf } from './findings-of.js';
import { type SubjectChange, subject, wrench, ZERO } from './fixture.js';

const bolted = (discharge: Wrench, suction: Wrench = ZERO): SubjectChange => ({
  pump: { mount: 'bolted' },
  answers: { hot: { discharge, suction } },
});
const at = 'both nozzles';

// NPS 6: FR 1010 lbf = 4493 N, MR 2310 ft·lbf = 3132 N·m.
test('loads inside the combined rule meet it, as a comparison', () => {
  const finding = findingAt(nozzleCombined, at, bolted(wrench([0, 4493, 0], [3132, 0, 0])));
  expect(finding).toMatchObject({ verdict: 'meets', comparison: true, condition: 'hot' });
});

test('one nozzle loaded with both at one and a half times the table reaches the rule, and beyond exceeds it', () => {
  const beyond = findingAt(nozzleCombined, at, bolted(wrench([0, 7000, 0], [5000, 0, 0])));
  expect(beyond).toMatchObject({
    verdict: 'exceeds',
    unit: '-',
    limit: 2,
    reason: { data: { label: 'discharge nozzle by itself' } },
  });
});

test('two nozzles that twist the pump the same way exceed at its centre', () => {
  const twist = wrench([3500, 0, 0], [0, 0, 3000]);
  const finding = findingAt(nozzleCombined, at, bolted(wrench([-9000, 0, 0]), wrench([-9000, 0, 0])));
  expect(finding).toMatchObject({ verdict: 'exceeds' });
  const moved = findingAt(nozzleCombined, at, bolted(twist, wrench([-3500, 0, 0], [0, 0, 3000])));
  // 2 × 3000 less 2 × 3500 × 0.3 about the centre stays inside 1.5 × 2 × 3132.
  expect(moved.verdict).toBe('meets');
});

test('a size that the table does not hold cannot be told', () => {
  const base = subject().layout.nozzles;
  const layout = { nozzles: { ...base, discharge: { ...base.discharge, nps: '5' } } };
  expect(findingAt(nozzleCombined, at, { ...bolted(ZERO), layout })).toMatchObject({
    verdict: 'cannot-tell',
  });
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])('a force of %s cannot be told', (force) => {
  expect(findingAt(nozzleCombined, at, bolted(wrench([force, 0, 0]))).verdict).toBe('cannot-tell');
});

test('for a pump that hangs in its pipe the rule does not apply', () => {
  expect(findingsOf(nozzleCombined)).toMatchObject([{ verdict: 'does-not-apply' }]);
});
