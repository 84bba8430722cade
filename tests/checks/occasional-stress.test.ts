import { describe, expect, test } from 'vitest';
import { occasionalConditions, occasionalStresses } from '../../src/analysis/pipes/occasional-stresses.js';
import { occasionalStress } from '../../src/checks/pipes/occasional-stress.js';
import { roleOfId } from '../../src/model/conditions/condition-roles.js';
import type { FrameCondition } from '../../src/model/frame/frame.js';
import { findingsOf } from './findings-of.js';
import { frame, layout, NPS6, type SubjectChange, sourced, subject, UNUSABLE, wrench } from './fixture.js';
import { workedOut } from './worked-out.js';

// NPS 6 STD: Z = 1.392e-4 m³, P d²/(D² - d²) = 8 bar × 5.172 = 4.138 MPa, P D/4t = 4.732 MPa.
const PRESSURE = (8e5 * 0.154051 ** 2) / (0.168275 ** 2 - 0.154051 ** 2);
const Z = (Math.PI * (0.168275 ** 4 - 0.154051 ** 4)) / (32 * 0.168275);
const AREA = (Math.PI * (0.168275 ** 2 - 0.154051 ** 2)) / 4;

const condition = (name: string): FrameCondition => {
  const filled = frame().conditions.find((one) => one.name === 'filled');
  if (filled === undefined) throw new Error('no filled condition');
  return { ...filled, name, role: roleOfId(name) };
};
const withConditions = (...names: readonly string[]) =>
  layout({ frame: frame({ conditions: [...frame().conditions, ...names.map(condition)] }) });
/** Weight bends straight 1 about east; the sideways load bends it about up. */
const bent = (weight: number, sideways: number, change: SubjectChange = {}): SubjectChange => ({
  layout: withConditions('lateral-north'),
  limits: {
    stress: { code: 'B31.9', cycles: sourced(7000), hot: sourced(103e6), occasionalFactor: sourced(1.33) },
  },
  answers: {
    filled: { members: { 'straight 1': wrench([0, 0, 0], [weight, 0, 0]) } },
    'lateral-north': { members: { 'straight 1': wrench([0, 0, 0], [weight, 0, sideways]) } },
  },
  ...change,
});
const onSuction = (change: SubjectChange) => {
  const [first] = findingsOf(occasionalStress, change);
  if (first === undefined) throw new Error('no finding');
  return first;
};

test('lasting and occasional moments are each taken whole and added, against 1.33 times the allowable', () => {
  const finding = onSuction(bent(10_000, 5_000));
  expect(finding).toMatchObject({
    verdict: 'meets',
    at: 'straight 1, suction line',
    condition: 'lateral-north',
  });
  expect(finding.demand).toBeCloseTo(PRESSURE + 15_000 / Z, 0);
  expect(finding.limit).toBeCloseTo(1.33 * 103e6, 0);
  expect(workedOut(finding.calculation)).toBeCloseTo(finding.demand ?? 0, 0);
});

test('together above the limit they exceed it, and the part is named', () => {
  expect(onSuction(bent(10_000, 10_000))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.occasional-stress.exceeds', data: { part: 'straight 1' } },
  });
});

test('without an allowable, or without the factor, it cannot be told', () => {
  const stress = { code: 'B31.9', cycles: sourced(7000) } as const;
  expect(onSuction(bent(1, 1, { limits: { stress } }))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.stress.no-allowable' },
  });
  expect(onSuction(bent(1, 1, { limits: { stress: { ...stress, hot: sourced(103e6) } } }))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.occasional-stress.no-factor' },
  });
});

test.each(UNUSABLE)('a factor that is %s cannot be told', (_word, factor) => {
  const stress = {
    code: 'B31.9',
    cycles: sourced(7000),
    hot: sourced(103e6),
    occasionalFactor: sourced(factor),
  } as const;
  expect(onSuction(bent(1, 1, { limits: { stress } })).verdict).toBe('cannot-tell');
});

test('without a sideways coefficient and without a start it does not apply', () => {
  expect(findingsOf(occasionalStress)).toMatchObject([
    { verdict: 'does-not-apply', reason: { code: 'checks.occasional-stress.no-place' } },
  ]);
});

test('the worst of several directions governs, and each has its own row for the report', () => {
  const change = bent(1_000, 2_000, { layout: withConditions('lateral-north', 'lateral-east') });
  const east = { members: { 'straight 1': wrench([0, 0, 0], [1_000, 0, 4_000]) } };
  const both = { ...change, answers: { ...change.answers, 'lateral-east': east } };
  expect(onSuction(both).condition).toBe('lateral-east');
  const rows = occasionalStresses(subject(both)).filter(({ part }) => part === 'straight 1');
  expect(rows.map((row) => [row.condition, row.without, Math.round(row.moment)])).toEqual([
    ['lateral-north', 'filled', 2000],
    ['lateral-east', 'filled', 4000],
  ]);
});

test('a start is what it adds to running, on top of weight alone: expansion is no part of it', () => {
  const answers = {
    filled: { members: { 'straight 1': wrench([0, 0, 0], [1_000, 0, 0]) } },
    running: { members: { 'straight 1': wrench([0, 0, 0], [50_000, 0, 0]) } },
    starting: { members: { 'straight 1': wrench([0, 0, 0], [50_000, 0, 3_000]) } },
  };
  const finding = onSuction(bent(0, 0, { layout: withConditions('starting'), answers }));
  expect(finding).toMatchObject({ condition: 'starting', verdict: 'meets' });
  expect(finding.demand).toBeCloseTo(PRESSURE + 4_000 / Z, 0);
});

test('what-if conditions and normal service are no occasional loads', () => {
  const change = bent(0, 0, { layout: withConditions('motor-off', 'slack-H1', 'starting-opposite') });
  expect(occasionalConditions(subject(change)).map(({ name }) => name)).toEqual(['starting-opposite']);
});

describe('the equation follows the code', () => {
  const pulled = (code: 'B31.9' | 'B31.1'): SubjectChange => ({
    ...bent(10_000, 0),
    limits: {
      stress: { code, cycles: sourced(7000), hot: sourced(103e6), occasionalFactor: sourced(1.15) },
    },
    answers: {
      filled: { members: { 'straight 1': wrench([0, 0, 0], [10_000, 0, 0]) } },
      'lateral-north': { members: { 'straight 1': wrench([0, 30_000, 0], [10_000, 0, 0]) } },
    },
  });

  test('B31.9 counts the axial force', () => {
    const finding = onSuction(pulled('B31.9'));
    expect(finding.basis.source).toBe('asme-b31.9');
    expect(finding.demand).toBeCloseTo(PRESSURE + 10_000 / Z + 30_000 / AREA, 0);
    expect(workedOut(finding.calculation)).toBeCloseTo(finding.demand ?? 0, 0);
  });

  test('B31.1 does not, and takes the thin-wall pressure term', () => {
    const finding = onSuction(pulled('B31.1'));
    expect(finding.basis.source).toBe('asme-b31.1');
    expect(finding.demand).toBeCloseTo((8e5 * 0.168275) / (4 * 0.007112) + 10_000 / Z, 0);
    expect(workedOut(finding.calculation)).toBeCloseTo(finding.demand ?? 0, 0);
  });
});

test('an elbow carries three quarters of its intensification factor on both moments', () => {
  const change = bent(0, 0);
  const answers = {
    filled: { members: { 'elbow 1': wrench([0, 0, 0], [4_000, 0, 0]) } },
    'lateral-north': { members: { 'elbow 1': wrench([0, 0, 0], [7_000, 0, 0]) } },
  };
  const discharge = findingsOf(occasionalStress, { ...change, answers })[1];
  expect(discharge?.at).toBe('elbow 1, discharge line');
  expect(discharge?.demand).toBeCloseTo(PRESSURE + (0.75 * 2.266 * 7_000) / Z, 0);
});

test('a sideways load spread along the pipe is largest inside the span, and is found there', () => {
  const load = 400;
  const members = frame().members.map((member) => ({
    ...member,
    mass: { metal: member.name === 'straight 1' ? load / 9.80665 : 0, covering: 0 },
  }));
  const sideways: FrameCondition = { ...condition('lateral-east'), gravity: [9.80665, 0, -9.80665] };
  const heavy = layout({ frame: frame({ members, conditions: [...frame().conditions, sideways] }) });
  const base = subject(bent(0, 0, { layout: heavy }));
  const { filled, 'lateral-east': east } = base.response.conditions;
  if (filled === undefined || east === undefined) throw new Error('not solved');
  // One metre on two knife edges, upright and sideways alike: w L² / 8 of each in the middle.
  const upright = { from: wrench([0, 0, load / 2]), to: wrench([0, 0, load / 2]) };
  const both = { from: wrench([-load / 2, 0, load / 2]), to: wrench([-load / 2, 0, load / 2]) };
  const conditions = {
    filled: { ...filled, members: { ...filled.members, 'straight 1': upright } },
    'lateral-east': { ...east, members: { ...east.members, 'straight 1': both } },
  };
  const rows = occasionalStresses({ ...base, response: { ...base.response, conditions } });
  const row = rows.find(({ part }) => part === 'straight 1');
  expect(row?.share).toBeCloseTo(0.5, 6);
  expect(row?.state.moment).toBeCloseTo(load / 8, 6);
  expect(row?.moment).toBeCloseTo(load / 8, 6);
  expect(row?.state.tube).toEqual(NPS6);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])('a moment of %s cannot be told', (moment) => {
  expect(onSuction(bent(1, moment)).verdict).toBe('cannot-tell');
});
