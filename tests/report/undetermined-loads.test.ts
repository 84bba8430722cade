import { expect, test } from 'vitest';
import { composeReview } from '../../src/report/compose-review.js';
import { resultsFile } from '../../src/report/results/results-file.js';
import { reviewed } from './fixture.js';

const whole = reviewed();
const filled = whole.response.conditions.filled;
const H1 = filled?.supports.H1;
if (filled === undefined || H1 === undefined) throw new Error('the fixture has a filled condition and H1');
const marked = {
  ...whole,
  response: {
    ...whole.response,
    conditions: {
      ...whole.response.conditions,
      filled: {
        ...filled,
        supports: { ...filled.supports, H1: { ...H1, undetermined: ['vertical' as const] } },
      },
    },
  },
};

interface SupportLoadsView {
  readonly undetermined: readonly unknown[];
  readonly tables: readonly {
    readonly marks: readonly string[];
    readonly rows: readonly { condition: string; loads: readonly { undetermined: boolean }[] }[];
  }[];
}

const supportLoads = (review: typeof whole) => {
  const { view } = composeReview(review, { reader: 'engineer', units: 'us', version: '0.0.0' });
  const slots = view.sections as readonly Record<string, unknown>[];
  const found = slots
    .map((slot) => slot['support-loads'])
    .find((each) => each !== undefined && each !== false);
  return found as SupportLoadsView;
};

test('a load that nothing determines is marked in the table, told in a note and in the results', () => {
  const view = supportLoads(marked);
  expect(view.undetermined).toEqual([{ mark: 'H1', parts: 'vertical' }]);
  const cells = view.tables.flatMap(({ marks, rows }) =>
    rows.flatMap(({ condition, loads }) =>
      loads.flatMap(({ undetermined }, i) => (undetermined ? [`${condition} ${marks[i]}`] : [])),
    ),
  );
  expect(cells).toEqual(['filled H1']);
  const results = resultsFile(marked, marked.findings, { version: '0.0.0' });
  expect(results.conditions.filled?.undetermined).toEqual({ H1: ['vertical'] });
  expect(results.conditions.empty?.undetermined).toBeUndefined();
});

test('a determined load is not', () => {
  expect(supportLoads(whole).undetermined).toEqual([]);
});
