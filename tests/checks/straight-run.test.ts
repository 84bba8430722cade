import { expect, test } from 'vitest';
import { suctionRun } from '../../src/analysis/pipes/pipe-diameters.js';
import { straightRun } from '../../src/checks/practice/straight-run.js';
import { type FileStep, practiceFinding, practiceSubject, valve } from './practice-subject.js';

/** Five diameters of NPS 6 are 30 in, 762 mm. */
const long: FileStep = { straight: '770 mm' };
const short: FileStep = { straight: '300 mm' };
const end: FileStep = { end: 'anchored' };
const rest = [{ straight: '1 m' }, valve('gate'), end];
const at = (suction: readonly FileStep[], limits?: FileStep) =>
  practiceFinding(straightRun, { suction, ...(limits && { limits }) });
const given = { 'straight-run': { diameters: 3, source: 'table of the standard, elbow' } };

test('five diameters meet it, and the distance is told', () => {
  const finding = at([long, { elbow: 'up' }, ...rest]);
  expect(finding).toMatchObject({ verdict: 'meets', comparison: true, reason: { data: { by: 'elbow 1' } } });
  expect(finding.demand).toBeCloseTo(0.77, 9);
});

test('less exceeds for comparison only, with the standard named', () => {
  expect(at([short, { elbow: 'up' }, ...rest])).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    basis: { source: 'api-686' },
    reason: { data: { disturbs: 'elbow' } },
  });
});

test('an elbow on the port itself is no length at all', () => {
  expect(at([{ elbow: 'up' }, ...rest])).toMatchObject({ verdict: 'exceeds', demand: 0 });
});

test('a number of diameters given in the file decides', () => {
  expect(at([short, { elbow: 'up' }, ...rest], given)).toMatchObject({
    verdict: 'exceeds',
    comparison: false,
    basis: { source: 'input', clause: 'table of the standard, elbow' },
  });
  expect(at([long, { elbow: 'up' }, ...rest], given).verdict).toBe('meets');
});

test('flanges, joints, hangers and taps leave the pipe straight', () => {
  const suction = [
    { flange: { class: 150, type: 'slip-on' } },
    { straight: '400 mm' },
    { 'gauge-tap': {} },
    { hanger: { mark: 'H1' } },
    { straight: '400 mm' },
    { 'grooved-joint': { type: 'rigid', weight: '6 kg' } },
    { elbow: 'up' },
    ...rest,
  ];
  expect(at(suction).demand).toBeGreaterThanOrEqual(0.8);
});

test('a line that ends before the length is reached cannot be told', () => {
  expect(at([short, end])).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.straight-run.ends' },
  });
  expect(at([long, end]).verdict).toBe('meets');
});

test.each([
  [[{ elbow: 'up' }, ...rest], 'elbow'],
  [[{ elbow: 'up' }, { elbow: 'south' }, ...rest], 'two elbows in one plane'],
  [[{ elbow: 'up' }, { elbow: 'west' }, ...rest], 'two elbows out of plane'],
  [[{ elbow: 'up' }, { straight: '800 mm' }, { elbow: 'west' }, ...rest], 'elbow'],
  [[valve('butterfly'), end], 'butterfly valve'],
  [[valve('swing check'), ...rest], 'swing check'],
  [[{ reducer: { to: '8 in', kind: 'concentric' } }, ...rest], 'reducer'],
  [[{ tee: { side: { direction: 'up', size: '4 in', walk: [{ end: 'free' }] } } }, ...rest], 'tee'],
])('what disturbs the flow is named: %#', (walk, disturbs) => {
  expect(suctionRun(practiceSubject({ suction: [short, ...walk] }))?.disturbs).toBe(disturbs);
});

const diffuser = (change: FileStep): FileStep => ({
  'suction-diffuser': {
    turn: 'up',
    'pump-leg': '300 mm',
    'pipe-leg': '300 mm',
    weight: '90 kg',
    contents: '20 l',
    ...change,
  },
});

test('ahead of a diffuser that straightens, its manufacturer decides', () => {
  const ahead = (change: FileStep) => at([diffuser(change), short, { elbow: 'west' }, ...rest]);
  expect(ahead({ straightens: 'yes' })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.straight-run.diffuser-unsaid' },
  });
  expect(ahead({}).verdict).toBe('cannot-tell');
  expect(ahead({ 'straight-asked': '0 mm' })).toMatchObject({ verdict: 'meets', comparison: false });
  const long = ahead({ 'straight-asked': '500 mm' });
  expect(long).toMatchObject({
    verdict: 'exceeds',
    comparison: false,
    reason: { code: 'checks.straight-run.diffuser-short' },
  });
  expect(long.demand).toBeCloseTo(0.3, 9);
});

test('a diffuser without vanes is an elbow on the port', () => {
  expect(at([diffuser({ straightens: 'no' }), short, ...rest])).toMatchObject({
    verdict: 'exceeds',
    comparison: true,
    demand: 0,
  });
});
