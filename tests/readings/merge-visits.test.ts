import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { asInstalled } from '../../src/as-installed/as-installed.js';
import type { Answers } from '../../src/readings/answers.js';
import { mergeVisits } from '../../src/readings/merge-visits.js';
import { sheetTaken } from '../../src/readings/sheet-taken.js';
import { siteItems } from '../../src/readings/site-items.js';
import { understand } from '../../src/readings/understand.js';
import { buildSheet } from '../../src/sheet/build-sheet.js';
import { answersFor } from '../as-installed/visit.js';
import { reviewedSample } from '../sheet/reviewed-sample.js';

const pool = reviewedSample('pool-hot-water');
const sheet = buildSheet(pool);
const taken = (answers: Answers) => sheetTaken(understand(answers, sheet, 'us'));
const kindOf = (id: string, ...sheets: readonly Answers[]) =>
  mergeVisits(sheets.map(taken), sheet).readings.get(id)?.kind;
const page = (file: string, day: string, by: string, readings: Record<string, string>) =>
  answersFor(pool, { 'identity.date': day, 'identity.by': by, ...readings }, file);

describe('a reading stands until it is corrected', () => {
  const no = page('a', '2026-11-05', 'A. Reader', { 'coupling.guard': 'no' });
  const decided = (...sheets: readonly Answers[]) => {
    const { judgements } = asInstalled(pool, sheets);
    return judgements.find(({ judge }) => judge === 'guard')?.verdict;
  };

  test('yes of a later day by a named person corrects no; without day or name it does not', () => {
    const yes = (day: string, by: string) => page('b', day, by, { 'coupling.guard': 'yes' });
    expect(decided(no, yes('2026-11-09', 'B. Reader'))).toBe('meets');
    expect(decided(no, yes('2026-11-09', ''))).toBe('exceeds');
    expect(decided(no, yes('', 'B. Reader'))).toBe('exceeds');
    expect(decided(no, yes('11/09/2026', 'B. Reader'))).toBe('exceeds');
    expect(decided(no, yes('2026-11-05', 'B. Reader'))).toBe('exceeds');
    expect(decided(no, yes('2026-11-01', 'B. Reader'))).toBe('exceeds');
  });

  test('an undated no counts at its worst until a sheet says that it corrects it', () => {
    const undated = page('u', '', 'A. Reader', { 'coupling.guard': 'no' });
    const later = page('b', '2026-11-09', 'B. Reader', { 'coupling.guard': 'yes' });
    expect(decided(undated, later)).toBe('exceeds');
    const corrects = page('b', '2026-11-09', 'B. Reader', {
      'coupling.guard': 'yes',
      'identity.corrects': 'the undated sheet of the fitter: guard fitted',
    });
    expect(decided(undated, corrects)).toBe('meets');
  });

  test('n/a erases no "no", and a yes before it is no longer known', () => {
    const na = page('b', '2026-11-09', 'B. Reader', { 'coupling.guard': 'n/a: taken off for the seal' });
    expect(decided(no, na)).toBe('exceeds');
    const yes = page('a', '2026-11-05', 'A. Reader', { 'coupling.guard': 'yes' });
    expect(decided(yes, na)).toBe('cannot-tell');
  });

  test('dry over filled, in conflict on one day', () => {
    const state = (file: string, words: string) =>
      page(file, '2026-11-05', file, { 'identity.state': words });
    const visit = asInstalled(pool, [state('aa', 'filled, cold'), state('bb', 'dry')]);
    expect(visit.judgements.find(({ judge }) => judge === 'line-state')?.verdict).toBe('exceeds');
    expect(kindOf('identity.state', state('aa', 'filled, cold'), state('bb', 'dry'))).toBe('unreadable');
  });

  test('what has no safer side is judged both ways, and the worse counts', () => {
    const height = (file: string, text: string) =>
      page(file, '2026-11-05', file, { 'supports.h1.height': text });
    const drawn = height('aa', '9\'-10 1/2"');
    const high = height('bb', '10\'-2"');
    for (const sheets of [
      [drawn, high],
      [high, drawn],
    ]) {
      const visit = asInstalled(pool, sheets);
      expect(visit.asFound.kind).toBe('solved');
      expect(visit.items.some(({ at }) => at === 'H1, height')).toBe(true);
    }
  });
});

describe('items', () => {
  test('two people, one day, one line: both stay, and a later sheet adds', () => {
    const item = (file: string, by: string, words: string, day = '2026-11-05') =>
      page(file, day, by, { 'open-items.item-1': words });
    const sheets = [
      item('a', 'A. Reader', 'casing cracked'),
      item('b', 'B. Reader', 'guard missing'),
      item('c', 'A. Reader', 'valve stiff', '2026-11-09'),
    ].map(taken);
    expect(siteItems(sheets, sheet).map(({ words }) => words)).toEqual([
      'casing cracked',
      'guard missing',
      'valve stiff',
    ]);
  });

  test('an item is classed and closed by its key, by a named person with what was done', () => {
    const written = page('a', '2026-11-05', 'A. Reader', { 'before-start.remarks': 'do not start' });
    const [item] = siteItems([taken(written)], sheet);
    expect(item).toMatchObject({ bars: 'start', kind: 'remark' });
    const answered = (by: string, day: string, more: Record<string, string>) =>
      siteItems([taken(written), taken(page('b', day, by, more))], sheet)[0];
    const classed = { [`items.${item?.key}.class`]: 'noted' };
    const done = { [`items.${item?.key}.done`]: 'joint remade, tight' };
    expect(answered('B. Reader', '2026-11-09', classed)).toMatchObject({ bars: 'nothing' });
    expect(answered('n/a', '2026-11-09', classed)).toMatchObject({ bars: 'start' });
    expect(answered('B. Reader', '2026-11-09', done)?.closed).toMatchObject({ by: 'B. Reader' });
    expect(answered('', '2026-11-09', done)?.closed).toBeUndefined();
    expect(answered('B. Reader', '', done)?.closed).toBeUndefined();
    expect(answered('B. Reader', '2026-11-01', done)?.closed).toBeUndefined();
  });
});

const sheets = fc.array(
  fc.record({
    day: fc.constantFrom('2026-11-05', '2026-11-06', '2026-11-09', '', '11/04/2026', 'soon'),
    by: fc.constantFrom('A. Reader', 'B. Reader', '', 'n/a'),
    guard: fc.constantFrom('', 'yes', 'no', 'n/a: locked', 'maybe'),
    volts: fc.constantFrom('', '460', '461', '276', '460/461', 'n/a: locked'),
    item: fc.constantFrom('', 'casing cracked', 'guard missing', 'do not start'),
    remark: fc.constantFrom('', 'do not start', 'checked again'),
    corrects: fc.constantFrom('', 'all earlier sheets'),
  }),
  { minLength: 1, maxLength: 6 },
);

test('in whatever order sheets are put together, the same comes of it; no item and no worse reading is lost', () => {
  fc.assert(
    fc.property(sheets, fc.infiniteStream(fc.nat()), (drawn, random) => {
      const made = drawn.map(({ day, by, guard, volts, item, remark, corrects }, index) =>
        taken(
          page(`${index}.yaml`, day, by, {
            'coupling.guard': guard,
            'electrical.volts-ab': volts,
            'open-items.item-1': item,
            'coupling.remarks': remark,
            'identity.corrects': corrects,
          }),
        ),
      );
      const shuffled = made
        .map((each) => ({ each, at: random.next().value as number }))
        .sort((a, b) => a.at - b.at)
        .map(({ each }) => each);
      const [one, other] = [mergeVisits(made, sheet), mergeVisits(shuffled, sheet)];
      const told = (evidence: typeof one) =>
        evidence.variants
          .map((variant) => JSON.stringify([...variant].map(([id, { kind, text }]) => [id, kind, text])))
          .sort();
      expect(told(one)).toEqual(told(other));
      expect(siteItems(made, sheet)).toEqual(siteItems(shuffled, sheet));
      // Everything anybody wrote is there.
      const words = siteItems(made, sheet).map((each) => each.words);
      for (const { item, remark } of drawn) {
        for (const written of [item, remark]) if (written !== '') expect(words).toContain(written);
      }
      // A "no" is gone only where a later day, by a named person, or a correction says yes.
      const isCorrected = (no: (typeof drawn)[number]) =>
        drawn.some(
          ({ day, by, guard, corrects }) =>
            guard === 'yes' &&
            day.startsWith('2026') &&
            by.endsWith('Reader') &&
            (no.day.startsWith('2026') ? day > no.day || corrects !== '' : corrects !== ''),
        );
      const stands = drawn.some((each) => each.guard === 'no' && !isCorrected(each));
      const answers = one.variants.map((variant) => {
        const reading = variant.get('coupling.guard');
        return reading?.kind === 'choice' ? reading.choice : reading?.kind;
      });
      if (stands) expect(answers).toContain('no');
    }),
    { numRuns: 200 },
  );
});
