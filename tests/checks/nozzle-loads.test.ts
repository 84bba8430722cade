import { expect, test } from 'vitest';
import { nozzleLoadRows } from '../../src/analysis/nozzles/nozzle-load-rows.js';
import { nozzleLoads } from '../../src/checks/nozzles/nozzle-loads.js';
import { findingAt } from './findings-of.js';
import { always, installation, type SubjectChange, subject, UNUSABLE, wrench } from './fixture.js';
import { workedOut } from './worked-out.js';

/** Across 300 N, along -400 N on a nozzle that faces north, down 1200 N. */
const load = wrench([300, -400, -1200], [150, 20, -60]);

const judged = (
  nozzle: NonNullable<SubjectChange['limits']>['nozzle'],
  answers: SubjectChange['answers'] = { hot: { discharge: load } },
  pump: SubjectChange['pump'] = {},
): SubjectChange => ({ limits: { nozzle: nozzle ?? { comparisons: [] } }, answers, pump });

const maker = (discharge: object, suction: object = { resultantForce: 2000 }) =>
  judged({ basis: 'maker', comparisons: [], maker: { document: 'data sheet 12', suction, discharge } });

test("a nozzle inside the manufacturer's limits meets them, and the limits are cited by their document", () => {
  const finding = findingAt(nozzleLoads, 'discharge nozzle', maker({ verticalForce: 1500 }));
  expect(finding).toMatchObject({
    verdict: 'meets',
    demand: 1200,
    ratio: 0.8,
    condition: 'hot',
    basis: { source: 'input', clause: 'data sheet 12' },
  });
});

test('the worst component governs and is named', () => {
  const finding = findingAt(
    nozzleLoads,
    'discharge nozzle',
    maker({ verticalForce: 1500, crossMoment: 100 }),
  );
  expect(finding).toMatchObject({ verdict: 'exceeds', unit: 'N·m', demand: 150 });
  expect(finding.reason).toMatchObject({
    code: 'checks.nozzle-loads.exceeds',
    data: { component: 'moment about the cross axis', nozzle: 'discharge', condition: 'hot' },
  });
});

test('only components with a limit are judged', () => {
  expect(findingAt(nozzleLoads, 'discharge nozzle', maker({ axialForce: 4000 })).ratio).toBeCloseTo(0.1, 12);
});

test('every condition counts, the empty line and the pressure test among them', () => {
  const nozzle = { basis: 'process-pump table', comparisons: [] } as const;
  const finding = findingAt(
    nozzleLoads,
    'suction nozzle',
    judged(nozzle, { empty: { suction: wrench([0, 9000, 0]) } }),
  );
  expect(finding).toMatchObject({ verdict: 'exceeds', condition: 'empty' });
});

test('against the process-pump table the largest force is allowed along the nozzle, the least upright', () => {
  const basis = 'process-pump table' as const;
  const along = judged({ basis, comparisons: [] }, { hot: { discharge: wrench([0, 2500, 0]) } });
  const upright = judged({ basis, comparisons: [] }, { hot: { discharge: wrench([0, 0, 2500]) } });
  expect(findingAt(nozzleLoads, 'discharge nozzle', along).verdict).toBe('meets');
  expect(findingAt(nozzleLoads, 'discharge nozzle', upright).verdict).toBe('exceeds');
  const doubled = judged(
    { basis: 'process-pump table doubled', comparisons: [] },
    { hot: { discharge: wrench([0, 0, 2500]) } },
  );
  expect(findingAt(nozzleLoads, 'discharge nozzle', doubled)).toMatchObject({
    verdict: 'meets',
    basis: { source: 'api-610' },
  });
});

test('a resultant comes with its calculation', () => {
  const finding = findingAt(nozzleLoads, 'discharge nozzle', maker({ resultantForce: 1000 }));
  expect(finding.demand).toBeCloseTo(1300, 9);
  expect(workedOut(finding.calculation)).toBeCloseTo(1300, 9);
  const moments = findingAt(nozzleLoads, 'discharge nozzle', maker({ resultantMoment: 1000 }));
  expect(workedOut(moments.calculation)).toBeCloseTo(Math.hypot(150, 20, 60), 9);
});

test.each([
  ['ductile iron', 'checks.nozzle-loads.ductile-casing'],
  ['grey iron', 'checks.nozzle-loads.iron-casing'],
  ['bronze', 'checks.nozzle-loads.bronze-casing'],
  ['cast steel', 'checks.nozzle-loads.steel-casing'],
  ['unknown', 'checks.nozzle-loads.other-casing'],
])('a table named for a pump says what it means for a casing of %s', (material, code) => {
  const { casing } = installation().pump;
  const namedIn = { by: 'owner', document: 'specification 23 21 23', clause: 'para 2.4' } as const;
  const nozzle = { basis: 'process-pump table doubled', comparisons: [], namedIn } as const;
  const change = judged(nozzle, { hot: { discharge: load } }, { casing: { ...casing, material } });
  expect(findingAt(nozzleLoads, 'discharge nozzle', change)).toMatchObject({
    verdict: 'meets',
    reason: { code, data: { casing: material } },
    basis: { source: 'input', clause: 'specification 23 21 23, para 2.4: process-pump table doubled' },
  });
});

test('a table that no clause names for this pump decides nothing', () => {
  const nozzle = { unnamed: 'process-pump table', comparisons: ['process-pump table'] } as const;
  expect(findingAt(nozzleLoads, 'discharge nozzle', judged(nozzle))).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.nozzle-loads.not-named' },
  });
});

test('a table basis beside an iron casing says that the table is for steel', () => {
  const { casing } = installation().pump;
  const nozzle = { basis: 'process-pump table', comparisons: [] } as const;
  const answers = { hot: { discharge: load } };
  const iron = judged(nozzle, answers, { casing: { ...casing, material: 'cast iron' } });
  expect(findingAt(nozzleLoads, 'discharge nozzle', iron)).toMatchObject({
    verdict: 'meets',
    reason: { code: 'checks.nozzle-loads.iron-casing' },
  });
  expect(findingAt(nozzleLoads, 'discharge nozzle', judged(nozzle, answers)).reason?.code).toBe(
    'checks.nozzle-loads.steel-casing',
  );
});

test('without a basis it cannot be told, and the loads are given', () => {
  const finding = findingAt(nozzleLoads, 'discharge nozzle', judged({ comparisons: [] }));
  expect(finding).toMatchObject({ verdict: 'cannot-tell', condition: 'hot', comparison: false });
  expect(finding.demand).toBeCloseTo(1300, 9);
  expect(finding.reason).toMatchObject({
    code: 'checks.nozzle-loads.no-basis',
    data: { axialForce: -400, verticalForce: -1200, nozzle: 'discharge' },
  });
});

test("the manufacturer's basis without the manufacturer's values cannot be told", () => {
  for (const change of [maker({}), judged({ basis: 'maker', comparisons: [] })]) {
    expect(findingAt(nozzleLoads, 'discharge nozzle', change)).toMatchObject({
      verdict: 'cannot-tell',
      reason: { code: 'checks.nozzle-loads.no-maker-limits' },
    });
  }
});

test('a size that the table does not hold cannot be told', () => {
  const base = subject().layout.nozzles;
  const nozzles = { ...base, discharge: { ...base.discharge, nps: '5' } };
  const change = { ...judged({ basis: 'process-pump table', comparisons: [] }), layout: { nozzles } };
  expect(findingAt(nozzleLoads, 'discharge nozzle', change)).toMatchObject({
    verdict: 'cannot-tell',
    reason: { code: 'checks.nozzle-loads.not-in-table', data: { size: '5' } },
  });
});

test.each(UNUSABLE)('a limit that is %s cannot be told', (_word, limit) => {
  expect(findingAt(nozzleLoads, 'discharge nozzle', maker({ verticalForce: limit })).verdict).toBe(
    'cannot-tell',
  );
});

test.each([
  ['not a number', Number.NaN],
  ['infinite', Number.POSITIVE_INFINITY],
])('a load that is %s cannot be told', (_word, force) => {
  const change = {
    ...maker({ verticalForce: 1500 }),
    answers: { hot: { discharge: wrench([0, 0, force]) } },
  };
  expect(findingAt(nozzleLoads, 'discharge nozzle', change).verdict).toBe('cannot-tell');
});

test('where the nozzles are judged by their stress the loads are not judged twice', () => {
  const change = judged({ basis: 'nozzle principal stress', comparisons: [] });
  expect(findingAt(nozzleLoads, 'suction nozzle', change)).toMatchObject({
    verdict: 'does-not-apply',
    reason: { code: 'checks.nozzle-loads.judged-by-stress' },
  });
});

test('the table of loads gives every condition and nozzle, in plan axes and in those of the nozzle', () => {
  const rows = nozzleLoadRows(subject({ answers: always({ suction: load, discharge: load }) }));
  expect(rows).toHaveLength(12);
  const [suction, discharge] = rows;
  expect(suction).toMatchObject({ condition: 'empty', nozzle: 'suction', plan: load });
  // The suction faces south: what pulls the discharge to the south pushes on nothing there, it pulls as well.
  expect(suction?.own).toMatchObject({ axialForce: 400, verticalForce: -1200 });
  expect(discharge?.own).toMatchObject({ axialForce: -400, verticalForce: -1200, axialMoment: 20 });
  expect(Math.abs(discharge?.own.crossForce ?? 0)).toBe(300);
});
