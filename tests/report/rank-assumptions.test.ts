import { expect, test } from 'vitest';
import { allChecks } from '../../src/checks/all-checks.js';
import type { Assumption } from '../../src/input/installation.js';
import type { Finding } from '../../src/judging/finding.js';
import { rankAssumptions } from '../../src/report/rows/rank-assumptions.js';
import { originMark } from '../../src/report/words/origin-mark.js';

const citation = { source: 'common-practice', clause: '', confidence: 'common practice' } as const;
const assumption = (path: string): Assumption => ({ path, what: path, value: '1', citation, effect: 'none' });
const finding = (check: string, ratio: number, verdict: Finding['verdict'] = 'meets'): Finding => ({
  check,
  title: check,
  at: 'H1',
  unit: 'N',
  verdict,
  comparison: false,
  basis: citation,
  ratio,
});

test('what bears on the verdict nearest its limit comes first', () => {
  const ranked = rankAssumptions(
    [
      assumption('pump.outline.motor-top'),
      assumption('limits.rods.edition'),
      assumption('pump.motor.weight'),
    ],
    [finding('rod-load', 0.4), finding('nozzle-loads', 0.9)],
  );
  expect(ranked.map((one) => [one.mark, one.assumption.path, one.nearest])).toEqual([
    ['A1', 'pump.motor.weight', 0.9],
    ['A2', 'limits.rods.edition', 0.4],
    ['A3', 'pump.outline.motor-top', undefined],
  ]);
});

test('what bears on nothing judged says so', () => {
  const [only] = rankAssumptions(
    [assumption('limits.rods.edition')],
    [finding('rod-load', 0.4, 'does-not-apply')],
  );
  expect(only?.bearsOn).toEqual([]);
});

test('a comparison is no verdict to bear on', () => {
  const [only] = rankAssumptions(
    [assumption('limits.rods.edition')],
    [{ ...finding('rod-load', 2), comparison: true }],
  );
  expect(only?.bearsOn).toEqual([]);
});

test.each([
  ['limits.rods.edition', ['rod-load']],
  ['limits.pipe-stress.cycles', ['displacement-stress']],
  ['limits.first-support.bend', ['first-support-bend']],
  ['service.temperatures.hot', ['displacement-stress', 'nozzle-loads', 'flange-class']],
  ['pump.motor.weight', ['nozzle-loads', 'rod-load', 'sustained-stress']],
])('%s bears on checks that exist', (path, some) => {
  const findings = allChecks.map((check) => finding(check.id, 0.5));
  const [only] = rankAssumptions([assumption(path)], findings);
  expect(only?.bearsOn).toEqual(expect.arrayContaining(some));
  expect(only?.bearsOn.length).toBeLessThan(allChecks.length);
});

test('a value that rests on an assumption carries its mark', () => {
  const ranked = rankAssumptions([assumption('pump.motor.weight')], []);
  expect(originMark({ kind: 'assumed', path: 'pump.motor.weight' }, ranked)).toBe('assumed, A1');
  expect(originMark({ kind: 'given', path: 'x', known: 'maker' }, ranked)).toBe('given (maker)');
  expect(originMark({ kind: 'assumed', path: 'elsewhere' }, ranked)).toBe('assumed');
});
