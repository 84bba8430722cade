/** Review, field sheet and judge print one limit for one thing: each of them is compared with the other two. */
import { describe, expect, test } from 'vitest';
import { judgementRow } from '../../src/as-installed/judgement-row.js';
import type { Review } from '../../src/index.js';
import { buildSheet, inUnits } from '../../src/sheet/build-sheet.js';
import type { UnitSystem } from '../../src/units/index.js';
import { judgedBy, visitOf } from '../as-installed/visit.js';
import { sectionView } from '../report/section-view.js';
import { changedSample, reviewedSample } from './reviewed-sample.js';

type View = Readonly<Record<string, unknown>>;

const withLimits = changedSample('pool-hot-water', (file) => {
  file.limits.vibration = { velocity: '0.18 in/s', source: 'specification' };
  file.limits['fit-up'] = { gap: '0.05 in', offset: '0.04 in', parallelism: '0.02 in' };
  file.pump.motor['full-load-current'] = '21 A';
});

const REVIEWS: readonly (readonly [string, Review])[] = [
  ['pool-hot-water', reviewedSample('pool-hot-water')],
  ['library-chilled-water', reviewedSample('library-chilled-water')],
  ['dairy-condenser-water', reviewedSample('dairy-condenser-water')],
  ['limits of the file', withLimits],
];
const SYSTEMS: readonly UnitSystem[] = ['us', 'si'];

const allBoxes = (review: Review) =>
  buildSheet(review).parts.flatMap(({ rows }) => rows.flatMap(({ boxes }) => boxes));

/** What the sheet prints beside a box. */
function onSheet(review: Review, id: string): string {
  const rows = buildSheet(review).parts.flatMap(({ rows: own }) => own);
  const row = rows.find(({ boxes }) => boxes.some((box) => box.id === id));
  if (row === undefined) throw new Error(`the sheet has no box ${id}`);
  return row.limit ?? '';
}

const CASES = REVIEWS.flatMap(([name, review]) =>
  SYSTEMS.map((system) => ({ name, system, review: inUnits(review, system) as Review })),
);

describe.each(CASES)('limits of $name in $system units', ({ review, system }) => {
  const visit = visitOf(review, {});
  /** What the judge prints: the same at every place it judges. */
  const judged = (judge: string, at?: string): string => {
    const limits = judgedBy(visit, judge, at).map((each) => judgementRow(each, visit).limit);
    expect(limits.length).toBeGreaterThan(0);
    expect(new Set(limits).size).toBe(1);
    return limits[0] ?? '';
  };

  test.each(['suction', 'discharge'] as const)('%s flange', (which) => {
    const flanges = sectionView(review, 'readings', system).flanges as readonly View[];
    const printed = flanges.find((flange) => flange.which === which) ?? {};
    const box = (name: string) => onSheet(review, `before-bolt-up.${which}.${name}`);
    expect(printed.holes).toMatch(/^within \d/);
    expect(box('holes')).toBe(printed.holes);
    expect(judged('bolt-holes', which)).toBe(printed.holes);
    expect(box('offset')).toBe(printed.offset);
    expect(judged('flange-offset', which)).toBe(printed.offset);
    expect(box('shaft-along')).toBe(printed.shaft);
    expect(judged('shaft-movement', which)).toBe(printed.shaft);
    expect(box('gasket')).toBe(`mean gap ${String(printed.gap)} of the gasket`);
    expect(judged('flange-gap', which)).toBe(printed.gap);
    expect(box('gap-up')).toBe(`${String(printed.tilt)} out of parallel across the face`);
    expect(judged('flange-parallelism', which)).toBe(printed.tilt);
  });

  test('out of parallel on the card of the fitter', () => {
    const { tolerances } = sectionView(review, 'fit-up', system) as { tolerances: readonly View[] };
    const rows = tolerances.filter(({ what }) => String(what).startsWith('out of parallel'));
    expect(rows.length).toBeGreaterThan(0);
    for (const { what, mm, inches } of rows) {
      const which = String(what).includes('discharge') ? 'discharge' : 'suction';
      const limit = judged('flange-parallelism', which);
      const printed = Number(system === 'us' ? inches : mm);
      expect(limit).toContain(system === 'us' ? `${inches} in` : ' mm');
      expect(Number(limit.replace(/[^\d.]/g, ''))).toBeCloseTo(printed, system === 'us' ? 3 : 1);
    }
  });

  test('vibration and its stop', () => {
    const card = sectionView(review, 'first-start', system);
    expect(card.vibration).toMatch(/^at most \d/);
    expect(judged('vibration')).toBe(card.vibration);
    expect(judged('vibration-damage')).toBe(`at most ${String(card.damaging)}`);
    const rows = buildSheet(review).parts.find(({ id }) => id === 'vibration')?.rows ?? [];
    const limits = rows.filter(({ label }) => label.startsWith('Motor')).map(({ limit }) => limit);
    expect(new Set(limits)).toEqual(new Set([card.vibration]));
  });

  test('movement and current at the start', () => {
    const card = sectionView(review, 'first-start', system);
    const box = allBoxes(review).find(({ id }) => id === 'start-up.motor-top');
    expect(box?.expected).toBe(card.movement);
    if (card.hasMovementLimit === true) {
      expect(judged('start-movement')).toBe(`at most ${String(card.movementLimit)}`);
      expect(onSheet(review, 'start-up.motor-top')).toBe(judged('start-movement'));
    } else {
      // What is predicted is guidance: no limit is printed beside it.
      expect(judged('start-movement')).toBe(`at most ${String(card.movement)}`);
      expect(onSheet(review, 'start-up.motor-top')).toBe('no limit given');
    }
    expect(judged('current')).toBe(card.current);
    const current = onSheet(review, 'electrical.amps-a');
    expect(current).toBe(
      `${card.current === '' ? '' : `${String(card.current)}; `}unbalance at most ${String(card.unbalance)}`,
    );
    expect(judged('current-unbalance')).toBe(`at most ${String(card.unbalance)}`);
  });

  test('coupling, where the pump has one', () => {
    if (review.installation.pump.build !== 'split-coupled') return;
    const card = sectionView(review, 'seal-change', system);
    const within = (text: unknown, limit: string) => expect(text).toContain(limit.replace('at most ', ''));
    within(card.runout, judged('shaft-runout'));
    within(card.evenness, judged('coupling-gaps'));
    expect(onSheet(review, 'coupling.runout')).toBe(judged('shaft-runout'));
  });
});

test('the bolt holes of a flange are an eighth of an inch in all three', () => {
  const flanges = sectionView(reviewedSample('pool-hot-water'), 'readings', 'us').flanges as readonly View[];
  expect(flanges.map(({ holes }) => holes)).toEqual(['within 0.125 in', 'within 0.125 in']);
});
