import { expect, test } from 'vitest';
import { trialsInPlace } from '../../src/app/advise.js';
import { review } from '../../src/app/review.js';
import { changed, installationOf } from '../input/sample-text.js';
import { adviceOn, firstAdvice, library, pool } from './advise-run.js';

const thinRod = changed(pool, ['{mark: H3, rod: 3/4 in', '{mark: H3, rod: 1/2 in']);

test('a rod one size too small is swapped for the next that carries the load, and for no larger', async () => {
  const advised = await adviceOn(thinRod);
  expect(firstAdvice(advised)).toEqual(['rod-size H3']);
  const [first] = advised.advice.alternatives;
  expect(first?.text).toBe(changed(thinRod, ['{mark: H3, rod: 1/2 in', '{mark: H3, rod: 5/8 in']));
  expect(first?.verdict).toBe('meets');
});

test('a span twice as long as the table allows gets a hanger between, where both halves fit the table', async () => {
  // The owner holds the first hanger to the pump; otherwise moving it along would do.
  const long = changed(
    pool,
    ['        - hanger: {mark: H2, rod: 3/4 in, length: 2 ft 6 in}\n', ''],
    [
      '  first-support: {pump: 8 ft}',
      '  first-support: {pump: 8 ft}\n  owner-rules: [{rule: first-support-pump, document: Trial, clause: para 1}]',
    ],
  );
  const advised = await adviceOn(long);
  expect(firstAdvice(advised)).toEqual(['add-hanger H5']);
  const after = review(installationOf(advised.advice.alternatives[0]?.text ?? ''));
  // NPS 6 spans 17 ft by the table; 19 ft 3 in from H1 to the wall is divided somewhere in its middle.
  const spans = after.layout.spans.filter(
    ({ line, pump, bent }) => line === 'suction line' && !pump && !bent,
  );
  expect(spans.map(({ to }) => to)).toEqual(['H5', 'end of suction line']);
  for (const { level } of spans) expect(level).toBeLessThanOrEqual(17 * 0.3048);
  expect(after.verdict).toBe('meets');
});

test('a first hanger too far from the pump comes near enough, and no nearer than leaves a little in hand', async () => {
  const far = changed(
    pool,
    ['- straight: 3 in\n        - hanger: {mark: H1', '- straight: 4 ft\n        - hanger: {mark: H1'],
    ['- straight: 14 ft\n        - hanger: {mark: H2', '- straight: 10 ft 3 in\n        - hanger: {mark: H2'],
  );
  const advised = await adviceOn(far);
  expect(firstAdvice(advised)).toEqual(['move-support H1']);
  const pair = advised.advice.alternatives[0]?.pairs.find(
    ({ before }) => before?.check === 'first-support-pump' && before.at === 'suction nozzle',
  );
  expect(pair?.before?.verdict).toBe('exceeds');
  // Limit 8 ft, steps of 3 in: within one step of the place that leaves three hundredths.
  expect(pair?.after?.ratio).toBeLessThanOrEqual(0.97);
  expect(pair?.after?.ratio).toBeGreaterThan(0.97 - 0.25 / 8);
});

test('two faults that have nothing to do with each other take two changes, and none besides', async () => {
  const both = changed(
    thinRod,
    ['- straight: 3 in\n        - hanger: {mark: H1', '- straight: 4 ft\n        - hanger: {mark: H1'],
    ['- straight: 14 ft\n        - hanger: {mark: H2', '- straight: 10 ft 3 in\n        - hanger: {mark: H2'],
  );
  const advised = await adviceOn(both, { trials: 700, changes: 3 });
  expect(firstAdvice(advised).toSorted()).toEqual(['move-support H1', 'rod-size H3']);
  const [first] = advised.advice.alternatives;
  expect(first?.solves).toBe(true);
  expect(first?.pairs.filter(({ became }) => became === 'mended').length).toBeGreaterThanOrEqual(2);
  expect(first?.pairs.filter(({ became }) => became === 'exceeds now')).toEqual([]);
});

test('what is promised is what a review of the changed file says', async () => {
  const { advice } = await adviceOn(thinRod);
  for (const { text, pairs, verdict } of advice.alternatives) {
    const again = review(installationOf(text));
    expect(again.verdict).toBe(verdict);
    expect(pairs.flatMap(({ after }) => after ?? [])).toHaveLength(again.findings.length);
    for (const finding of again.findings) {
      expect(pairs.map(({ after }) => after)).toContainEqual(finding);
    }
  }
});

test('the same advice comes whoever makes the trials, in whatever portions', async () => {
  const look = trialsInPlace();
  const other = await adviceOn(thinRod, {
    tools: {
      // The last portion first, each trial by itself.
      screenMany: async (plan, chains) => {
        const backwards = chains
          .toReversed()
          .map((chain) => look({ text: thinRod, plan, chains: [chain] })[0]);
        return backwards.reverse();
      },
    },
  });
  const usual = await adviceOn(thinRod);
  expect(other.advice).toEqual(usual.advice);
});

test('what no support can reach is said to be so, and nothing is tried', async () => {
  const fast = changed(pool, ['suction: 8 ft/s', 'suction: 4 ft/s']);
  const { advice } = await adviceOn(fast);
  expect(advice.alternatives).toEqual([]);
  expect(advice.trials).toBe(0);
  expect(advice.unsolved.map(({ finding, why }) => [finding.check, why])).toEqual([
    ['suction-velocity', 'beyond supports'],
  ]);
});

test('a missing limit is data to get, and no trial is spent on it', async () => {
  const blind = changed(pool, ['    basis: maker\n', '']);
  const { advice } = await adviceOn(blind);
  expect(advice.trials).toBe(0);
  expect(advice.unsolved.map(({ why }) => why)).toContain('data missing');
  expect(advice.unsolved.map(({ finding }) => finding.check)).toContain('nozzle-loads');
});

test('limits that nothing can meet are told with the least that was left', async () => {
  const hopeless = changed(pool, ['suction: {resultant-force: 1400 lb', 'suction: {resultant-force: 5 lb']);
  const { advice } = await adviceOn(hopeless, { trials: 300, changes: 2 });
  expect(advice.alternatives.some(({ solves }) => solves)).toBe(false);
  const nozzle = advice.unsolved.find(({ finding }) => finding.check === 'nozzle-loads');
  expect(nozzle?.why).toBe('not enough');
  expect(nozzle?.best).toBeGreaterThan(1);
});

test('a search ends after the trials it was given, and says so', async () => {
  const { advice } = await adviceOn(library, { trials: 100 });
  expect(advice.trials).toBe(100);
  expect(advice.ended).toBe('out of trials');
});

test('a search that is stopped gives the best so far', async () => {
  let asked = 0;
  const { advice } = await adviceOn(thinRod, {
    tools: {
      isCancelled: () => {
        asked += 1;
        return asked >= 2;
      },
    },
  });
  expect(advice.ended).toBe('cancelled');
  expect(advice.trials).toBe(128);
  expect(advice.alternatives[0]?.solves).toBe(true);
});

test("the user's own efforts order the alternatives", async () => {
  const long = changed(pool, ['        - hanger: {mark: H2, rod: 3/4 in, length: 2 ft 6 in}\n', '']);
  const { advice } = await adviceOn(long, { efforts: { 'add-hanger': 2 } });
  expect(advice.alternatives[0]?.effort).toBe(2);
});
