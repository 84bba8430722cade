import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { asInstalled } from '../../src/as-installed/as-installed.js';
import { asInstalledResults } from '../../src/as-installed/as-installed-results.js';
import { asInstalledJsonSchema } from '../../src/as-installed/as-installed-schema.js';
import { asInstalledView } from '../../src/as-installed/compose-as-installed.js';
import { nextSheet } from '../../src/as-installed/next-sheet.js';
import { openItems } from '../../src/as-installed/open-item.js';
import { earlierVisit, storedReadings } from '../../src/as-installed/stored-readings.js';
import { IssuesError } from '../../src/issues/issue.js';
import { readReadingsText } from '../../src/readings/readings-text.js';
import { boxesOf } from '../../src/sheet/sheet.js';
import { projectRoot } from '../architecture/source-tree.js';
import { reviewedSample } from '../sheet/reviewed-sample.js';
import { answersFor, judgedBy, visitOf } from './visit.js';

const pool = reviewedSample('pool-hot-water');
const text = readFileSync(join(projectRoot, 'samples/readings/pool-hot-water.yaml'), 'utf8');
const sample = () => {
  const read = readReadingsText(text, 'pool.yaml');
  if (!read.ok) throw new Error('the sample is no readings file');
  return asInstalled(pool, [read.answers]);
};

const codesOf = (work: () => unknown): readonly string[] => {
  try {
    work();
  } catch (error) {
    if (error instanceof IssuesError) return error.issues.map(({ code }) => code);
    throw error;
  }
  return [];
};

describe('sheets of something else', () => {
  const own = answersFor(pool, { 'electrical.volts-ab': '460' });
  const other = { ...own, fingerprint: 'f'.repeat(64) };

  test('another revision is refused with both fingerprints, and taken where that is asked for', () => {
    expect(codesOf(() => asInstalled(pool, [other]))).toEqual(['fieldwork.sheet.other-revision']);
    try {
      asInstalled(pool, [other]);
    } catch (error) {
      const [issue] = error instanceof IssuesError ? error.issues : [];
      expect(issue?.data).toMatchObject({ found: 'f'.repeat(64), wanted: pool.installation.fingerprint });
    }
    const taken = asInstalled(pool, [other], { otherRevision: true });
    expect(taken.issues.map(({ code, severity }) => `${severity} ${code}`)).toEqual([
      'warning fieldwork.sheet.other-revision',
    ]);
    expect(taken.readings.size).toBe(1);
  });

  test('one without a fingerprint is refused too; one of another pump always', () => {
    const { fingerprint: _none, ...unmarked } = own;
    expect(codesOf(() => asInstalled(pool, [unmarked]))).toEqual(['fieldwork.sheet.unmarked']);
    expect(codesOf(() => asInstalled(pool, [{ ...own, mark: 'HWP-2' }], { otherRevision: true }))).toEqual([
      'fieldwork.sheet.other-pump',
    ]);
  });
});

describe('several sheets', () => {
  const sheet = (day: string, volts: string, file: string) =>
    answersFor(
      pool,
      { 'identity.date': day, 'identity.by': 'A. Reader', 'electrical.volts-ab': volts },
      file,
    );

  test('the later day holds, in whatever order they are named', () => {
    const visit = asInstalled(pool, [sheet('2026-11-05', '470', 'b'), sheet('2026-11-01', '450', 'a')]);
    expect(visit.readings.get('electrical.volts-ab')).toMatchObject({ value: 470 });
    expect(visit.date).toBe('2026-11-05');
  });

  test('what differs on one day is taken from neither, and told', () => {
    const visit = asInstalled(pool, [sheet('2026-11-05', '470', 'a'), sheet('2026-11-05', '450', 'b')]);
    expect(visit.readings.get('electrical.volts-ab')?.kind).toBe('unreadable');
    expect(visit.issues.map(({ code }) => code)).toEqual(['fieldwork.reading.differs']);
    expect(
      asInstalled(pool, [sheet('2026-11-05', '470', 'a'), sheet('2026-11-05', '470.0 V', 'b')]).issues,
    ).toEqual([]);
  });

  test('that something was not read takes no reading away', () => {
    const later = answersFor(
      pool,
      {
        'identity.date': '2026-11-09',
        'identity.by': 'A. Reader',
        'electrical.volts-ab': 'n/a: panel locked',
      },
      'c',
    );
    const visit = asInstalled(pool, [sheet('2026-11-05', '470', 'a'), later]);
    expect(visit.readings.get('electrical.volts-ab')).toMatchObject({ value: 470 });
  });

  test('a sheet in other units is read in those', () => {
    const metric = { ...answersFor(pool, { 'coupling.runout': '0,05' }), units: 'si' as const };
    expect(asInstalled(pool, [metric]).readings.get('coupling.runout')).toMatchObject({
      value: 5e-5,
      unit: 'mm',
    });
  });
});

describe('the sample', () => {
  const visit = sample();

  test('holds, for the reasons it was made to show', () => {
    expect(visit).toMatchObject({ verdict: 'exceeds', decision: 'hold', date: '2026-11-05', issues: [] });
    expect(
      openItems(visit)
        .filter(({ blocksStart }) => blocksStart)
        .map(({ at, kind }) => `${at}: ${kind}`),
    ).toEqual(['suction flange: exceeds', 'H2: exceeds', 'H3: guidance', 'discharge flange: recovery']);
    expect(judgedBy(visit, 'flange-parallelism', 'suction')[0]?.demand).toBeCloseTo(0.0181108 * 0.0254, 8);
    expect(judgedBy(visit, 'voltage-unbalance')[0]?.demand).toBeCloseTo(28 / 3 / (1378 / 3), 9);
  });

  test('results keep to the published schema and come back as they were', () => {
    const results = asInstalledResults(visit, '0.1.0');
    const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(asInstalledJsonSchema());
    expect(validate(JSON.parse(JSON.stringify(results))), JSON.stringify(validate.errors)).toBe(true);
    expect(results.asFound).toMatchObject({ kind: 'solved' });
    expect(validate({ ...results, decision: 'perhaps' })).toBe(false);
  });

  test('its view is finished text: no number, nothing undefined', () => {
    const walk = (value: unknown): void => {
      if (Array.isArray(value)) value.forEach(walk);
      else if (typeof value === 'object' && value !== null) Object.values(value).forEach(walk);
      else expect(['string', 'boolean']).toContain(typeof value);
    };
    const view = asInstalledView(visit, '0.1.0');
    walk(view);
    expect(JSON.stringify(view)).not.toMatch(/undefined|NaN|\[object/);
  });

  test('the next sheet asks only for what is open, under the same ids', () => {
    const next = nextSheet(visit);
    const ids = boxesOf(next).map(({ box }) => box.id);
    // What somebody noted brings boxes of its own, by which it is classed and closed.
    const own = ids.filter((id) => !id.startsWith('items.'));
    expect(boxesOf(visit.sheet).map(({ box }) => box.id)).toEqual(expect.arrayContaining(own));
    expect(ids.filter((id) => /^items\..*\.done$/.test(id))).toHaveLength(1);
    expect(ids).toContain('before-bolt-up.discharge.gap-up');
    expect(ids).toContain('before-bolt-up.suction.gap-up');
    expect(ids).toContain('electrical.volts-ab');
    expect(ids).not.toContain('before-bolt-up.suction.rise');
    expect(ids).not.toContain('access.in-sight');
    expect(ids).not.toContain('identity.motor-power');
    expect(ids).toContain('identity.motor-weight');
    expect(next.fingerprint).toBe(visit.sheet.fingerprint);
  });

  test('what was stored is read again as it was', () => {
    const stored = storedReadings(visit);
    expect(stored.name).toBe('hwp-1-2026-11-05');
    const again = earlierVisit(stored.text, 'stored.yaml', pool);
    expect(again).toMatchObject({ date: '2026-11-05', otherRevision: false });
    const numbers = (readings: typeof visit.readings) =>
      [...readings.values()].flatMap((reading) =>
        reading.kind === 'number' ? [[reading.id, reading.value]] : [],
      );
    expect(numbers(again?.readings ?? new Map())).toEqual(expect.arrayContaining(numbers(visit.readings)));
    expect(storedReadings(sample()).text).toBe(stored.text);
  });
});

test('nothing read: held, nothing exceeds, and both flanges ask for the test that takes the place of feelers', () => {
  const visit = visitOf(pool, {});
  expect(visit).toMatchObject({ verdict: 'cannot-tell', decision: 'hold' });
  expect(
    openItems(visit)
      .filter(({ kind }) => kind === 'recovery')
      .map(({ at }) => at),
  ).toEqual(['suction flange', 'discharge flange']);
  expect(() => storedReadings(visit)).toThrow('fieldwork.store.no-date');
});

test('an item of the agent holds unless a named person says that it does not block, and counts until it is closed', () => {
  const item = (more: Record<string, string>) =>
    openItems(
      visitOf(pool, {
        'identity.date': '2026-11-05',
        'identity.by': 'A. Reader',
        'open-items.item-1': 'leak at the flange',
        ...more,
      }),
    ).find(({ kind }) => kind === 'noted');
  expect(item({})).toMatchObject({ blocksStart: true });
  expect(item({ 'open-items.item-1-blocks': 'no' })).toMatchObject({ blocksStart: false });
  expect(item({ 'open-items.item-1-blocks': 'no', 'identity.by': 'n/a' })).toMatchObject({
    blocksStart: true,
  });
  expect(item({ 'open-items.item-1-closed': 'yes' })).toMatchObject({
    blocksStart: true,
    evidence: expect.stringContaining('called closed without'),
  });
  expect(
    item({ 'open-items.item-1-closed': 'yes', 'open-items.item-1-done': 'gasket renewed, tight' }),
  ).toBeUndefined();
});

test('earlier visits stand beside this one, with the change', () => {
  const earlier = earlierVisit(
    storedReadings(visitOf(pool, { 'identity.date': '2026-01-05', 'coupling.runout': '0.001' })).text,
    'e',
    pool,
  );
  if (earlier === undefined) throw new Error('no visit');
  const visit = asInstalled(
    pool,
    [answersFor(pool, { 'identity.date': '2026-11-05', 'coupling.runout': '0.0015' })],
    { earlier: [earlier] },
  );
  const { baseline } = asInstalledView(visit, '0.1.0');
  expect(baseline.earlier).toEqual([{ date: '2026-01-05' }]);
  expect(baseline.rows).toEqual([
    expect.objectContaining({ earlier: [{ text: '0.001 in' }], now: '0.0015 in', change: '+50%' }),
  ]);
});
