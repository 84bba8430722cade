import { expect, test } from 'vitest';
import { nozzlePrincipalStress } from '../../src/checks/nozzles/nozzle-principal-stress.js';
import type { NozzleBasis } from '../../src/input/installation.js';
import { findingAt } from './findings-of.js';
import { type SubjectChange, subject, wrench } from './fixture.js';
import { workedOut } from './worked-out.js';

const bent = (moment: number, basis?: NozzleBasis, pump: SubjectChange['pump'] = {}): SubjectChange => ({
  limits: { nozzle: { comparisons: [], ...(basis !== undefined && { basis }) } },
  answers: { hot: { discharge: wrench([0, 0, 0], [moment, 0, 0]) } },
  pump,
});
const at = 'discharge nozzle';

// NPS 6 schedule 40: Z = 8.496 in³ = 1.392e-4 m³, so 41 MPa is reached at 5708 N·m of pure bending.
test('a nozzle bent below 41 MPa meets the annex, as a comparison', () => {
  const finding = findingAt(nozzlePrincipalStress, at, bent(5600));
  expect(finding).toMatchObject({ verdict: 'meets', comparison: true, condition: 'hot', limit: 41e6 });
  expect(finding.ratio).toBeCloseTo(5600 / 5708, 3);
  expect(workedOut(finding.calculation)).toBeCloseTo(finding.demand ?? 0, 3);
});

test('bent above it, it exceeds', () => {
  expect(findingAt(nozzlePrincipalStress, at, bent(5800))).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    reason: { code: 'checks.nozzle-principal-stress.exceeds' },
  });
});

test('named as the basis it decides', () => {
  expect(findingAt(nozzlePrincipalStress, at, bent(5800, 'nozzle principal stress')).comparison).toBe(false);
});

test('a size without schedule 40 pipe cannot be told', () => {
  const base = subject().layout.nozzles;
  const layout = { nozzles: { ...base, discharge: { ...base.discharge, nps: '7' } } };
  expect(findingAt(nozzlePrincipalStress, at, { ...bent(100), layout })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.nozzle-principal-stress.no-section' },
  });
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])('a moment of %s cannot be told', (moment) => {
  expect(findingAt(nozzlePrincipalStress, at, bent(moment)).verdict).toBe('cannot-tell');
});

test('for a pump on a base it does not apply, unless the file names it', () => {
  expect(findingAt(nozzlePrincipalStress, at, bent(100, 'maker', { mount: 'bolted' }))).toMatchObject({
    verdict: 'does-not-apply',
    comparison: true,
  });
  const named = bent(100, 'nozzle principal stress', { mount: 'bolted' });
  expect(findingAt(nozzlePrincipalStress, at, named).verdict).toBe('meets');
});

test('a push on the nozzle takes from the bending stress, a pull adds to it', () => {
  const pushed = { ...bent(5000), answers: { hot: { discharge: wrench([0, -20_000, 0], [5000, 0, 0]) } } };
  const pulled = { ...bent(5000), answers: { hot: { discharge: wrench([0, 20_000, 0], [5000, 0, 0]) } } };
  const [push, plain, pull] = [pushed, bent(5000), pulled].map(
    (change) => findingAt(nozzlePrincipalStress, at, change).demand ?? Number.NaN,
  );
  expect(push).toBeLessThan(plain ?? 0);
  expect(pull).toBeGreaterThan(plain ?? 0);
});
