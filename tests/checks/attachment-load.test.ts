import { expect, test } from 'vitest';
import { attachmentLoad } from '../../src/checks/supports/attachment-load.js';
import { findingAt, findingsOf } from './findings-of.js';
import { placedSupport, type SubjectChange, sourced, UNUSABLE } from './fixture.js';

const rated = (attachmentRating: number): SubjectChange => ({
  layout: {
    supports: [
      placedSupport('H1', 'suction line', 1, {
        rods: { count: 2, attachmentRating: sourced(attachmentRating) },
      }),
    ],
  },
});

test('an attachment below its rating meets it, carrying all rods of the support', () => {
  expect(findingAt(attachmentLoad, 'H1', rated(2500))).toMatchObject({
    verdict: 'meets',
    demand: 2000,
    ratio: 0.8,
  });
});

test('an attachment above its rating exceeds it', () => {
  expect(findingAt(attachmentLoad, 'H1', rated(1500))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.attachment-load.exceeds' },
  });
});

test('an attachment of a support that was not solved cannot be told', () => {
  const [support] = rated(2500).layout?.supports ?? [];
  if (support === undefined) throw new Error('no support');
  const layout = { supports: [{ ...support, mark: 'H9' }] };
  expect(findingAt(attachmentLoad, 'H9', { layout })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.support-not-solved' },
  });
});

test.each(UNUSABLE)('a rating that is %s cannot be told', (_word, rating) => {
  expect(findingAt(attachmentLoad, 'H1', rated(rating)).verdict).toBe('cannot-tell');
});

test('without a given rating it does not apply, and says whom to ask', () => {
  expect(findingsOf(attachmentLoad)).toMatchObject([
    { verdict: 'does-not-apply', reason: { code: 'checks.attachment-load.no-place' } },
  ]);
});
