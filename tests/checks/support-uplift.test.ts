import { expect, test } from 'vitest';
import { supportUplift } from '../../src/checks/supports/support-uplift.js';
import { findingAt, findingsOf } from './findings-of.js';
import { frame, hangerSupport, held, placedSupport, type SubjectChange } from './fixture.js';

const lifted = (rise: number): SubjectChange => ({
  answers: {
    hot: {
      supports: { H1: held([0, 0, 0], 'lifted') },
      movements: { H1: { translation: [0, 0, rise], rotation: [0, 0, 0] } },
    },
  },
});

test('a hanger that is pulled down in every condition meets it', () => {
  expect(findingAt(supportUplift, 'H1')).toMatchObject({ verdict: 'meets', demand: 0 });
});

test('a hanger that goes slack exceeds, by how far the pipe rose, without a limit to divide by', () => {
  const finding = findingAt(supportUplift, 'H1', lifted(0.004));
  expect(finding).toMatchObject({ verdict: 'exceeds', condition: 'hot', demand: 0.004, unit: 'm' });
  expect(finding.ratio).toBeUndefined();
  expect(finding.limit).toBeUndefined();
});

test('what the support itself moved is taken off the opening, and its free play added', () => {
  const [restraint] = hangerSupport('H1').restraints;
  if (restraint === undefined) throw new Error('no restraint');
  const supports = [{ ...hangerSupport('H1'), restraints: [{ ...restraint, imposed: 0.001, gap: 0.0005 }] }];
  const conditions = frame().conditions.map((one) => ({ ...one, imposed: { H1: [0, 0, 0.0015] as const } }));
  const change = { ...lifted(0.004), layout: { frame: frame({ supports, conditions }) } };
  expect(findingAt(supportUplift, 'H1', change).demand).toBeCloseTo(0.002, 12);
});

test('a one-way support that would have to pull the other way exceeds by that force', () => {
  const answers = { cold: { supports: { H1: held([0, 0, 350]) } } };
  expect(findingAt(supportUplift, 'H1', { answers })).toMatchObject({
    verdict: 'exceeds',
    demand: 350,
    unit: 'N',
    reason: { code: 'checks.support-uplift.pulled' },
  });
});

test('the noise of the arithmetic is no uplift', () => {
  const answers = { cold: { supports: { H1: held([0, 0, 1e-9]) } } };
  expect(findingAt(supportUplift, 'H1', { answers }).verdict).toBe('meets');
});

test.each([
  ['not a number', Number.NaN],
  ['infinite', Number.POSITIVE_INFINITY],
])('a load that is %s cannot be told', (_word, force) => {
  const answers = { cold: { supports: { H1: held([0, 0, force]) } } };
  expect(findingAt(supportUplift, 'H1', { answers }).verdict).toBe('cannot-tell');
});

test('a support that a condition leaves out is not judged in it', () => {
  const answers = { hot: { supports: { H1: held([0, 0, 0], 'absent') } } };
  expect(findingAt(supportUplift, 'H1', { answers }).verdict).toBe('meets');
});

test('a spring hanger that would have to push down exceeds though its spring holds both ways', () => {
  const [restraint] = hangerSupport('H1').restraints;
  if (restraint === undefined) throw new Error('no restraint');
  const supports = [
    {
      ...hangerSupport('H1'),
      restraints: [{ ...restraint, sense: 'both' as const, stiffness: 5e4, preload: 2000 }],
    },
  ];
  const layout = {
    frame: frame({ supports }),
    supports: [placedSupport('H1', 'suction line', 1, { kind: 'spring-hanger', oneWay: false })],
  };
  const answers = { hot: { supports: { H1: held([0, 0, 90]) } } };
  expect(findingAt(supportUplift, 'H1', { layout, answers }).verdict).toBe('exceeds');
});

test('a support missing from the answers cannot be told', () => {
  const layout = {
    frame: frame({ supports: [hangerSupport('H9')] }),
    supports: [placedSupport('H9', 'suction line', 1)],
  };
  expect(findingAt(supportUplift, 'H9', { layout }).verdict).toBe('cannot-tell');
});

test('supports that hold both ways are no place of this check', () => {
  const supports = [placedSupport('A1', 'suction line', 1, { kind: 'anchor', oneWay: false })];
  expect(findingsOf(supportUplift, { layout: { supports } })).toMatchObject([{ verdict: 'does-not-apply' }]);
});
