import { expect, test } from 'vitest';
import { testHead, testStress } from '../../src/checks/pipes/test-stress.js';
import { runCheck } from '../../src/checks/run-check.js';
import type { Installation } from '../../src/input/installation.js';
import { findingsOf } from './findings-of.js';
import { installation, sourced, subject, UNUSABLE } from './fixture.js';
import { workedOut } from './worked-out.js';

const steel = (strength: number | undefined): Installation['materials'] => ({
  'carbon steel': {
    id: 'carbon steel',
    name: 'carbon steel',
    modulus: sourced(2e11),
    poisson: 0.3,
    density: 7850,
    expansion: [],
    expansionCitation: { source: 'input', clause: 'test', confidence: 'read' },
    ...(strength !== undefined && { yieldStrength: sourced(strength) }),
  },
});
const tested = (pressure: number, strength: number | undefined, water = 0) => {
  const base = subject();
  const { density } = installation().service;
  const service = { testPressure: sourced(pressure), density: { ...density, test: sourced(water) } };
  return { ...base, installation: { ...installation({ service }), materials: steel(strength) } };
};
const first = (...given: Parameters<typeof tested>) => {
  const [found] = runCheck(testStress, tested(...given));
  if (found === undefined) throw new Error('no finding');
  return found;
};
const perPascal = 0.168275 / (2 * 0.007112);

test('the test meets nine tenths of the yield strength, one finding per line', () => {
  const finding = first(12e5, 240e6);
  expect(finding).toMatchObject({ verdict: 'meets', at: 'NPS 6 STD, suction line', condition: 'test' });
  expect(finding.demand).toBeCloseTo(12e5 * perPascal, 3);
  expect(finding.limit).toBeCloseTo(216e6, 3);
  expect(workedOut(finding.calculation)).toBeCloseTo(12e5 * perPascal, 3);
});

test('above nine tenths of the yield strength it exceeds', () => {
  expect(first(217e6 / perPascal, 240e6)).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.test-stress.exceeds' },
  });
});

test('the water of a riser counts at its foot', () => {
  // The lines rise from 1 m to 2.2286 m.
  expect(testHead(tested(12e5, 240e6, 1000))).toBeCloseTo(1000 * 9.80665 * 1.2286, 6);
  expect(first(12e5, 240e6, 1000).demand).toBeCloseTo((12e5 + 9806.65 * 1.2286) * perPascal, 2);
});

test('without a yield strength it cannot be told, and the material is named', () => {
  expect(first(12e5, undefined)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.test-stress.no-yield', data: { material: 'carbon steel' } },
  });
});

test.each(UNUSABLE)('a yield strength that is %s cannot be told', (_word, strength) => {
  expect(first(12e5, strength).verdict).toBe('cannot-tell');
});

test('without pipe there is no place of this check', () => {
  expect(findingsOf(testStress, { layout: { memberInfo: {} } })).toMatchObject([
    { verdict: 'does-not-apply' },
  ]);
});
