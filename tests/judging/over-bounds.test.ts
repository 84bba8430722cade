import { expect, test } from 'vitest';
import { compareWithLimit } from '../../src/judging/compare-with-limit.js';
import { type AtBound, overBounds } from '../../src/judging/over-bounds.js';

const at = (demand: number | undefined, ...varied: readonly string[]): AtBound => ({
  varied,
  outcome: compareWithLimit({ demand, limit: 100 }),
});
const lacking: AtBound = { varied: ['weight'], outcome: { verdict: 'does-not-apply' } };

test('it meets only if it meets at every bound, and shows the stated value with the reach of all', () => {
  expect(overBounds([at(80), at(70, 'friction'), at(95, 'friction')])).toEqual({
    verdict: 'meets',
    demand: 80,
    limit: 100,
    ratio: 0.8,
    low: 70,
    high: 95,
  });
});

test('it exceeds only if it exceeds at every bound', () => {
  expect(overBounds([at(130), at(110, 'friction'), at(150, 'friction')])).toMatchObject({
    verdict: 'exceeds',
    ratio: 1.3,
    low: 110,
    high: 150,
  });
});

test.each([
  ['meets as stated', 80, 105],
  ['exceeds as stated', 130, 95],
] as const)(
  'what %s and turns at a bound cannot be told, and what turns it is named',
  (_word, stated, bound) => {
    const outcome = overBounds([at(stated), at(stated, 'weight'), at(bound, 'friction')]);
    expect(outcome).toMatchObject({
      verdict: 'cannot-tell',
      why: 'bounds-disagree',
      turnedBy: ['friction'],
      demand: stated,
    });
    expect(outcome.ratio).toBeUndefined();
  },
);

test('things that turn it only together are all named; beside one that does so alone they are not', () => {
  const together = at(120, 'friction', 'weight');
  expect(overBounds([at(80), at(95, 'friction'), at(95, 'weight'), together]).turnedBy).toEqual([
    'friction',
    'weight',
  ]);
  expect(overBounds([at(80), at(105, 'friction'), at(95, 'weight'), together]).turnedBy).toEqual([
    'friction',
  ]);
});

test('without a value as stated the gravest bound stands, and what is at odds with itself is named', () => {
  expect(overBounds([at(70, 'friction'), at(90, 'friction')])).toMatchObject({
    verdict: 'meets',
    demand: 90,
    low: 70,
    high: 90,
  });
  const bounds = [at(105, 'friction'), at(80, 'friction'), at(85, 'weight'), at(95, 'weight')];
  expect(overBounds(bounds)).toMatchObject({ verdict: 'cannot-tell', turnedBy: ['friction'] });
  const never = [at(80, 'friction', 'weight'), at(120, 'weight', 'slope')];
  expect(overBounds(never).turnedBy).toEqual(['friction', 'weight', 'slope']);
});

test('a bound that cannot be worked out is no bound: nothing is told, and no reach is claimed', () => {
  const outcome = overBounds([at(80), at(undefined, 'friction'), at(90, 'weight')]);
  expect(outcome).toMatchObject({ verdict: 'cannot-tell', turnedBy: ['friction'] });
  expect(outcome.high).toBeUndefined();
});

test('what applies at one bound only is no pass', () => {
  expect(overBounds([at(80), lacking])).toMatchObject({ verdict: 'cannot-tell', turnedBy: ['weight'] });
  expect(overBounds([lacking, { ...lacking, varied: [] }])).toMatchObject({ verdict: 'does-not-apply' });
});

test('where nothing can be compared the reason stays', () => {
  const none = (...varied: readonly string[]): AtBound => ({
    varied,
    outcome: compareWithLimit({ demand: 80, limit: undefined }),
  });
  expect(overBounds([none(), none('friction')])).toMatchObject({
    verdict: 'cannot-tell',
    why: 'limit-missing',
  });
});

test('no bounds at all are no pass', () => {
  expect(overBounds([])).toMatchObject({ verdict: 'cannot-tell' });
});

test('the order of the bounds decides nothing but the order of names', () => {
  const bounds = [at(80), at(105, 'friction'), at(60, 'friction'), at(101, 'weight')];
  const forward = overBounds(bounds);
  const backward = overBounds([...bounds].reverse());
  expect({ ...backward, turnedBy: [...(backward.turnedBy ?? [])].reverse() }).toEqual(forward);
});
