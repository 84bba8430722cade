import { beforeAll, describe, expect, test } from 'vitest';
import { composeReview, type ReviewSubject } from '../../src/report/compose-review.js';
import { bandResults } from '../../src/report/results/band-results.js';
import { resultsFile } from '../../src/report/results/results-file.js';
import { resultsShape } from '../../src/report/results/results-schema.js';
import { bandWords, uncertaintyRange, uncertaintyWidth } from '../../src/report/words/band-words.js';
import { createWriter } from '../../src/report/writer.js';
import type { FindingBand } from '../../src/study/bands/bands.js';
import type { Uncertainty } from '../../src/study/bands/uncertainty.js';
import { reviewed, reviewedWithBands } from './fixture.js';

const si = createWriter('si');
const motor: Uncertainty = {
  id: 'mass of motor',
  what: 'weight of the motor',
  varied: { kind: 'mass', owner: 'motor' },
  moves: 'share',
  half: 0.4,
  taken: 500,
  unit: 'kg',
  obtained: 'estimated',
  citation: { source: 'common-practice', clause: 'estimate', confidence: 'common practice' },
};
const band = (change: Partial<FindingBand>): FindingBand => ({
  check: 'rod-load',
  title: 'Hanger rod load',
  at: 'H1',
  comparison: false,
  value: 0.8,
  standard: 0.05,
  statement: 'meets throughout',
  heavier: 0.9,
  lighter: 0.7,
  sensitivities: [],
  turns: [],
  ...change,
});
const turn = { uncertainty: motor, amount: 0.2, value: 540, meets: 'below' } as const;

describe('the words of a verdict', () => {
  test.each([
    [{}, 'meets over the whole band, also with all weights 15 % heavier (0.90)'],
    [
      { statement: 'meets only if', turns: [turn] },
      'meets only if the weight of the motor is no more than 540 kg, all else as taken',
    ],
    [{ statement: 'meets only if', value: 0.95 }, 'meets as taken; its band reaches 1.05'],
    [
      { statement: 'meets only if', heavier: 1.02 },
      'meets as taken; not with all weights 15 % heavier (1.02)',
    ],
    [
      { statement: 'exceeds throughout', value: 1.3, lighter: 1.1 },
      'exceeds over the whole band, also with all weights 15 % lighter (1.10)',
    ],
    [
      { statement: 'exceeds unless', value: 1.05, turns: [{ ...turn, value: 440 }] },
      'exceeds as taken; would meet if the weight of the motor is no more than 440 kg, all else as taken',
    ],
    [{ statement: 'exceeds unless', value: 1.05 }, 'exceeds as taken; its band begins at 0.95'],
    [
      { statement: 'exceeds unless', value: 1.2, heavier: 1.3, lighter: 0.95 },
      'exceeds as taken; not with all weights 15 % lighter (0.95)',
    ],
  ] as const)('%j', (change, words) => {
    expect(bandWords(band(change), 0.15, si).replaceAll('\u00a0', ' ')).toBe(words.replaceAll('15 %', '15%'));
  });
});

test('a width is printed as what it is', () => {
  expect(uncertaintyWidth(motor, si)).toBe('± 40%');
  expect(uncertaintyRange(motor, si)).toBe('300 kg to 700 kg');
  expect(uncertaintyWidth({ ...motor, moves: 'factor', half: 1 }, si)).toBe('half to twice');
  expect(uncertaintyWidth({ ...motor, moves: 'factor', half: 0.3 }, si)).toBe('1/1.3 to 1.3 times');
  expect(uncertaintyWidth({ ...motor, moves: 'alternative' }, si)).toBe('one or the other');
});

describe('a review with bands', () => {
  let whole: ReviewSubject;
  beforeAll(async () => {
    whole = await reviewedWithBands();
  });
  const options = { reader: 'engineer', units: 'si', version: '0.0.0' } as const;

  test('has the section, and a line on page one for every reader', () => {
    const engineer = composeReview(whole, options);
    expect(engineer.sections).toContain('bands');
    for (const reader of ['engineer', 'contractor', 'commissioning'] as const) {
      const [first] = composeReview(whole, { ...options, reader }).view.sections as readonly {
        summary: { hasBands: boolean; bandsLine: string };
      }[];
      expect(first?.summary.hasBands).toBe(true);
      expect(first?.summary.bandsLine).toMatch(/verdicts that follow from weights/);
    }
  });

  test('without bands there is neither', () => {
    const plain = composeReview(reviewed(), options);
    expect(plain.sections).not.toContain('bands');
    const [first] = plain.view.sections as readonly { summary: { hasBands: boolean } }[];
    expect(first?.summary.hasBands).toBe(false);
  });

  test('the results hold them in the published shape', () => {
    const results = resultsFile(whole, whole.findings, { version: '0.0.0' });
    expect(() => resultsShape().parse(results)).not.toThrow();
    expect(results.bands?.ratios.length).toBeGreaterThan(0);
    expect(results.bands?.sampled?.count).toBe(4);
    expect(resultsFile(reviewed(), whole.findings, { version: '0.0.0' }).bands).toBeUndefined();
  });

  test('the results name what to find out by doubt or by code', () => {
    const { bands } = whole;
    if (bands === undefined) throw new Error('no bands');
    for (const one of bandResults(bands).findOut) {
      expect(one.kind === 'missing' ? one.code : one.doubt).toBeTruthy();
    }
  });
});
