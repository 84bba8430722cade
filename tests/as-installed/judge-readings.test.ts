import { expect, test } from 'vitest';
import type { FieldSubject, Judge, MeasuredComparison } from '../../src/as-installed/judge.js';
import { judgeReadings } from '../../src/as-installed/judge-readings.js';
import { reviewedSample } from '../sheet/reviewed-sample.js';
import { visitOf } from './visit.js';

const subject: FieldSubject = visitOf(reviewedSample('pool-hot-water'), {});

const measured = (comparison: Partial<MeasuredComparison>) => {
  const judge: Judge = {
    id: 'spring-range',
    title: 'Trial',
    part: 'supports',
    trade: 'pipe fitter',
    compare: () => [
      {
        kind: 'measured',
        at: 'H1',
        boxes: ['supports.h1.filled'],
        demand: 2,
        measured: 'force',
        limit: undefined,
        ...comparison,
      },
    ],
  };
  const [judgement] = judgeReadings([judge], subject);
  if (judgement === undefined) throw new Error('no judgement');
  return judgement;
};
const limit = (words: 'at most' | 'within' | 'at least', value = 1) => ({
  value,
  measured: 'force' as const,
  words,
  citation: { source: 'input', clause: 'trial', confidence: 'read' } as const,
});

test.each([0, -5])('a reading of %d never reaches a least value', (demand) => {
  const judgement = measured({ demand, limit: limit('at least') });
  expect(judgement).toMatchObject({ verdict: 'exceeds', reason: { code: 'fieldwork.spring-range.exceeds' } });
  expect(judgement.ratio).toBeUndefined();
});

test('a reading with the other sign keeps to a limit by its size', () => {
  expect(measured({ demand: -0.5, limit: limit('at most') })).toMatchObject({ verdict: 'meets', ratio: 0.5 });
  expect(measured({ demand: -2, limit: limit('at most') }).verdict).toBe('exceeds');
  expect(measured({ demand: -2, limit: limit('within') }).verdict).toBe('exceeds');
});

test('a reading at its limit meets it, whatever its last digits', () => {
  expect(measured({ demand: 0.1 + 0.2, limit: limit('at most', 0.3) }).verdict).toBe('meets');
});

test('without a limit, or with one that is none, it cannot be told', () => {
  expect(measured({})).toMatchObject({
    verdict: 'cannot-tell',
    comparison: true,
    reason: { code: 'fieldwork.no-limit' },
  });
  expect(measured({ limit: limit('at most', 0) })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'fieldwork.limit-unusable' },
  });
});

test('what was not read is told before what has no limit', () => {
  for (const demand of [undefined, Number.NaN]) {
    expect(measured({ demand }).reason?.code).toBe('fieldwork.not-filled');
    expect(measured({ demand, limit: limit('at most') }).reason?.code).toBe('fieldwork.not-filled');
  }
});
