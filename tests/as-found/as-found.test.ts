import { describe, expect, test } from 'vitest';
import { misfitLoads } from '../../src/analysis/nozzles/misfit-loads.js';
import { nozzleAxisLoads, nozzleLoadRows } from '../../src/analysis/nozzles/nozzle-load-rows.js';
import { asDesigned, asFound } from '../../src/as-found/as-found.js';
import { movedSupports } from '../../src/as-found/found-places.js';
import { loadsWithMisfit, misfitRead } from '../../src/as-installed/judges/misfit-load.js';
import { openItems } from '../../src/as-installed/open-item.js';
import { wrenchOnBody } from '../../src/mechanics/frame/recovery/wrench-on-body.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import { type MisfitWay, wayOf } from '../../src/mechanics/what-ifs/fit-up.js';
import { openedJoint } from '../../src/mechanics/what-ifs/opened-joint.js';
import type { Vec3 } from '../../src/model/conventions.js';
import { nozzleAxes } from '../../src/model/nozzle-axes.js';
import { add, scale } from '../../src/model/vector.js';
import { buildSheet } from '../../src/sheet/build-sheet.js';
import { fieldContext } from '../../src/sheet/field-context.js';
import { loadOf } from '../../src/sheet/parts/support-expectations.js';
import { boxesOf } from '../../src/sheet/sheet.js';
import { visitOf } from '../as-installed/visit.js';
import { reviewedSample } from '../sheet/reviewed-sample.js';

const NAMES = ['pool-hot-water', 'library-chilled-water', 'dairy-condenser-water'] as const;
const pool = reviewedSample('pool-hot-water');
const library = reviewedSample('library-chilled-water');

/** What is expected in each box of the supports, written into it. */
const predictions = (name: (typeof NAMES)[number]) => {
  const boxes = boxesOf(buildSheet(reviewedSample(name))).filter(({ part }) => part.id === 'supports');
  return Object.fromEntries(
    boxes.flatMap(({ box }) => (box.expected === undefined ? [] : [[box.id, box.expected]])),
  );
};

describe.each(NAMES)('%s', (name) => {
  const review = reviewedSample(name);

  test('readings equal to the prediction, as the sheet prints it, give the designed loads back', () => {
    const readings = predictions(name);
    expect(Object.keys(readings).length).toBeGreaterThan(8);
    const visit = visitOf(review, readings);
    expect(visit.issues).toEqual([]);
    expect(visit.asFound).toMatchObject({ kind: 'as drawn', left: [] });
  });

  test('springs that carry to the newton what was predicted stay as they are', () => {
    const context = fieldContext(review);
    const springs = review.layout.supports.filter(({ part }) => part?.spring !== undefined);
    const readings = Object.fromEntries(
      springs.map(({ mark }) => [
        `supports.${mark.toLowerCase()}.load-filled`,
        `${loadOf(mark, 'filled', context)} N`,
      ]),
    );
    expect(visitOf(review, readings).asFound.kind).toBe('as drawn');
  });
});

test('a spring shows in the model what its scale showed, and all loads still sum to the weight', () => {
  const visit = visitOf(library, {
    'supports.v1.load-filled': '2100 lb',
    'supports.v2.load-filled': '3900 lb',
  });
  if (visit.asFound.kind !== 'solved') throw new Error(visit.asFound.kind);
  const filled = visit.asFound.subject.response.conditions.filled;
  const load = (mark: string) => -(filled?.supports[mark]?.load.force[2] ?? 0) / 4.4482216;
  expect(load('V1')).toBeCloseTo(2100, 3);
  expect(load('V2')).toBeCloseTo(3900, 3);
  expect(filled?.balance.residual).toBeLessThan(1e-9);
  expect(filled?.weight).toBeCloseTo(library.response.conditions.filled?.weight ?? 0, 3);
});

test('what lifts one spring is carried by what stands beside it', () => {
  const visit = visitOf(library, { 'supports.v1.load-filled': '2100 lb' });
  if (visit.asFound.kind !== 'solved') throw new Error(visit.asFound.kind);
  const before = library.response.conditions.filled?.supports;
  const after = visit.asFound.subject.response.conditions.filled?.supports;
  const sum = (of: typeof before) =>
    Object.values(of ?? {}).reduce((total, { load }) => total + load.force[2], 0);
  expect(sum(after)).toBeCloseTo(sum(before), 3);
  expect(after?.V1?.load.force[2]).not.toBeCloseTo(before?.V1?.load.force[2] ?? 0, 0);
});

describe('places along the pipe', () => {
  const inch = 0.0254;
  const found = (entries: readonly (readonly [string, number])[]) =>
    movedSupports(pool.installation, new Map(entries), inch / 32);
  const straights = (walk: readonly { readonly kind: string; readonly length?: unknown }[]) =>
    walk.filter(({ kind }) => kind === 'straight').map(({ length }) => Number(length) / inch);

  test('the pipe on either side grows and shrinks by as much', () => {
    const { installation, moved, impossible } = found([['H1', 9 * inch]]);
    const before = straights(pool.installation.lines[0]?.walk ?? []);
    const after = straights(installation.lines[0]?.walk ?? []);
    const differences = after.map((length, index) => Math.round((length - (before[index] ?? 0)) * 1e6) / 1e6);
    expect(differences.filter((difference) => difference !== 0)).toEqual([6, -6]);
    expect(moved).toEqual([{ mark: 'H1', drawn: expect.closeTo(3 * inch, 9), found: 9 * inch }]);
    expect(impossible).toEqual([]);
  });

  test('H2 is told from H1: both six inches further, and H2 stands where it was drawn when told six inches nearer', () => {
    expect(
      found([
        ['H1', 9 * inch],
        ['H2', 168 * inch],
      ]).moved.map(({ mark }) => mark),
    ).toEqual(['H1', 'H2']);
    expect(
      found([
        ['H1', 9 * inch],
        ['H2', 162 * inch],
      ]).moved.map(({ mark }) => mark),
    ).toEqual(['H1']);
  });

  test('a support beyond its run is left as drawn, and named', () => {
    const beyond = found([['H2', 400 * inch]]);
    expect(beyond.impossible).toEqual(['H2']);
    expect(beyond.installation).toBe(pool.installation);
    const visit = visitOf(pool, { 'supports.h2.position': '40 ft' });
    expect(visit.asFound).toMatchObject({ kind: 'as drawn', left: [{ mark: 'H2' }] });
  });

  test('a hanger moved away from the elbow carries more, its neighbour less', () => {
    const visit = visitOf(pool, { 'supports.h1.position': '9' });
    if (visit.asFound.kind !== 'solved') throw new Error(visit.asFound.kind);
    const load = (conditions: typeof pool.response.conditions, mark: string) =>
      -(conditions.filled?.supports[mark]?.load.force[2] ?? 0);
    const { conditions } = visit.asFound.subject.response;
    expect(load(conditions, 'H1')).toBeGreaterThan(load(pool.response.conditions, 'H1'));
    expect(load(conditions, 'H2')).toBeLessThan(load(pool.response.conditions, 'H2'));
    expect(Object.keys(conditions).sort()).toEqual(
      ['empty', 'filled', 'test', 'hot', 'cold', 'running'].sort(),
    );
  });
});

test('a height moves the pipe there, and is solved without it as well', () => {
  const visit = visitOf(pool, { 'supports.h1.height': '9\'-10 3/4"' });
  if (visit.asFound.kind !== 'solved') throw new Error(visit.asFound.kind);
  const [put] = visit.asFound.put;
  const rise = (put?.found ?? 0) - (put?.drawn ?? 0);
  const z = (of: typeof pool.response) => of.conditions.filled?.movements.H1?.translation[2] ?? 0;
  const { subject, levelled } = visit.asFound;
  // The rod lengthens by what more it carries: hundredths of a millimetre.
  expect(z(subject.response) - z(pool.response)).toBeCloseTo(rise, 4);
  expect(levelled && z(levelled.response)).toBeCloseTo(z(pool.response), 9);
});

test('stops that are in hold the spring rigid; a gap takes the load away', () => {
  const stopped = visitOf(library, { 'supports.v1.stops-out': 'no' }).asFound;
  if (stopped.kind !== 'solved') throw new Error(stopped.kind);
  expect(stopped.subject.response.conditions.filled?.supports.V1?.states).toContain('stopped');
  const open = visitOf(library, { 'supports.s1.gap': '0.02' }).asFound;
  if (open.kind !== 'solved') throw new Error(open.kind);
  expect(open.subject.response.conditions.filled?.supports.S1?.load.force[2]).toBeCloseTo(0, 6);
});

test('a longer rod swings with its length and lengthens in proportion', () => {
  const visit = visitOf(pool, { 'supports.h1.rod-length': '60' });
  if (visit.asFound.kind !== 'solved') throw new Error(visit.asFound.kind);
  const upright = (of: typeof pool.layout) =>
    of.frame.supports.find(({ name }) => name === 'H1')?.restraints[0];
  const [before, after] = [upright(pool.layout), upright(visit.asFound.subject.layout)];
  expect(after?.swingLength).toBeCloseTo(1.524, 9);
  expect(after?.stiffness).toBeCloseTo((before?.stiffness ?? 0) / 2, 3);
});

test('as designed, every spring has the load of the file in service', () => {
  const designed = asDesigned(library);
  const load = (mark: string) => -(designed?.running?.supports[mark]?.load.force[2] ?? 0) / 4.4482216;
  expect(load('V1')).toBeCloseTo(1700, 1);
  expect(load('V2')).toBeCloseTo(4200, 1);
  expect(asDesigned(pool)).toBeUndefined();
});

test('misfit pulled shut: way by way equals all at once in one frame with a joint that misses by as much', () => {
  const visit = visitOf(pool, {
    'before-bolt-up.suction.gap-up': '0.142',
    'before-bolt-up.suction.gap-across': '0.133',
    'before-bolt-up.suction.gap-down': '0.124',
    'before-bolt-up.suction.gap-back': '0.131',
    'before-bolt-up.suction.gasket': '0.125',
    'before-bolt-up.suction.rise': '-0.02',
    'before-bolt-up.suction.offset': '0.015',
  });
  const loads = misfitLoads(pool).find(({ nozzle }) => nozzle.which === 'suction');
  const total = loads && loadsWithMisfit(loads, visit);
  const misfit = misfitRead('suction', visit);
  if (loads === undefined || total === undefined || misfit === undefined) throw new Error('nothing read');
  const { frame, nozzles } = pool.layout;
  const filled = frame.conditions.find(({ name }) => name === 'filled');
  const opened = openedJoint(frame, {
    body: 'pump',
    point: nozzles.suction.point,
    axis: nozzles.suction.axis,
  });
  if (filled === undefined || opened === undefined) throw new Error('no joint');
  const axes = nozzleAxes(nozzles.suction.axis);
  const along = (ways: readonly MisfitWay[]): Vec3 => {
    const parts = ways.map((way) => scale(wayOf(way, axes).direction, -(misfit.get(way) ?? 0)));
    return parts.reduce((sum, part) => add(sum, part), [0, 0, 0] as Vec3);
  };
  const condition = {
    ...filled,
    misfit: {
      [opened.joint.name]: {
        translation: along(['gap', 'rise', 'offset']),
        rotation: along(['twist', 'tilt-sideways', 'tilt-upright']),
      },
    },
  };
  const closed = { ...opened.frame, joints: [...opened.frame.joints, opened.joint], conditions: [condition] };
  const solved = solveFrame(closed).conditions.filled;
  if (solved === undefined) throw new Error('not solved');
  const atOnce = nozzleAxisLoads(
    wrenchOnBody(closed, condition, solved, 'pump', nozzles.suction.point),
    nozzles.suction,
  );
  for (const key of [
    'axialForce',
    'verticalForce',
    'crossForce',
    'axialMoment',
    'verticalMoment',
    'crossMoment',
  ] as const) {
    // Rods swing with the load they carry, so that the sum differs in the thousandths of a newton.
    expect(total[key]).toBeCloseTo(atOnce[key], 2);
  }
  expect(Math.abs(total.resultantForce - loads.filled.resultantForce)).toBeGreaterThan(10);
  const none =
    loads &&
    loadsWithMisfit(
      loads,
      visitOf(pool, {
        'before-bolt-up.suction.gap-up': '1/8',
        'before-bolt-up.suction.gap-across': '1/8',
        'before-bolt-up.suction.gap-down': '1/8',
        'before-bolt-up.suction.gap-back': '1/8',
        'before-bolt-up.suction.gasket': '1/8',
        'before-bolt-up.suction.rise': '0',
        'before-bolt-up.suction.offset': '0',
      }),
    );
  if (none === undefined) throw new Error('nothing read');
  expect(Object.keys(none)).toEqual(Object.keys(loads.filled));
  // The same but for the last binary digit of the resultant, which is formed anew from its parts.
  for (const [key, value] of Object.entries(loads.filled)) {
    expect(none[key as keyof typeof none], key).toBeCloseTo(value, 9);
  }
});

test('the line as found is a frame like any other: solved by itself it gives the same', () => {
  const { asFound: found } = visitOf(pool, { 'supports.h1.position': '9' });
  if (found.kind !== 'solved') throw new Error(found.kind);
  const again = solveFrame(found.subject.layout.frame);
  expect(nozzleLoadRows({ ...found.subject, response: again })).toEqual(nozzleLoadRows(found.subject));
  expect(asFound(fieldContext(pool), new Map())).toEqual({ kind: 'as drawn', left: [], compared: [] });
});

test('what exceeds only with the heights forced on the pipe cannot be told, holds, and says what to find out', () => {
  const visit = visitOf(pool, { 'supports.h1.height': '10\'-0"' });
  const forced = visit.findings.filter(({ reason }) => reason?.code === 'fieldwork.as-found.only-if-forced');
  expect(forced.length).toBeGreaterThan(0);
  expect(forced.every(({ verdict }) => verdict === 'cannot-tell')).toBe(true);
  expect(visit.findings.some(({ verdict, comparison }) => verdict === 'exceeds' && !comparison)).toBe(false);
  expect(visit.decision).toBe('hold');
  expect(openItems(visit).find(({ kind }) => kind === 'as found')?.fix).toMatch(/slacken the nut/);
});
