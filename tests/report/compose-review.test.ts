import { describe, expect, test } from 'vitest';
import { conditionTitle } from '../../src/model/conditions/condition-roles.js';
import { composeReview } from '../../src/report/compose-review.js';
import type { Reader } from '../../src/report/context.js';
import { isAdvice, isPractice } from '../../src/report/words/finding-row.js';
import { reviewed, reviewedCramped } from './fixture.js';

const whole = reviewed();
const readers = ['contractor', 'engineer', 'commissioning'] as const;
const options = { reader: 'engineer', units: 'us', version: '1.2.3' } as const;

/** Everything in a view that is neither text nor truth value nor a list or record of them. */
function leaks(value: unknown, path: string): readonly string[] {
  if (typeof value === 'string') return /undefined|NaN|\[object/.test(value) ? [`${path}: ${value}`] : [];
  if (typeof value === 'boolean') return [];
  if (Array.isArray(value)) return value.flatMap((item, index) => leaks(item, `${path}[${index}]`));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, inner]) => leaks(inner, `${path}.${key}`));
  return [`${path}: ${String(value)}`];
}

function section(review: ReturnType<typeof composeReview>, id: string): Record<string, unknown> {
  const slots = review.view.sections as readonly Record<string, unknown>[];
  return slots.find((one) => one[id] !== false)?.[id] as Record<string, unknown>;
}

describe.each(readers)('the view for the %s', (reader) => {
  test.each(['us', 'si'] as const)('holds text, truth values and lists only, in %s units', (units) => {
    expect(leaks(composeReview(whole, { ...options, reader, units }).view, 'view')).toEqual([]);
  });
});

test('a number in a view would be found', () => {
  expect(leaks({ rows: [{ load: 0.30000000000000004 }] }, 'view')).toEqual([
    'view.rows[0].load: 0.30000000000000004',
  ]);
});

test('the same review composed twice is the same', () => {
  expect(JSON.stringify(composeReview(whole, options))).toBe(JSON.stringify(composeReview(whole, options)));
});

test('a reader without an outline is refused', () => {
  expect(() => composeReview(whole, { ...options, reader: 'owner' as Reader })).toThrow(
    'report.unknown-reader',
  );
});

test('a response without conditions is refused', () => {
  const empty = { ...whole, response: { ...whole.response, conditions: {} } };
  expect(() => composeReview(empty, options)).toThrow('report.no-condition');
});

test('page one counts what was found', () => {
  const counted = section(composeReview(whole, options), 'summary');
  const judged = whole.findings.filter(
    (finding) => !finding.comparison && finding.verdict !== 'does-not-apply',
  );
  expect(counted.judgedCount).toBe(String(judged.length));
  const parts = ['meetsCount', 'exceedsCount', 'cannotTellCount'].map((key) => Number(counted[key]));
  expect(parts.reduce((sum, one) => sum + one, 0)).toBe(judged.length);
  expect(counted.assumptionCount).toBe('2');
});

test('page one names three checks: what is wrong first, then what comes nearest, and no comparison', () => {
  const pageOne = section(composeReview(whole, options), 'summary');
  const faults = pageOne.faults as readonly Record<string, unknown>[];
  const nearest = pageOne.nearest as readonly Record<string, unknown>[];
  const named = [...faults, ...nearest];
  expect(named.length).toBe(3);
  expect(new Set(named.map((one) => `${one.check} ${one.verdict}`)).size).toBe(3);
  expect(named.every((one) => one.comparison === false)).toBe(true);
  expect(faults.every((one) => one.verdict === 'exceeds' || one.verdict === 'cannot-tell')).toBe(true);
  expect(nearest.every((one) => one.verdict === 'meets')).toBe(true);
});

describe.each(['us', 'si'] as const)('the balance in %s units', (units) => {
  const { balance } = section(composeReview(whole, { ...options, units }), 'support-loads') as {
    balance: readonly { condition: string; weight: string; supports: string; difference: string }[];
  };

  test('is printed for every condition', () => {
    const printed = balance.map((row) => row.condition);
    expect([...printed].sort()).toEqual(Object.keys(whole.response.conditions).map(conditionTitle).sort());
    expect(printed.slice(0, 6)).toEqual(['empty', 'filled', 'test', 'running', 'hot', 'cold']);
  });

  test('has support loads that add up to the weight', () => {
    for (const row of balance) {
      expect(row.supports).toBe(row.weight);
      expect(row.difference).toBe('0');
    }
  });
});

test('the balance would show a support that is left out', () => {
  const [first, ...others] = whole.layout.supports;
  const lame = { ...whole, layout: { ...whole.layout, supports: others } };
  const { balance } = section(composeReview(lame, options), 'support-loads') as {
    balance: readonly { difference: string }[];
  };
  expect(first?.mark).toBeDefined();
  expect(balance.some((row) => row.difference !== '0')).toBe(true);
});

test('the weight table adds up to the weight that is solved', () => {
  const weights = section(composeReview(whole, options), 'weights') as { total: string; wholeWeight: string };
  const numberOf = (text: string) => Number(text.replace(/[^0-9.]/g, ''));
  expect(Math.abs(numberOf(weights.total) / numberOf(weights.wholeWeight) - 1)).toBeLessThan(1e-3);
});

test('a support on a level run agrees with its tributary length as far as that goes', () => {
  const { handChecks } = section(composeReview(whole, options), 'hand-check') as {
    handChecks: readonly { mark: string }[];
  };
  expect(handChecks.map((check) => check.mark)).toEqual(['H3', 'H4']);
});

test('the contractor reads what must be acted on, the engineer everything', () => {
  const engineer = section(composeReview(whole, options), 'findings');
  const groups = engineer.groups as readonly { title: string }[];
  expect(groups.map((group) => group.title)).toEqual([
    ...new Set(whole.findings.filter((one) => !isPractice(one)).map((finding) => finding.title)),
  ]);
  const contractor = section(composeReview(whole, { ...options, reader: 'contractor' }), 'findings');
  const trades = contractor.trades as readonly { trade: string; rows: readonly { number: string }[] }[];
  const open = whole.findings.flatMap((one, i) =>
    (!one.comparison || isAdvice(one)) &&
    one.check !== 'within-scope' &&
    ['exceeds', 'cannot-tell'].includes(one.verdict)
      ? [String(i + 1)]
      : [],
  );
  const printed = trades.flatMap(({ rows }) => rows.map(({ number }) => number));
  expect([...printed].sort()).toEqual([...open].sort());
  expect(trades.length).toBeGreaterThan(1);
  const near = contractor.near as readonly { verdict: string; comparison: boolean }[];
  expect(near.every((row) => row.verdict === 'meets' && !row.comparison)).toBe(true);
});

test('installation practice stands in a section of its own for the engineer, and in the fix list of the contractor', () => {
  const asked = whole.findings.filter(isPractice);
  const rows = section(composeReview(whole, options), 'practice') as {
    rows: readonly unknown[];
  };
  const { open: unsaid } = section(composeReview(whole, options), 'scope-and-codes') as {
    open: readonly unknown[];
  };
  const scope = asked.filter(({ check }) => check === 'within-scope');
  expect(rows.rows.length).toBe(asked.length - scope.length);
  expect(unsaid.length).toBe(scope.filter(({ verdict }) => verdict !== 'meets').length);
  const open = asked.filter(
    ({ check, verdict }) => check !== 'within-scope' && ['exceeds', 'cannot-tell'].includes(verdict),
  );
  const { trades } = section(composeReview(whole, { ...options, reader: 'contractor' }), 'findings') as {
    trades: readonly { rows: readonly { title: string; at: string }[] }[];
  };
  const fixes = trades.flatMap((trade) => trade.rows.map(({ title, at }) => `${title} ${at}`));
  expect(fixes).toEqual(expect.arrayContaining(open.map(({ title, at }) => `${title} ${at}`)));
  expect(open.length).toBeGreaterThan(0);
});

test('every finding beyond its limit or untold has a comment to paste', () => {
  const { comments } = section(composeReview(whole, options), 'deviations') as {
    comments: readonly unknown[];
  };
  const open = whole.findings.filter(
    (one) => !one.comparison && ['exceeds', 'cannot-tell'].includes(one.verdict),
  );
  expect(comments.length).toBe(open.length);
});

test('an assumed value carries the number of its assumption', () => {
  const inputs = section(composeReview(whole, options), 'inputs') as { motorWeight: { origin: string } };
  expect(inputs.motorWeight.origin).toBe('assumed, A1');
});

test('a duct over the motor is where the headroom ends', () => {
  const access = section(composeReview(whole, options), 'access') as {
    spaces: readonly { purpose: string; nearest: string }[];
    hasObstacles: boolean;
  };
  expect(access.hasObstacles).toBe(true);
  expect(access.spaces.find(({ purpose }) => purpose === 'Motor removal clearance')?.nearest).toBe('duct');
});

test('a space that is short says by how much in both units, and a move that clears', () => {
  const cramped = reviewedCramped();
  const access = section(composeReview(cramped, options), 'access') as {
    spaces: readonly { purpose: string; short: string; move: string; verdict: string }[];
    heights: readonly { what: string }[];
    hasLiftPicture: boolean;
  };
  const motor = access.spaces.find(({ purpose }) => purpose === 'Motor removal clearance');
  expect(motor).toMatchObject({
    verdict: 'exceeds',
    short: '200.0 mm (7.874 in)',
    // Not the motor alone has to pass: its sling and hook are drawn up with it.
    move: '413.0 mm (16.260 in) up',
  });
  expect(access.heights.map(({ what }) => what)).toContain('From the eyes to the anchor');
  expect(access.hasLiftPicture).toBe(true);
});

test('more supports than fit a page are printed in several tables, each of them once', () => {
  const [first] = whole.layout.supports;
  if (first === undefined) throw new Error('the fixture lacks a support');
  const more = Array.from({ length: 14 }, (_, i) => ({ ...first, mark: `X${i}`, kind: 'hanger' as const }));
  const { tables } = section(
    composeReview({ ...whole, layout: { ...whole.layout, supports: more } }, options),
    'support-loads',
  ) as { tables: readonly { marks: readonly string[]; isLast: boolean; rows: readonly unknown[] }[] };
  expect(tables.flatMap((table) => table.marks)).toEqual(more.map(({ mark }) => mark));
  expect(tables.map((table) => table.marks.length)).toEqual([7, 7]);
  expect(tables.map((table) => table.isLast)).toEqual([false, true]);
  expect(tables.every((table) => table.rows.length === Object.keys(whole.response.conditions).length)).toBe(
    true,
  );
});

test.each(['us', 'si'] as const)('the hand check adds up to nothing in %s units', (units) => {
  const view = section(composeReview(whole, { ...options, units }), 'hand-check') as {
    sums: readonly string[];
    turns: readonly string[];
    pumpSum: string;
    supports: readonly { name: string; cells: readonly string[] }[];
  };
  const numberOf = (text: string): number => Number(text.replace('−', '-').replace(/[^-0-9.]/g, ''));
  const largest = Math.max(...view.supports.flatMap(({ cells }) => cells.slice(3, 6).map(numberOf)));
  for (const sum of [...view.sums, view.pumpSum])
    expect(Math.abs(numberOf(sum))).toBeLessThanOrEqual(1e-4 * largest);
  const turning = Math.max(
    ...view.supports.flatMap(({ cells }) => cells.slice(8).map((cell) => Math.abs(numberOf(cell)))),
  );
  for (const sum of view.turns) expect(Math.abs(numberOf(sum))).toBeLessThanOrEqual(1e-3 * turning);
  expect(view.supports.map(({ name }) => name)).toEqual(whole.layout.supports.map(({ mark }) => mark));
});

test('the hand check would show a support that is left out', () => {
  const [, ...others] = whole.layout.supports;
  const lame = { ...whole, layout: { ...whole.layout, supports: others } };
  const { sums } = section(composeReview(lame, options), 'hand-check') as { sums: readonly string[] };
  expect(sums[2]).not.toBe('0');
});

test('the load a rod is compared with is the one the check of rods found', () => {
  const { rods } = section(composeReview(whole, options), 'support-loads') as {
    rods: readonly { mark: string; ratio: string; condition: string }[];
  };
  for (const row of rods) {
    const found = whole.findings.find((finding) => finding.check === 'rod-load' && finding.at === row.mark);
    if (found?.ratio === undefined) continue;
    expect(Math.abs(Number(row.ratio) - found.ratio)).toBeLessThan(0.0051);
  }
  expect(rods.some((row) => row.ratio !== '–')).toBe(true);
});
