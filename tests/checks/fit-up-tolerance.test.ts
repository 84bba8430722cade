import { describe, expect, test } from 'vitest';
import { misfitLoads, misfitUsedUp } from '../../src/analysis/nozzles/misfit-loads.js';
import { fitUpTolerance } from '../../src/checks/nozzles/fit-up-tolerance.js';
import { runCheck } from '../../src/checks/run-check.js';
import { findingsOf } from './findings-of.js';
import { makerOf, PUBLISHED, solvedSubject } from './solved-subject.js';
import { workedOut } from './worked-out.js';

const found = (force: number, moment: number) =>
  runCheck(fitUpTolerance, solvedSubject({ limits: { nozzle: makerOf(force, moment) } }));

test('meets where both nozzles bear filled line and misfit together', () => {
  expect(found(1e6, 1e6)).toMatchObject([
    { at: 'suction nozzle', verdict: 'meets' },
    { at: 'discharge nozzle', verdict: 'meets' },
  ]);
});

test('exceeds where one misfit alone is too much', () => {
  const [first] = found(10, 10);
  expect(first).toMatchObject({ verdict: 'exceeds', reason: { code: 'checks.fit-up-tolerance.exceeds' } });
});

test('cannot be told where each alone is borne and all together are not', () => {
  const [loose] = found(1e6, 1e6);
  // Just below what all together come to, with the other component out of the way.
  const isForce = loose?.unit === 'N';
  const limit = 0.999 * (loose?.demand ?? 0);
  const [close] = isForce ? found(limit, 1e9) : found(1e9, limit);
  expect(close).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.fit-up-tolerance.together' },
  });
});

test('what is printed as the calculation is what was compared', () => {
  for (const finding of found(5000, 5000)) {
    expect(workedOut(finding.calculation)).toBeCloseTo(finding.demand ?? Number.NaN, 6);
  }
});

test('cannot be told without a basis, or without tolerances', () => {
  const [noBasis] = runCheck(fitUpTolerance, solvedSubject());
  expect(noBasis).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.fit-up-tolerance.no-basis' },
  });
  const [none] = runCheck(fitUpTolerance, solvedSubject({ limits: { fitUp: { gap: PUBLISHED.gap } } }));
  expect(none).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.fit-up-tolerance.no-tolerance' },
  });
});

test('is not worked out where principal stress is the basis', () => {
  const limits = { nozzle: { basis: 'nozzle principal stress', comparisons: [] } } as const;
  const [first] = runCheck(fitUpTolerance, solvedSubject({ limits }));
  expect(first).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.fit-up-tolerance.judged-by-stress' },
  });
});

test('a frame that cannot be solved has no place for it', () => {
  expect(findingsOf(fitUpTolerance)).toMatchObject([
    { verdict: 'does-not-apply', reason: { code: 'checks.fit-up-tolerance.no-place' } },
  ]);
});

describe('the misfit that uses up what is left of the allowance', () => {
  const subject = solvedSubject({ limits: { nozzle: makerOf(9000, 4000) } });
  const [suction] = misfitLoads(subject);
  if (suction === undefined) throw new Error('there is no suction nozzle');
  const used = misfitUsedUp(suction, subject) ?? [];

  test('brings the first component exactly to its limit, one sense or the other, and no other beyond', () => {
    expect(used).toHaveLength(6);
    for (const { way, misfit, component } of used) {
      const size = (sense: number, of: 'Force' | 'Moment') => {
        const sum = (['axial', 'vertical', 'cross'] as const).map(
          (axis) => suction.filled[`${axis}${of}`] + sense * misfit * suction.perUnit[way][`${axis}${of}`],
        );
        return Math.hypot(...sum) / (of === 'Force' ? 9000 : 4000);
      };
      const forces = Math.max(size(1, 'Force'), size(-1, 'Force'));
      const moments = Math.max(size(1, 'Moment'), size(-1, 'Moment'));
      expect(Math.max(forces, moments)).toBeCloseTo(1, 9);
      expect(component.key === 'resultantForce' ? forces : moments).toBeCloseTo(1, 9);
    }
  });

  test('is nothing where the filled line uses it up, and unknown without a basis', () => {
    const tight = solvedSubject({ limits: { nozzle: makerOf(1, 1) } });
    expect(misfitUsedUp(suction, tight)?.map(({ misfit }) => misfit)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(misfitUsedUp(suction, solvedSubject())).toBeUndefined();
  });
});

test('is a comparison while the tolerances are the published ones, and a judgement once the file gives them', () => {
  const given = (value: number) => ({ value, origin: { kind: 'given', path: 'limits.fit-up' } }) as const;
  const nozzle = makerOf(1e6, 1e6);
  const assumed = (value: number) => ({ value, origin: { kind: 'assumed', path: 'limits.fit-up' } }) as const;
  const of = (from: typeof given | typeof assumed) =>
    runCheck(
      fitUpTolerance,
      solvedSubject({
        limits: { nozzle, fitUp: { gap: from(0.0015), offset: from(0.0015), parallelism: from(0.0008) } },
      }),
    ).map((finding) => finding.comparison);
  expect(of(assumed)).toEqual([true, true]);
  expect(of(given)).toEqual([false, false]);
});
