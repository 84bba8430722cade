import { expect, test } from 'vitest';
import { nozzleComparison } from '../../src/checks/nozzles/nozzle-comparison.js';
import type { Limits } from '../../src/input/installation.js';
import { findingAt, findingsOf } from './findings-of.js';
import { installation, type SubjectChange, subject, wrench } from './fixture.js';

const compared = (
  nozzle: Limits['nozzle'],
  force = 1200,
  pump: SubjectChange['pump'] = {},
): SubjectChange => ({
  limits: { nozzle },
  answers: { hot: { discharge: wrench([0, 0, -force]) } },
  pump,
});
const table = { comparisons: ['process-pump table'] } as const;
const at = 'discharge nozzle against the process-pump table';

test('loads inside the other basis meet it, as a comparison', () => {
  const finding = findingAt(nozzleComparison, at, compared(table));
  expect(finding).toMatchObject({ verdict: 'meets', comparison: true, basis: { source: 'api-610' } });
});

test('loads above it exceed it, still as a comparison', () => {
  expect(findingAt(nozzleComparison, at, compared(table, 3000))).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    reason: { code: 'checks.nozzle-comparison.exceeds', data: { component: 'vertical force' } },
  });
});

test('beside an iron casing the comparison warns that the table is for steel', () => {
  const pump = { casing: { ...installation().pump.casing, material: 'cast iron' } };
  expect(findingAt(nozzleComparison, at, compared(table, 1200, pump)).reason).toMatchObject({
    code: 'checks.nozzle-loads.iron-casing',
    data: { casing: 'cast iron' },
  });
  expect(findingAt(nozzleComparison, at, compared(table, 3000, pump)).reason?.code).toBe(
    'checks.nozzle-comparison.iron-exceeds',
  );
});

test('a size that the table does not hold cannot be told', () => {
  const base = subject().layout.nozzles;
  const layout = { nozzles: { ...base, discharge: { ...base.discharge, nps: '5' } } };
  expect(findingAt(nozzleComparison, at, { ...compared(table), layout })).toMatchObject({
    verdict: 'cannot-tell',
    comparison: true,
  });
});

test("the manufacturer's limits can stand beside another basis", () => {
  const nozzle = { basis: 'process-pump table', comparisons: ['maker'] } as const;
  const place = "discharge nozzle against the manufacturer's limits";
  expect(findingAt(nozzleComparison, place, compared(nozzle)).verdict).toBe('cannot-tell');
  const maker = { document: 'sheet', suction: {}, discharge: { verticalForce: 1000 } };
  expect(findingAt(nozzleComparison, place, compared({ ...nozzle, maker })).verdict).toBe('exceeds');
});

test('a load that is not a number cannot be told', () => {
  expect(findingAt(nozzleComparison, at, compared(table, Number.NaN)).verdict).toBe('cannot-tell');
});

test('the basis of the verdict, a basis named twice and the principal stress are not compared again', () => {
  const nozzle = {
    basis: 'process-pump table',
    comparisons: [
      'process-pump table',
      'nozzle principal stress',
      'process-pump table doubled',
      'process-pump table doubled',
    ],
  } as const;
  expect(findingsOf(nozzleComparison, compared(nozzle)).map((finding) => finding.at)).toEqual([
    'suction nozzle against twice the process-pump table',
    'discharge nozzle against twice the process-pump table',
  ]);
});

test('with nothing to compare it does not apply', () => {
  expect(findingsOf(nozzleComparison)).toMatchObject([{ verdict: 'does-not-apply', comparison: true }]);
});
