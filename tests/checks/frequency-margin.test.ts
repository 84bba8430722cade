import { expect, test } from 'vitest';
import { pumpModes } from '../../src/analysis/motion/pump-modes.js';
import { frequencyMargin } from '../../src/checks/motion/frequency-margin.js';
import { runCheck } from '../../src/checks/run-check.js';
import { sourced, subject, UNUSABLE } from './fixture.js';
import { findingIn, mode, vibrating } from './motion-fixture.js';

const quarter = { limits: { frequencyMargin: sourced(0.25) } };
const at = 'running speed';
const RPM = Math.PI / 30;
const drive = {
  start: { kind: 'variable-speed drive', torqueLimit: 1.1, ramp: 10 },
  speeds: { lowest: 900 * RPM, highest: 1800 * RPM },
} as const;
const overall = 'running speed, range of the drive';

test('a vibration a third below running speed keeps a margin of a quarter', () => {
  const finding = findingIn(frequencyMargin, vibrating([mode(20)], quarter), at);
  expect(finding).toMatchObject({ verdict: 'meets', comparison: false, basis: { source: 'input' } });
  expect(finding.demand).toBeCloseTo(20 / 30, 9);
  expect(finding.limit).toBeCloseTo(0.75, 9);
});

test('one at the margin meets, above as below', () => {
  expect(findingIn(frequencyMargin, vibrating([mode(22.5)], quarter), at).ratio).toBeCloseTo(1, 9);
  expect(findingIn(frequencyMargin, vibrating([mode(37.5)], quarter), at).ratio).toBeCloseTo(1, 9);
});

test('one nearer exceeds, and the nearest of several is told', () => {
  const finding = findingIn(frequencyMargin, vibrating([mode(12), mode(31.5), mode(45)], quarter), at);
  expect(finding).toMatchObject({
    verdict: 'exceeds',
    reason: {
      code: 'checks.frequency-margin.exceeds',
      data: { frequency: 31.5, exciting: 30, away: 5 },
    },
  });
  expect(finding.demand).toBeCloseTo(0.95, 9);
});

test('exactly at running speed it exceeds as well', () => {
  expect(findingIn(frequencyMargin, vibrating([mode(30)], quarter), at)).toMatchObject({
    verdict: 'exceeds',
    demand: expect.closeTo(1, 12),
  });
});

test('a vibration of the pipe in which the pump hardly moves is not held against it', () => {
  const about = vibrating([mode(20), mode(30, 0.05)], quarter);
  expect(pumpModes(about).map(({ counts }) => counts)).toEqual([true, false]);
  expect(findingIn(frequencyMargin, about, at).verdict).toBe('meets');
});

test('without a margin it cannot be told, and the distance is', () => {
  expect(findingIn(frequencyMargin, vibrating([mode(27)]), at)).toMatchObject({
    verdict: 'cannot-tell',
    reason: {
      code: 'checks.frequency-margin.no-margin',
      data: { frequency: 27, exciting: 30, away: 10 },
    },
  });
});

test.each(UNUSABLE)('a margin that is %s is no margin to pass by', (_word, share) => {
  const about = vibrating([mode(29.9)], { limits: { frequencyMargin: sourced(share) } });
  expect(findingIn(frequencyMargin, about, at).verdict).not.toBe('meets');
});

test('where vibrations are not known as far as the margin reaches, it cannot be told', () => {
  expect(findingIn(frequencyMargin, vibrating([mode(20)], { ...quarter, completeTo: 32 }), at)).toMatchObject(
    { verdict: 'cannot-tell', reason: { code: 'checks.frequency-margin.beyond' } },
  );
});

test('with no vibration of the pump anywhere near there is nothing to judge', () => {
  const about = vibrating([mode(20, 0.01)], quarter);
  expect(findingIn(frequencyMargin, about, at)).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.frequency-margin.none-near' },
  });
});

test('twice running speed and blade passing are comparisons', () => {
  const about = vibrating([mode(62)], { ...quarter, completeTo: 400, pump: { blades: 6 } });
  expect(findingIn(frequencyMargin, about, 'twice running speed')).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
  });
  expect(findingIn(frequencyMargin, about, 'blade passing')).toMatchObject({
    verdict: 'meets',
    comparison: true,
  });
  expect(runCheck(frequencyMargin, vibrating([mode(62)], quarter)).map((one) => one.at)).toEqual([
    'running speed',
    'twice running speed',
  ]);
});

test('speeds of a drive to lock out are told, and are no pass before they are set', () => {
  const about = vibrating([mode(20)], { ...quarter, motor: drive });
  expect(findingIn(frequencyMargin, about, overall)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.frequency-margin.lock-out', data: { bands: '960 to 1600 rpm' } },
  });
});

test('a drive whose whole range lies within the margin has no speed left', () => {
  const about = vibrating([mode(16), mode(22), mode(28)], { ...quarter, motor: drive });
  expect(findingIn(frequencyMargin, about, overall)).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.frequency-margin.no-speed-left' },
  });
});

test('a drive with no vibration in its range meets; unknown ones above leave it open', () => {
  const clear = vibrating([mode(8)], { ...quarter, motor: drive });
  expect(findingIn(frequencyMargin, clear, overall).verdict).toBe('meets');
  const open = vibrating([mode(8)], { ...quarter, motor: drive, completeTo: 33 });
  expect(findingIn(frequencyMargin, open, overall)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.frequency-margin.beyond' },
  });
});

test('a drive without speeds, or without a margin, cannot be told', () => {
  const { speeds: _speeds, ...unsaid } = drive;
  expect(findingIn(frequencyMargin, vibrating([mode(8)], { ...quarter, motor: unsaid }), at)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.frequency-margin.no-speeds' },
  });
  expect(findingIn(frequencyMargin, vibrating([mode(8)], { motor: drive }), overall)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.frequency-margin.no-margin-range' },
  });
});

test('where frequencies were not worked out it does not apply', () => {
  expect(runCheck(frequencyMargin, subject())).toMatchObject([{ verdict: 'does-not-apply' }]);
});
