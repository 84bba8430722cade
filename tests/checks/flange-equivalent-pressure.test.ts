import { expect, test } from 'vitest';
import { flangeEquivalentPressure } from '../../src/checks/flanges/flange-equivalent-pressure.js';
import type { Wrench } from '../../src/model/conventions.js';
import type { FlangeSide } from '../../src/model/layout/layout.js';
import { findingsOf } from './findings-of.js';
import {
  dimensions,
  flangeJoint,
  frame,
  NPS6,
  type SubjectChange,
  side,
  sourced,
  UNUSABLE,
  unknownSide,
  wrench,
} from './fixture.js';
import { workedOut } from './worked-out.js';

const G = 0.2;
const gasketed = (owner: string, gasketDiameter = G, change: Partial<FlangeSide> = {}): FlangeSide =>
  side(owner, { dimensions: dimensions({ gasketDiameter: sourced(gasketDiameter) }), ...change });

const loaded = (
  load: Wrench,
  sides?: readonly [FlangeSide, FlangeSide],
  more: SubjectChange = {},
): SubjectChange => {
  const [near, far] = sides ?? [gasketed('pump discharge'), gasketed('flange 1')];
  return {
    ...more,
    layout: { flangeJoints: [flangeJoint(near, far)], ...more.layout },
    answers: { hot: { discharge: load } },
  };
};
const only = (change: SubjectChange) => {
  const [finding, ...more] = findingsOf(flangeEquivalentPressure, change);
  if (finding === undefined || more.length > 0) throw new Error('one joint, one finding');
  return finding;
};

/** Rating at 360 K [Pa]. */
const HOT_RATING = 1.97e6 - (0.18e6 * 49) / 55;

test('pressure, moment and pull together below the rating meet it', () => {
  // The nozzle faces north: a load to the north pulls. Bending 500 N·m, torsion of 900 counts for nothing.
  const finding = only(loaded(wrench([0, 3000, -800], [400, 900, 300])));
  const equivalent = (16 * 500) / (Math.PI * G ** 3) + (4 * 3000) / (Math.PI * G ** 2);
  expect(finding).toMatchObject({ verdict: 'meets', condition: 'hot', unit: 'Pa' });
  expect(finding.demand).toBeCloseTo(8e5 + equivalent, 3);
  expect(finding.limit).toBeCloseTo(HOT_RATING, 3);
  expect(workedOut(finding.calculation)).toBeCloseTo(finding.demand ?? 0, 3);
});

test('a large moment exceeds the rating', () => {
  expect(only(loaded(wrench([0, 0, 0], [2000, 0, 0])))).toMatchObject({
    verdict: 'exceeds',
    reason: { code: 'checks.flange-equivalent-pressure.exceeds' },
  });
});

test('a push is not counted against the pressure', () => {
  expect(only(loaded(wrench([0, -3000, 0]))).demand).toBeCloseTo(8e5, 6);
});

test('the pressure test is judged with its own pressure against one and a half times the rating', () => {
  const service = { testPressure: sourced(2.9e6) };
  const finding = only(loaded(wrench([0, 0, 0]), undefined, { service }));
  expect(finding).toMatchObject({ condition: 'test', verdict: 'meets' });
  expect(finding.limit).toBeCloseTo(1.5 * 1.97e6, 3);
});

test('without a gasket the outside of the pipe is taken, which gives more, and that is said', () => {
  const load = wrench([0, 3000, 0], [500, 0, 0]);
  const finding = only(loaded(load, [side('pump discharge'), side('flange 1')]));
  const D = NPS6.outsideDiameter;
  expect(finding.demand).toBeCloseTo(
    8e5 + (16 * 500) / (Math.PI * D ** 3) + (4 * 3000) / (Math.PI * D ** 2),
    3,
  );
  expect(finding.reason?.code).toBe('checks.flange.gasket-safe');
  expect(finding.demand).toBeGreaterThan(only(loaded(load)).demand ?? 0);
});

test('without a gasket the joint exceeds only where it does with the reaction at the bolts as well', () => {
  const sides = [side('pump discharge'), side('flange 1')] as const;
  const bent = (moment: number) => only(loaded(wrench([0, 0, 0], [moment, 0, 0]), sides));
  // 1.01 MPa is left over: 945 N·m at the outside of the pipe, 2786 N·m at the bolt circle.
  expect(bent(900).verdict).toBe('meets');
  expect(bent(2000)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.flange-equivalent-pressure.gasket-decides' },
  });
  expect(bent(2900).verdict).toBe('exceeds');
});

test('of two gaskets given the smaller counts', () => {
  const load = wrench([0, 0, 0], [500, 0, 0]);
  const finding = only(loaded(load, [gasketed('pump discharge', 0.25), gasketed('flange 1', 0.2)]));
  expect(finding.demand).toBeCloseTo(8e5 + (16 * 500) / (Math.PI * 0.2 ** 3), 3);
});

test('where neither gasket nor pipe is known it cannot be told', () => {
  const joint = { ...flangeJoint(side('valve 1'), side('valve 2')), point: 'H2', body: 'valve 1' };
  const bodies = [...frame().bodies, { name: 'valve 1', points: ['H2'], masses: [] }];
  const change = { layout: { flangeJoints: [joint], frame: frame({ bodies }) } };
  expect(only(change)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.flange-equivalent-pressure.no-gasket' },
  });
});

test('where no rigid part meets the joint it cannot be told', () => {
  const joint = { ...flangeJoint(gasketed('hose 1'), gasketed('hose 2')), body: 'hose 1' };
  expect(only({ layout: { flangeJoints: [joint] } })).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.flange-equivalent-pressure.no-load' },
  });
});

test('read from the far side of the joint the pull is the same', () => {
  const joint = {
    ...flangeJoint(gasketed('hose 1'), gasketed('pump')),
    body: 'hose 1',
    axis: [0, -1, 0] as const,
  };
  const change: SubjectChange = {
    layout: { flangeJoints: [joint] },
    answers: { hot: { discharge: wrench([0, 3000, 0]) } },
  };
  expect(only(change).demand).toBeCloseTo(8e5 + (4 * 3000) / (Math.PI * G ** 2), 3);
});

test.each(UNUSABLE)('a rating that is %s cannot be told', (_word, rating) => {
  const broken = side('flange 1', {
    dimensions: dimensions({
      gasketDiameter: sourced(G),
      rating: [
        [311, rating],
        [400, rating],
      ],
    }),
  });
  expect(only(loaded(wrench([0, 0, 0]), [gasketed('pump discharge'), broken])).verdict).toBe('cannot-tell');
});

test.each([Number.NaN, Number.POSITIVE_INFINITY])('a moment of %s cannot be told', (moment) => {
  expect(only(loaded(wrench([0, 0, 0], [moment, 0, 0]))).verdict).toBe('cannot-tell');
});

test('a gasket without diameter cannot be told', () => {
  const change = loaded(wrench([0, 0, 0], [500, 0, 0]), [
    gasketed('pump discharge', 0),
    gasketed('flange 1', 0),
  ]);
  expect(only(change).verdict).toBe('cannot-tell');
});

test('beside a valve that is not described the other flange is judged', () => {
  expect(only(loaded(wrench([0, 0, 0]), [gasketed('flange 1'), unknownSide('gate valve 1')]))).toMatchObject({
    verdict: 'meets',
    reason: { code: 'checks.flange.one-side' },
  });
});

test('without flange joints it does not apply', () => {
  expect(findingsOf(flangeEquivalentPressure)).toMatchObject([{ verdict: 'does-not-apply' }]);
});
