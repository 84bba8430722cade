import { expect, test } from 'vitest';
import { reducerFlatSide } from '../../src/checks/practice/reducer-flat-side.js';
import { type FileStep, practiceFinding, valve } from './practice-subject.js';

const pipe: FileStep = { straight: '1 m' };
const rest = [pipe, valve('gate'), { end: 'anchored' }];
const reducer = (change: FileStep): FileStep => ({ reducer: { to: '8 in', ...change } });
const at = (kind: FileStep, ...beyond: readonly FileStep[]) =>
  practiceFinding(reducerFlatSide, { suction: [pipe, reducer(kind), pipe, ...beyond, ...rest] });
const top = { kind: 'eccentric', flat: 'top' };
const bottom = { kind: 'eccentric', flat: 'bottom' };

test('eccentric with its flat side on top meets it, wherever the supply comes from', () => {
  expect(at(top)).toMatchObject({ at: 'reducer 1', verdict: 'meets' });
  expect(at(top, { elbow: 'up' }).verdict).toBe('meets');
});

test('flat below exceeds where the supply rises from below', () => {
  expect(at(bottom, { elbow: 'down' })).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    reason: { data: { shape: 'eccentric', flat: 'bottom' } },
  });
});

test('flat below meets it where the supply comes down from above', () => {
  expect(at(bottom, { elbow: 'west' }, pipe, { elbow: 'up' }).verdict).toBe('meets');
});

test('flat below cannot be told where the line ends level', () => {
  expect(at(bottom)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.reducer-flat-side.unknown' },
  });
});

test('a concentric one in a level suction keeps air', () => {
  expect(at({ kind: 'concentric' }, { elbow: 'up' }).verdict).toBe('exceeds');
});

test('it does not apply to upright reducers, nor where there are none', () => {
  const suction = [pipe, { elbow: 'up' }, pipe, reducer({ kind: 'concentric' }), ...rest];
  expect(practiceFinding(reducerFlatSide, { suction })).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.reducer-flat-side.upright' },
  });
  expect(practiceFinding(reducerFlatSide).verdict).toBe('does-not-apply');
  expect(practiceFinding(reducerFlatSide, { discharge: suction }).verdict).toBe('does-not-apply');
});
