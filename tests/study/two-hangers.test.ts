/**
 * A line on two hangers behind a connector that gives: statics alone divides its weight, so the place a hanger has to
 * go to is known in closed form.
 */
import { expect, test } from 'vitest';
import { review } from '../../src/app/review.js';
import { openForTrials } from '../../src/input/open-for-trials.js';
import { changeKinds } from '../../src/study/advise/change.js';
import type { Edit } from '../../src/study/advise/edit.js';
import { refine } from '../../src/study/advise/refine.js';
import { type ScreenPlan, screen } from '../../src/study/advise/screen.js';
import { search } from '../../src/study/advise/search.js';
import { installationOf } from '../input/sample-text.js';
import { pool } from './advise-run.js';

const FOOT = 0.3048;
const INCH = 0.0254;
/** Feet from the connector: the first hanger, the second, the free end. */
const [FIRST, SECOND, END] = [4, 13, 24];

const start = pool.indexOf('        - flange', pool.indexOf('- name: suction line'));
const end = pool.indexOf('    - name: discharge line');
const text = (
  pool.slice(0, start) +
  [
    '- flange: {standard: B16.5, class: 150, face: flat, type: slip-on, gasket-diameter: 8.1 in}',
    '- flexible-connector: {kind: rubber, length: 6 in, weight: 1 lb, thrust-area: 0 in2, rods: none,' +
      ' axial: 20 lb/in, lateral: 0.01 lb/in, torsion: 100 ft.lbf/deg, bending: 0.001 ft.lbf/deg}',
    `- straight: ${FIRST} ft`,
    '- hanger: {mark: H1, rod: 3/4 in, length: 2 ft 6 in}',
    `- straight: ${SECOND - FIRST} ft`,
    '- hanger: {mark: H2, rod: 3/8 in, length: 2 ft 6 in}',
    '- guide: {mark: G1}',
    `- straight: ${END - SECOND - 1} ft`,
    '- guide: {mark: G2}',
    '- straight: 1 ft',
    '- end: free',
  ]
    .map((step) => `        ${step}\n`)
    .join('') +
  pool.slice(end)
).replace(/service-spaces:[\s\S]*(?=limits:)/, '');

/** Share of the weight that the second hanger takes, by moments about the first; the connector takes none. */
const share = (second: number) => (END / 2 - FIRST) / (second - FIRST);

test('the frame divides the weight as statics does', () => {
  const { response, layout } = review(installationOf(text));
  const { supports } = response.conditions.filled ?? {};
  const load = (mark: string) => -(supports?.[mark]?.load.force[2] ?? Number.NaN);
  expect(layout.supports.map(({ mark }) => mark)).toContain('H2');
  const both = load('H1') + load('H2');
  // A hundredth for the flange at the connector, of which the formula knows nothing.
  expect(Math.abs(load('H2') / both - share(SECOND))).toBeLessThan(0.01);
});

test('the hanger goes as far as statics asks for the load of its rod, to the step', async () => {
  const opening = openForTrials(text);
  if (!opening.ok) throw new Error('cannot be read');
  const { opened } = opening;
  const before = review(opened.installation).findings.find(
    ({ check, at }) => check === 'rod-load' && at === 'H2',
  );
  const ratio = before?.ratio ?? Number.NaN;
  expect(ratio).toBeGreaterThan(1.1);
  // Only the rod of the second hanger is in question.
  const plan = {
    conditions: ['filled', 'test', 'hot', 'cold'],
    checks: ['rod-load'] as const,
    starts: [],
    slack: [],
    exceeding: { 'rod-load | H2': ratio - 1 },
    uncertain: [],
  };
  const options = {
    changes: 1,
    trials: 1000,
    kept: { marks: ['H1', 'H3', 'H4'], kinds: changeKinds.filter((kind) => kind !== 'move-support') },
    efforts: {},
  };
  const run = {
    screenMany: async (looked: ScreenPlan, chains: readonly (readonly Edit[])[]) =>
      chains.map((chain) => screen(opened, looked, chain)),
  };
  const base = screen(opened, plan, []);
  if (base === undefined) throw new Error('cannot be looked at');
  const [found] = (await search(opened, plan, base, options, run)).solved;
  const least = found && (await refine(opened, plan, base, found, options, run));

  const wanted = Array.from({ length: 60 }, (_, count) => count * 3 * INCH).find(
    (by) => (ratio * share(SECOND + by / FOOT)) / share(SECOND) <= 0.97,
  );
  expect(wanted).toBeGreaterThan(3 * INCH);
  expect(least?.changes.map(({ kind, data }) => `${kind} ${data.mark}`)).toEqual(['move-support H2']);
  // One step for the weight of the flange and the connector, which the formula leaves out.
  expect(Math.abs((least?.changes[0]?.size ?? 0) - (wanted ?? 0))).toBeLessThan(3 * INCH + 1e-6);
});
