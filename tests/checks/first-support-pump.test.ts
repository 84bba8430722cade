import { expect, test } from 'vitest';
import { firstSupportPump } from '../../src/checks/supports/first-support-pump.js';
import { findingAt } from './findings-of.js';
import { frame, hangerSupport, placedSupport, type SubjectChange, sourced, UNUSABLE } from './fixture.js';

const within = (distance: number, change: SubjectChange = {}): SubjectChange => ({
  ...change,
  limits: { firstSupport: { pump: sourced(distance), bend: sourced(0.3048) } },
});

test('a first support nearer than asked meets it', () => {
  expect(findingAt(firstSupportPump, 'suction nozzle', within(1.5))).toMatchObject({
    verdict: 'meets',
    demand: 1,
  });
});

test('a first support farther than asked exceeds, each nozzle by itself', () => {
  expect(findingAt(firstSupportPump, 'suction nozzle', within(2)).verdict).toBe('meets');
  expect(findingAt(firstSupportPump, 'discharge nozzle', within(2))).toMatchObject({
    verdict: 'exceeds',
    demand: 2.3591,
    reason: { data: { support: 'H2' } },
  });
});

test('without a distance in the file it cannot be told, and none is invented', () => {
  expect(findingAt(firstSupportPump, 'suction nozzle')).toMatchObject({
    verdict: 'cannot-tell',
    demand: 1,
    reason: { code: 'checks.first-support-pump.no-limit' },
  });
});

test.each(UNUSABLE)('a distance that is %s cannot be told', (_word, distance) => {
  expect(findingAt(firstSupportPump, 'suction nozzle', within(distance)).verdict).toBe('cannot-tell');
});

test('a guide that holds sideways only is no support of weight', () => {
  const [restraint] = hangerSupport('G1').restraints;
  if (restraint === undefined) throw new Error('no restraint');
  const guide = { ...hangerSupport('G1'), restraints: [{ ...restraint, direction: [1, 0, 0] as const }] };
  const layout = {
    frame: frame({ supports: [guide, hangerSupport('H1')] }),
    supports: [
      placedSupport('G1', 'suction line', 0.2, { kind: 'guide' }),
      placedSupport('H1', 'suction line', 1),
    ],
  };
  expect(findingAt(firstSupportPump, 'suction nozzle', within(0.5, { layout }))).toMatchObject({
    verdict: 'exceeds',
    demand: 1,
  });
});

test('a line that nothing carries exceeds any distance', () => {
  const layout = { supports: [] };
  expect(findingAt(firstSupportPump, 'suction nozzle', within(1, { layout }))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.first-support-pump.none' },
  });
});
