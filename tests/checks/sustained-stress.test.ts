import { expect, test } from 'vitest';
import { memberIntensifications } from '../../src/analysis/pipes/end-intensification.js';
import { sustainedStresses } from '../../src/analysis/pipes/sustained-stresses.js';
import { sustainedStress } from '../../src/checks/pipes/sustained-stress.js';
import type { PipeSection, TeePart } from '../../src/input/installation.js';
import type { PlacedTee } from '../../src/model/layout/layout.js';
import { findingsOf } from './findings-of.js';
import {
  frame,
  layout,
  NPS6,
  type SubjectChange,
  sourced,
  steelFlange,
  subject,
  UNUSABLE,
  wrench,
} from './fixture.js';
import { workedOut } from './worked-out.js';

// NPS 6 STD: Z = 1.392e-4 m³, P d²/(D² - d²) = 8 bar × 5.172 = 4.138 MPa, P D/4t = 4.732 MPa.
const PRESSURE = (8e5 * 0.154051 ** 2) / (0.168275 ** 2 - 0.154051 ** 2);
const Z = (Math.PI * (0.168275 ** 4 - 0.154051 ** 4)) / (32 * 0.168275);

const bent = (moment: number, hot: number | undefined, code: 'B31.9' | 'B31.1' = 'B31.9'): SubjectChange => ({
  limits: { stress: { code, cycles: sourced(7000), ...(hot !== undefined && { hot: sourced(hot) }) } },
  answers: { filled: { members: { 'straight 1': wrench([0, 0, 0], [moment, 0, 0]) } } },
});
const tee: TeePart = {
  kind: 'tee',
  name: 'tee 1',
  path: 'tee 1',
  section: NPS6,
  enterBy: 'branch',
  turn: [1, 0, 0],
  centreToRunEnd: sourced(0.14),
  centreToBranchEnd: sourced(0.14),
  mass: sourced(15),
  branchSection: NPS6,
  runSection: NPS6,
  side: { direction: [-1, 0, 0], section: NPS6, walk: [] },
  make: 'welding tee',
};
/** A tee where straight 3, the branch, ends. */
const placedTee = (run: PipeSection): PlacedTee => ({
  name: 'tee 1',
  line: 'discharge line',
  point: 'H2',
  part: { ...tee, runSection: run },
  intensification: 3,
  members: ['straight 3'],
});
const onSuction = (change: SubjectChange) => {
  const [first] = findingsOf(sustainedStress, change);
  if (first === undefined) throw new Error('no finding');
  return first;
};

test('pressure and bending below the allowable meet it, one finding per line at its worst part', () => {
  const finding = onSuction(bent(10_000, 103e6));
  expect(finding).toMatchObject({ verdict: 'meets', at: 'straight 1, suction line', condition: 'filled' });
  expect(finding.demand).toBeCloseTo(PRESSURE + 10_000 / Z, 0);
  expect(workedOut(finding.calculation)).toBeCloseTo(finding.demand ?? 0, 0);
  expect(findingsOf(sustainedStress, bent(10_000, 103e6))).toHaveLength(2);
});

test('bending above the allowable exceeds it and names the part', () => {
  expect(onSuction(bent(20_000, 103e6))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.sustained-stress.exceeds', data: { part: 'straight 1', line: 'suction line' } },
  });
});

test('without an allowable stress it cannot be told, and the stress is given', () => {
  expect(onSuction(bent(10_000, undefined))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.stress.no-allowable' },
  });
  expect(onSuction(bent(10_000, undefined)).demand).toBeGreaterThan(7e7);
});

test.each(UNUSABLE)('an allowable that is %s cannot be told', (_word, hot) => {
  expect(onSuction(bent(10_000, hot)).verdict).toBe('cannot-tell');
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])('a moment of %s cannot be told', (moment) => {
  expect(onSuction(bent(moment, 103e6)).verdict).toBe('cannot-tell');
});

test('the equation follows the code named: B31.1 takes the thin-wall pressure term', () => {
  const finding = onSuction(bent(10_000, 103e6, 'B31.1'));
  expect(finding.basis.source).toBe('asme-b31.1');
  expect(finding.demand).toBeCloseTo((8e5 * 0.168275) / (4 * 0.007112) + 10_000 / Z, 0);
  expect(workedOut(finding.calculation)).toBeCloseTo(finding.demand ?? 0, 0);
});

test('an axial force counts in B31.9 in either sense and not in B31.1', () => {
  const pulled = (code: 'B31.9' | 'B31.1', north: number) => {
    const change = bent(0, 103e6, code);
    const answers = { filled: { members: { 'straight 1': wrench([0, north, 0]) } } };
    return onSuction({ ...change, answers }).demand ?? Number.NaN;
  };
  expect(pulled('B31.9', 30_000)).toBeCloseTo(pulled('B31.9', -30_000), 3);
  expect(pulled('B31.9', 30_000)).toBeGreaterThan(pulled('B31.9', 0) + 8e6);
  expect(pulled('B31.1', 30_000)).toBe(pulled('B31.1', 0));
});

test('an elbow carries three quarters of its intensification factor', () => {
  const answers = { filled: { members: { 'elbow 1': wrench([0, 0, 0], [10_000, 0, 0]) } } };
  const change = { ...bent(0, 103e6), answers };
  const [, discharge] = findingsOf(sustainedStress, change);
  expect(discharge?.at).toBe('elbow 1, discharge line');
  expect(discharge?.demand).toBeCloseTo(PRESSURE + (0.75 * 2.266 * 10_000) / Z, 0);
});

test('the largest moment inside a span is found, not only that at its ends', () => {
  const weight = 400;
  const members = frame().members.map((member) => ({
    ...member,
    mass: { metal: member.name === 'straight 1' ? weight / 9.80665 : 0, covering: 0 },
  }));
  const base = subject(bent(0, 103e6));
  const filled = base.response.conditions.filled;
  if (filled === undefined) throw new Error('not solved');
  // One metre on two knife edges: w L / 2 at either end, w L² / 8 in the middle.
  const ends = { from: wrench([0, 0, weight / 2]), to: wrench([0, 0, weight / 2]) };
  const conditions = { filled: { ...filled, members: { ...filled.members, 'straight 1': ends } } };
  const heavy = {
    ...base,
    layout: layout({ frame: frame({ members }) }),
    response: { ...base.response, conditions },
  };
  const [row] = sustainedStresses(heavy);
  expect(row).toMatchObject({ part: 'straight 1', share: 0.5 });
  expect(row?.state.moment).toBeCloseTo(weight / 8, 9);
});

test('where the filled condition was not solved it cannot be told', () => {
  const conditions = frame().conditions.filter(({ name }) => name !== 'filled');
  const [finding] = findingsOf(sustainedStress, { layout: { frame: frame({ conditions }) } });
  expect(finding).toMatchObject({ verdict: 'cannot-tell', reason: { code: 'checks.nothing-read' } });
});

test('slip-on flanges, threaded valves, reducers and tees intensify the ends that meet them', () => {
  const slipOn = { ...steelFlange, type: 'slip-on' as const };
  const bodies = [...frame().bodies, { name: 'flange 1', points: ['pump discharge'], masses: [] }];
  const tee = placedTee(NPS6);
  const changed = subject({
    lines: [{ name: 'discharge line', from: 'discharge', section: NPS6, walk: [slipOn] }],
    layout: { frame: frame({ bodies }), tees: [tee] },
  });
  expect(memberIntensifications(changed)).toMatchObject({
    'straight 1': { from: 1, to: 1, between: 1 },
    'straight 2': { from: 2.1, to: 1, between: 1 },
    'elbow 1': { from: 2.266, to: 2.266, between: 2.266 },
    'straight 3': { from: 1, to: 3, between: 1 },
  });
});

test('the branch of a reduced outlet is judged with its effective section modulus, a branch as large as the run with its own', () => {
  const heavy = { ...NPS6, outsideDiameter: 0.3239, wall: 0.0095 };
  const branchOf = (run: PipeSection) =>
    memberIntensifications(subject({ layout: { tees: [placedTee(run)] } }))['straight 3']?.branch;
  // The wall of the run, 9.5 mm, is less than three times that of the branch.
  const mean = (NPS6.outsideDiameter - NPS6.wall) / 2;
  expect(branchOf(heavy)?.end).toBe('to');
  expect(branchOf(heavy)?.modulus).toBeCloseTo(Math.PI * mean ** 2 * 0.0095, 9);
  expect(branchOf(NPS6)).toBeUndefined();
  const moment = { filled: { members: { 'straight 3': wrench([0, 0, 0], [10_000, 0, 0]) } } };
  const change = { ...bent(0, 103e6), answers: moment, layout: { tees: [placedTee(heavy)] } };
  const found = findingsOf(sustainedStress, change)[1];
  expect(found?.demand).toBeCloseTo(PRESSURE + (0.75 * 3 * 10_000) / (Math.PI * mean ** 2 * 0.0095), 0);
  expect(workedOut(found?.calculation)).toBeCloseTo(found?.demand ?? 0, 0);
});

test('a frame without pipe in any line is no place of this check', () => {
  expect(findingsOf(sustainedStress, { layout: { memberInfo: {} } })).toMatchObject([
    { verdict: 'does-not-apply' },
  ]);
});
