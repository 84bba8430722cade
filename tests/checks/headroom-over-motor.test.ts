import { expect, test } from 'vitest';
import { headroomOverMotor } from '../../src/checks/headroom-over-motor.js';
import type { Installation } from '../../src/input/installation.js';
import { findingAt } from './findings-of.js';
import { installation, sourced, UNUSABLE } from './fixture.js';

/** The motor's top is at 2.2 m and it needs 0.5 m over it. */
const outline = installation().pump.outline;
const beam = (low: number, east = 0): Installation['room']['objects'][number] => ({
  name: 'beam B2',
  kind: 'beam',
  low: [east - 0.1, -1, low],
  high: [east + 0.1, 1, low + 0.4],
  path: 'room.objects[0]',
});

test('a ceiling high enough over the motor meets it', () => {
  const finding = findingAt(headroomOverMotor, 'motor');
  expect(finding.verdict).toBe('meets');
  expect(finding.limit).toBeCloseTo(1.8, 12);
});

test('a ceiling too low exceeds, and is named', () => {
  const finding = findingAt(headroomOverMotor, 'motor', { room: { ceiling: 2.6, objects: [] } });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { data: { overhead: 'ceiling' } } });
  expect(finding.ratio).toBeCloseTo(1.25, 12);
});

test('a beam over the motor governs over a higher ceiling', () => {
  const finding = findingAt(headroomOverMotor, 'motor', { room: { ceiling: 4, objects: [beam(2.5)] } });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { data: { overhead: 'beam B2' } } });
});

test('a beam beside the motor, or a slab under it, does not stand over it', () => {
  expect(
    findingAt(headroomOverMotor, 'motor', { room: { ceiling: 4, objects: [beam(2.5, 0.4)] } }).verdict,
  ).toBe('meets');
  expect(findingAt(headroomOverMotor, 'motor', { room: { ceiling: 4, objects: [beam(0)] } }).verdict).toBe(
    'meets',
  );
});

test('a beam whose edge reaches over the rim of the motor stands over it', () => {
  expect(
    findingAt(headroomOverMotor, 'motor', { room: { ceiling: 4, objects: [beam(2.5, 0.29)] } }).verdict,
  ).toBe('exceeds');
});

test('a beam inside the motor is a clash, whatever height is needed', () => {
  const finding = findingAt(headroomOverMotor, 'motor', { room: { ceiling: 4, objects: [beam(2)] } });
  expect(finding).toMatchObject({ verdict: 'exceeds', reason: { code: 'checks.headroom-over-motor.clash' } });
  expect(finding.demand).toBeCloseTo(0.2, 12);
});

test('without the height needed it cannot be told, but the height there is is given', () => {
  const { withdrawal: _withdrawal, ...without } = outline;
  const finding = findingAt(headroomOverMotor, 'motor', { pump: { outline: without } });
  expect(finding).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.headroom-over-motor.no-height' },
  });
  expect(finding.limit).toBeCloseTo(1.8, 12);
});

test('without a ceiling or anything else overhead it cannot be told', () => {
  expect(findingAt(headroomOverMotor, 'motor', { room: { objects: [] } })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.headroom-over-motor.no-ceiling' },
  });
});

test.each(UNUSABLE.filter(([word]) => word !== 'zero'))(
  'a height that is %s cannot be told',
  (_word, height) => {
    const change = { pump: { outline: { ...outline, withdrawal: sourced(height) } } };
    expect(findingAt(headroomOverMotor, 'motor', change).verdict).toBe('cannot-tell');
  },
);

test.each([
  ['not a number', Number.NaN],
  ['infinite', Number.POSITIVE_INFINITY],
])('a ceiling that is %s cannot be told', (_word, ceiling) => {
  expect(findingAt(headroomOverMotor, 'motor', { room: { ceiling, objects: [] } }).verdict).toBe(
    'cannot-tell',
  );
});
