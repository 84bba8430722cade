import { expect, test } from 'vitest';
import { pipesInLines } from '../../src/analysis/pipes/pipes-in-lines.js';
import { hoopStress } from '../../src/checks/pipes/hoop-stress.js';
import type { PipeSection } from '../../src/input/installation.js';
import { findingsOf } from './findings-of.js';
import { layout, NPS6, type SubjectChange, sourced, subject, UNUSABLE } from './fixture.js';
import { workedOut } from './worked-out.js';

const allowed = (hot: number | undefined, joint: number | undefined): SubjectChange => ({
  limits: {
    stress: {
      code: 'B31.9',
      cycles: sourced(7000),
      ...(hot !== undefined && { hot: sourced(hot) }),
      ...(joint !== undefined && { jointFactor: sourced(joint) }),
    },
  },
});
const onSuction = (change: SubjectChange) => {
  const [first] = findingsOf(hoopStress, change);
  if (first === undefined) throw new Error('no finding');
  return first;
};
// 0.8 MPa × 168.275 mm / (2 × 7.112 mm).
const STRESS = (8e5 * 0.168275) / (2 * 0.007112);

test('the design pressure meets the allowable times the factor of the weld, one finding per line', () => {
  const finding = onSuction(allowed(103e6, 0.85));
  expect(finding).toMatchObject({ verdict: 'meets', at: 'NPS 6 STD, suction line', unit: 'Pa' });
  expect(finding.demand).toBeCloseTo(STRESS, 3);
  expect(finding.limit).toBeCloseTo(0.85 * 103e6, 3);
  expect(workedOut(finding.calculation)).toBeCloseTo(STRESS, 3);
  expect(findingsOf(hoopStress, allowed(103e6, 0.85))).toHaveLength(2);
});

test('a pressure that the weld does not hold exceeds, though seamless pipe would meet', () => {
  const pressure = { designPressure: sourced((2 * 0.007112 * 95e6) / 0.168275) };
  const of = (joint: number) => onSuction({ ...allowed(103e6, joint), service: pressure });
  expect(of(0.85)).toMatchObject({ verdict: 'exceeds', reason: { code: 'checks.hoop-stress.exceeds' } });
  expect(of(1).verdict).toBe('meets');
});

test('without an allowable or without the factor of the weld it cannot be told', () => {
  expect(onSuction(allowed(undefined, 1))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.stress.no-allowable' },
  });
  expect(onSuction(allowed(103e6, undefined))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.hoop-stress.no-joint-factor' },
  });
});

test.each(UNUSABLE)('an allowable that is %s cannot be told', (_word, hot) => {
  expect(onSuction(allowed(hot, 1)).verdict).toBe('cannot-tell');
});

const withPipe = (section: PipeSection): SubjectChange => {
  const info = layout().memberInfo;
  const members = layout().frame.members.map((member) => ({ ...member, tube: section }));
  return {
    ...allowed(103e6, 1),
    layout: {
      frame: { ...layout().frame, members },
      memberInfo: Object.fromEntries(
        Object.entries(info).map(([name, each]) => [name, { ...each, section }]),
      ),
    },
  };
};

test('a wall of more than a sixth of the diameter is no thin wall and cannot be told', () => {
  expect(onSuction(withPipe({ ...NPS6, wall: NPS6.outsideDiameter / 5.9 }))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.hoop-stress.thick-wall' },
  });
  expect(onSuction(withPipe({ ...NPS6, wall: NPS6.outsideDiameter / 6 })).verdict).toBe('meets');
});

test('every pipe of a line is looked at once, the steps of a reducer are not', () => {
  const base = subject();
  const small = { ...NPS6, name: 'NPS 4 STD', outsideDiameter: 0.1143, wall: 0.00602 };
  const step = { ...NPS6, outsideDiameter: 0.14, wall: 0.0065 };
  const reducer = {
    kind: 'reducer',
    name: 'reducer 1',
    path: 'reducer 1',
    section: NPS6,
    to: small,
    length: sourced(0.14),
    mass: sourced(5),
    shape: 'concentric',
  } as const;
  const { memberInfo } = base.layout;
  const info = (part: string, section: PipeSection) => ({ line: 'discharge line', part, section });
  const changed = {
    ...base,
    installation: {
      ...base.installation,
      lines: [{ name: 'discharge line', from: 'discharge', section: NPS6, walk: [reducer] } as const],
    },
    layout: {
      ...base.layout,
      memberInfo: {
        ...memberInfo,
        'elbow 1': info('reducer 1', step),
        'straight 3': info('straight 3', small),
      },
    },
  };
  expect(pipesInLines(changed).map(({ line, section }) => `${section.name}, ${line}`)).toEqual([
    'NPS 6 STD, suction line',
    'NPS 6 STD, discharge line',
    'NPS 4 STD, discharge line',
  ]);
});

test('without pipe there is no place of this check', () => {
  expect(findingsOf(hoopStress, { layout: { memberInfo: {} } })).toMatchObject([
    { verdict: 'does-not-apply' },
  ]);
});
