import { describe, expect, test } from 'vitest';
import { judges } from '../../src/as-installed/judges/all-judges.js';
import type { Review } from '../../src/index.js';
import type { Coded } from '../../src/issues/issue.js';
import { sentenceOf } from '../../src/issues/print.js';
import { sentences } from '../../src/issues/sentences/index.js';
import { buildSheet } from '../../src/sheet/build-sheet.js';
import { boxesOf } from '../../src/sheet/sheet.js';
import { filesBelow } from '../architecture/source-tree.js';
import { changedSample, reviewedSample } from '../sheet/reviewed-sample.js';
import { judgedBy, visitOf } from './visit.js';

const pool = reviewedSample('pool-hot-water');
const library = reviewedSample('library-chilled-water');
const dairy = reviewedSample('dairy-condenser-water');
const bolted = changedSample('dairy-condenser-water', (file) => {
  file.pump.mount = 'bolted';
});
const guided = changedSample('pool-hot-water', (file) => {
  const { walk } = file.piping.lines[0];
  walk.splice(
    walk.length - 1,
    0,
    { guide: { mark: 'G1' } },
    { straight: '1 ft' },
    { anchor: { mark: 'A1' } },
  );
});
const strained = changedSample('pool-hot-water', (file) => {
  const { walk } = file.piping.lines[0];
  walk.splice(
    7,
    0,
    { straight: '6 in' },
    { valve: { kind: 'y strainer', ends: 'welded', length: '12 in', weight: '90 lb', contents: '1 gal' } },
  );
});

/** The pool's pump with a drive, and a margin that locks out a band. */
const banded = changedSample('pool-hot-water', (file) => {
  file.pump.motor.start = { 'variable-speed drive': { 'torque-limit': '110 %', ramp: '20 s' } };
  file.pump.motor.speeds = { lowest: '400 rpm', highest: '1770 rpm' };
  file.limits['frequency-margin'] = { share: '5 %', source: 'trial' };
});

interface Case {
  readonly judge: string;
  readonly at?: string;
  readonly review: Review;
  readonly meets: Readonly<Record<string, string>>;
  readonly exceeds: Readonly<Record<string, string>>;
  /** What is filled in where it cannot be told; nothing at all, if nothing is said. */
  readonly untold?: Readonly<Record<string, string>>;
}

const flange = (which: string) => `before-bolt-up.${which}`;
const gaps = (up: string, across: string, down: string, back: string) => ({
  [`${flange('suction')}.gap-up`]: up,
  [`${flange('suction')}.gap-across`]: across,
  [`${flange('suction')}.gap-down`]: down,
  [`${flange('suction')}.gap-back`]: back,
});
const even = gaps('0.125', '0.125', '0.125', '0.125');
const square = {
  ...even,
  [`${flange('suction')}.gasket`]: '1/8',
  [`${flange('suction')}.rise`]: '0',
  [`${flange('suction')}.offset`]: '0',
};
const volts = (ab: string, bc: string, ca: string) => ({
  'electrical.volts-ab': ab,
  'electrical.volts-bc': bc,
  'electrical.volts-ca': ca,
});
const amps = (a: string, b: string, c: string) => ({
  'electrical.amps-a': a,
  'electrical.amps-b': b,
  'electrical.amps-c': c,
});
const atRest = (ab: string, bc: string, ca: string) => ({
  'before-start.volts-ab': ab,
  'before-start.volts-bc': bc,
  'before-start.volts-ca': ca,
});
/** All heights an inch above the prediction: a floor topping, or the whole line. */
const raised = {
  'supports.h1.height': '9\'-11 1/2"',
  'supports.h2.height': '9\'-11 1/2"',
  'supports.h3.height': '10\'-1 1/2"',
};
const couplingGaps = (last: string) => ({
  'coupling.gap-one-top': '0.062',
  'coupling.gap-one-bottom': '0.062',
  'coupling.gap-other-top': '0.062',
  'coupling.gap-other-bottom': last,
});
const gauges = (discharge: string) => ({
  'hydraulic.at-rest-suction': '54',
  'hydraulic.at-rest-discharge': '54',
  'hydraulic.running-suction': '50',
  'hydraulic.running-discharge': discharge,
  'hydraulic.flow': '640',
  'hydraulic.head-limit': '5',
  'hydraulic.head-limit-from': 'specification 3.2',
});
const top = (worst: string) => ({
  'vibration.motor-top-along': '0.05',
  'vibration.motor-top-across': worst,
  'vibration.motor-top-axial': '0.02',
  'vibration.limit': '0.15',
  'vibration.limit-from': 'specification 3.6',
});
const due = (day: string) => ({
  'identity.date': '2026-11-05',
  'identity.dial': 'D-2',
  'identity.dial-due': day,
});

const cases: readonly Case[] = [
  {
    judge: 'instrument-due',
    review: pool,
    meets: due('2026-11-05'),
    exceeds: due('2026-11-04'),
    // Instruments are judged where they were used: without the day of the visit it cannot be told.
    untold: { 'identity.dial-due': '2026-11-05' },
  },
  {
    judge: 'plate',
    at: 'motor power',
    review: pool,
    meets: { 'identity.motor-power': '20 hp' },
    exceeds: { 'identity.motor-power': '25 hp' },
  },
  {
    judge: 'flange-parallelism',
    at: 'suction',
    review: pool,
    meets: gaps('0.131', '0.125', '0.120', '0.125'),
    exceeds: gaps('0.131', '0.125', '0.119', '0.125'),
  },
  {
    judge: 'flange-gap',
    at: 'suction',
    review: pool,
    meets: { ...gaps('0.18', '0.18', '0.18', '0.18'), [`${flange('suction')}.gasket`]: '1/8' },
    exceeds: { ...gaps('0.06', '0.06', '0.06', '0.06'), [`${flange('suction')}.gasket`]: '1/8' },
  },
  {
    judge: 'flange-offset',
    at: 'suction',
    review: pool,
    meets: { [`${flange('suction')}.rise`]: '-1/16', [`${flange('suction')}.offset`]: '0' },
    exceeds: { [`${flange('suction')}.rise`]: '0.05', [`${flange('suction')}.offset`]: '0.05' },
  },
  {
    judge: 'bolt-holes',
    at: 'suction',
    review: pool,
    meets: { [`${flange('suction')}.holes`]: '1/8' },
    exceeds: { [`${flange('suction')}.holes`]: '0.13' },
  },
  {
    judge: 'shaft-movement',
    at: 'suction',
    review: pool,
    meets: { [`${flange('suction')}.shaft-along`]: '0.002', [`${flange('suction')}.shaft-across`]: '0' },
    exceeds: { [`${flange('suction')}.shaft-along`]: '0', [`${flange('suction')}.shaft-across`]: '-0.003' },
  },
  {
    judge: 'misfit-load',
    at: 'suction nozzle, resultant moment',
    review: pool,
    meets: square,
    exceeds: { ...square, ...gaps('0.6', '0.4', '0.2', '0.4') },
  },
  {
    judge: 'spring-range',
    at: 'V1, filled',
    review: library,
    meets: { 'supports.v1.load-filled': '1700' },
    exceeds: { 'supports.v1.load-filled': '2700' },
  },
  {
    judge: 'rod-lean',
    at: 'H1',
    review: pool,
    meets: { 'supports.h1.lean': '2', 'supports.h1.rod-length': '30' },
    exceeds: { 'supports.h1.lean': '2.2', 'supports.h1.rod-length': '30' },
  },
  {
    judge: 'support-contact',
    at: 'S1',
    review: library,
    meets: { 'supports.s1.gap': '0' },
    exceeds: { 'supports.s1.gap': '0.01' },
  },
  {
    judge: 'base-state',
    review: dairy,
    meets: { 'supports.pump-base.bolts': 'free to slide' },
    exceeds: { 'supports.pump-base.bolts': 'bolted tight' },
  },
  {
    judge: 'base-state',
    review: bolted,
    meets: { 'supports.pump-base.bolts': 'bolted tight' },
    exceeds: { 'supports.pump-base.bolts': 'loose' },
  },
  {
    judge: 'plumb-shaft',
    review: pool,
    meets: {
      'plumb.along': '0.012',
      'plumb.across': '0',
      'plumb.limit': '0.012',
      'plumb.limit-from': 'manual',
    },
    exceeds: {
      'plumb.along': '0',
      'plumb.across': '-0.013',
      'plumb.limit': '0.012',
      'plumb.limit-from': 'manual',
    },
  },
  { judge: 'coupling-gaps', review: pool, meets: couplingGaps('0.064'), exceeds: couplingGaps('0.065') },
  {
    judge: 'shaft-runout',
    review: pool,
    meets: { 'coupling.runout': '0.002' },
    exceeds: { 'coupling.runout': '0.0025' },
  },
  {
    judge: 'seal-leakage',
    review: pool,
    meets: { 'seal.leakage': '2', 'seal.leakage-limit': '2', 'seal.leakage-limit-from': 'manual' },
    exceeds: { 'seal.leakage': '3', 'seal.leakage-limit': '2', 'seal.leakage-limit-from': 'manual' },
  },
  { judge: 'head', review: pool, meets: gauges('81'), exceeds: gauges('75') },
  {
    judge: 'flow',
    review: pool,
    meets: { 'hydraulic.flow': '660', 'hydraulic.flow-limit': '5', 'hydraulic.flow-limit-from': 'x' },
    exceeds: { 'hydraulic.flow': '600', 'hydraulic.flow-limit': '5', 'hydraulic.flow-limit-from': 'x' },
  },
  {
    judge: 'voltage-range',
    review: pool,
    meets: volts('460', '506', '460'),
    exceeds: volts('460', '413', '460'),
  },
  {
    judge: 'voltage-unbalance',
    review: pool,
    meets: volts('460', '462', '458'),
    exceeds: volts('460', '467', '450'),
  },
  { judge: 'current', review: pool, meets: amps('25', '24', '24'), exceeds: amps('24', '26', '24') },
  {
    judge: 'current-unbalance',
    review: pool,
    meets: amps('20', '21', '22'),
    exceeds: amps('20', '20', '26'),
  },
  {
    judge: 'vibration-stopped',
    review: pool,
    meets: { 'vibration.stopped': '0.03', 'vibration.limit': '0.15', 'vibration.limit-from': 'x' },
    exceeds: { 'vibration.stopped': '0.04', 'vibration.limit': '0.15', 'vibration.limit-from': 'x' },
  },
  { judge: 'vibration', at: 'motor top', review: pool, meets: top('0.15'), exceeds: top('0.16') },
  {
    judge: 'knock-margin',
    at: 'motor top, north',
    review: pool,
    meets: { 'knock-test.along-first': '12', 'knock-test.along-second': '20' },
    exceeds: { 'knock-test.along-first': '12', 'knock-test.along-second': '28' },
  },
  {
    judge: 'start-movement',
    review: pool,
    meets: { 'start-up.motor-top': '0.05' },
    exceeds: { 'start-up.motor-top': '1/16' },
  },
  {
    judge: 'headroom',
    review: pool,
    meets: { 'access.over-motor': '20' },
    exceeds: { 'access.over-motor': '19' },
  },
  {
    judge: 'disconnect-distance',
    review: pool,
    meets: { 'access.disconnect': '50 ft' },
    exceeds: { 'access.disconnect': '51 ft' },
  },
  {
    judge: 'closes-by-hand',
    at: 'suction',
    review: pool,
    meets: { [`${flange('suction')}.by-hand`]: 'yes' },
    exceeds: { [`${flange('suction')}.by-hand`]: 'no' },
  },
  {
    judge: 'lock-nuts',
    at: 'H1',
    review: pool,
    meets: { 'supports.h1.nuts': 'yes' },
    exceeds: { 'supports.h1.nuts': 'no' },
  },
  {
    judge: 'travel-stops',
    at: 'V1',
    review: library,
    meets: { 'supports.v1.stops-out': 'yes' },
    exceeds: { 'supports.v1.stops-out': 'no' },
  },
  {
    judge: 'slides-freely',
    at: 'G1',
    review: library,
    meets: { 'supports.g1.free': 'yes' },
    exceeds: { 'supports.g1.free': 'no' },
  },
  {
    judge: 'anchor-bolts',
    at: 'A1',
    review: guided,
    meets: { 'supports.a1.bolts': 'yes' },
    exceeds: { 'supports.a1.bolts': 'no' },
  },
  { judge: 'flush-open', review: pool, meets: { 'seal.flush': 'has none' }, exceeds: { 'seal.flush': 'no' } },
  {
    judge: 'noise',
    review: pool,
    meets: { 'start-up.noise': 'none out of the way' },
    exceeds: { 'start-up.noise': 'knocking' },
  },
  {
    judge: 'valve-slam',
    review: pool,
    meets: { 'start-up.stop': 'quietly' },
    exceeds: { 'start-up.stop': 'with a slam' },
  },
  {
    judge: 'screen-out',
    review: dairy,
    meets: { 'hydraulic.screen-out': 'yes' },
    exceeds: { 'hydraulic.screen-out': 'no' },
  },
  {
    judge: 'strainer-clean',
    review: strained,
    meets: { 'hydraulic.strainer-clean': 'yes' },
    exceeds: { 'hydraulic.strainer-clean': 'no' },
  },
  {
    judge: 'recovery',
    at: 'suction',
    review: pool,
    meets: { [`${flange('suction')}.slackened`]: '0.002' },
    exceeds: { [`${flange('suction')}.slackened`]: '0.003' },
  },
  {
    judge: 'support-moved',
    at: 'H1, height',
    review: pool,
    meets: { 'supports.h1.height': '9\'-10 5/8"' },
    exceeds: { 'supports.h1.height': '9\'-11"' },
  },
  {
    judge: 'level-datum',
    review: pool,
    meets: { ...raised, 'supports.port-height': '4\'-7"' },
    exceeds: {},
    untold: raised,
  },
  {
    judge: 'plate-weight',
    at: 'motor weight',
    review: pool,
    meets: { 'identity.motor-weight': '290 lb' },
    exceeds: { 'identity.motor-weight': '310 lb' },
  },
  {
    judge: 'motor-insulation',
    review: pool,
    meets: { 'before-start.motor-insulation': '20', 'before-start.winding-temperature': '68' },
    exceeds: { 'before-start.motor-insulation': '19.9', 'before-start.winding-temperature': '68' },
  },
  {
    judge: 'cable-insulation',
    review: pool,
    meets: { 'before-start.cable-insulation': '1' },
    exceeds: { 'before-start.cable-insulation': '0.9' },
  },
  {
    judge: 'supply-voltage',
    review: pool,
    meets: atRest('506', '460', '414'),
    exceeds: atRest('460', '460', '413'),
  },
  {
    judge: 'supply-unbalance',
    review: pool,
    meets: atRest('460', '462', '458'),
    exceeds: atRest('460', '467', '450'),
  },
  {
    judge: 'supply-frequency',
    review: pool,
    meets: { 'electrical.frequency': '57' },
    exceeds: { 'electrical.frequency': '56.9' },
  },
  {
    judge: 'lost-phase',
    review: pool,
    meets: amps('20', '19', '25'),
    exceeds: amps('24', '24', '0'),
  },
  {
    judge: 'overload',
    review: pool,
    meets: { 'electrical.overload': '31.25', 'identity.service-factor': '1.15' },
    exceeds: { 'electrical.overload': '31.3', 'identity.service-factor': '1.15' },
  },
  {
    judge: 'locked-speeds',
    review: banded,
    meets: {
      'knock-test.locked-from': '700',
      'knock-test.locked-to': '775',
      'knock-test.locked-from-2': '994',
      'knock-test.locked-to-2': '1100',
    },
    exceeds: { 'knock-test.locked-from': '700', 'knock-test.locked-to': '775' },
  },
  {
    judge: 'head-rises',
    review: pool,
    meets: gauges('81'),
    exceeds: gauges('50'),
  },
  {
    judge: 'flow-moves',
    review: pool,
    meets: { 'hydraulic.flow': '640' },
    exceeds: { 'hydraulic.flow': '0' },
  },
  {
    judge: 'liquid-temperature',
    review: pool,
    meets: { 'hydraulic.temperature': '160' },
    exceeds: { 'hydraulic.temperature': '400' },
  },
  {
    judge: 'seal-looks',
    review: pool,
    meets: { 'seal.looks': 'drops' },
    exceeds: { 'seal.looks': 'steady stream' },
  },
  {
    judge: 'seal-drops',
    review: pool,
    meets: { 'seal.leakage': '5' },
    exceeds: { 'seal.leakage': '6' },
  },
  {
    judge: 'vibration-damage',
    at: 'motor top',
    review: pool,
    meets: { 'vibration.motor-top-along': '10.6 mm/s' },
    exceeds: { 'vibration.motor-top-along': '10.7 mm/s' },
  },
  {
    judge: 'bearing-temperature',
    review: pool,
    meets: { 'start-up.bearing': '179' },
    exceeds: { 'start-up.bearing': '181' },
  },
  {
    judge: 'bearing-heat',
    review: pool,
    meets: { 'start-up.bearing': '238' },
    exceeds: { 'start-up.bearing': '240' },
  },
  {
    judge: 'whine',
    review: pool,
    meets: { 'start-up.noise': 'none' },
    exceeds: { 'start-up.noise': 'whine' },
  },
  {
    judge: 'pipe-movement',
    review: pool,
    meets: { 'start-up.pipe': '0.05' },
    exceeds: { 'start-up.pipe': '6' },
  },
  {
    judge: 'knock-at-speed',
    at: 'motor top, north',
    review: pool,
    meets: { 'knock-test.along-first': '26' },
    exceeds: { 'knock-test.along-first': '29.5' },
  },
  {
    judge: 'line-state',
    review: pool,
    meets: { 'identity.state': 'filled, cold' },
    exceeds: { 'identity.state': 'dry' },
  },
  {
    judge: 'rods-loaded',
    at: 'H2',
    review: pool,
    meets: { 'supports.h2.loaded': 'carries' },
    exceeds: { 'supports.h2.loaded': 'slack' },
  },
  ...(
    [
      ['pressure-tested', 'before-start.pressure-tested'],
      ['flushed', 'before-start.flushed'],
      ['filled', 'before-start.filled'],
      ['tight', 'before-start.tight'],
      ['protections', 'before-start.protections'],
      ['locks-off', 'before-start.locks-off'],
      ['people-clear', 'before-start.people-clear'],
      ['bearing-steady', 'start-up.bearing-steady'],
      ['coupling-bolts', 'coupling.bolts'],
      ['shaft-turns', 'coupling.turns'],
      ['guard', 'coupling.guard'],
      ['seal-vented', 'seal.vented'],
      ['valves-open', 'hydraulic.valves-open'],
      ['check-holds', 'hydraulic.check-holds'],
      ['rotation', 'electrical.rotation'],
      ['in-sight', 'access.in-sight'],
      ['isolates', 'access.isolates'],
      ['bleeds', 'access.bleeds'],
      ['locks', 'access.locks'],
    ] as const
  ).map(([judge, box]): Case => ({ judge, review: pool, meets: { [box]: 'yes' }, exceeds: { [box]: 'no' } })),
];

describe.each(cases)('$judge $at', ({ judge, at, review, meets, exceeds, untold = {} }) => {
  const one = (readings: Readonly<Record<string, string>>) =>
    judgedBy(visitOf(review, readings), judge, at)[0];

  test('meets', () => expect(one(meets)?.verdict).toBe('meets'));

  test('exceeds, with a sentence of its own', () => {
    // What has no wrong answer is only asked.
    if (Object.keys(exceeds).length === 0) return;
    const judged = one(exceeds);
    expect(judged?.verdict).toBe('exceeds');
    expect(Object.keys(sentences)).toContain(judged?.reason?.code);
  });

  test('cannot tell where it was not read', () => {
    const judged = one(untold);
    // Nothing is compared that a tape was not held to.
    if (judge === 'support-moved') return expect(judged).toBeUndefined();
    expect(judged?.verdict).toBe('cannot-tell');
    expect(Object.keys(sentences)).toContain(judged?.reason?.code);
  });
});

test('every judge is tested here, has a sentence that tells finding, fix and consequence, and a file or a line', () => {
  expect([...new Set(cases.map(({ judge }) => judge))].sort()).toEqual(
    [...new Set(judges.map(({ id }) => id))].sort(),
  );
  for (const { id } of judges) {
    const sentence = sentenceOf({
      code: `fieldwork.${id}.exceeds`,
      data: { at: 'x', which: 'x', side: 'x', load: 'x' },
    } as Coded);
    expect(Object.keys(sentence ?? {})).toEqual(['message', 'wanted', 'hint']);
  }
  const files = filesBelow('src/as-installed/judges', '.ts').map((name) => name.slice(0, -3));
  expect(files.length).toBeGreaterThan(25);
});

test('every judge belongs to a part of the sheet', () => {
  const parts = new Set(buildSheet(pool).parts.map(({ id }) => id));
  expect(judges.filter(({ part }) => !parts.has(part)).map(({ id }) => id)).toEqual([]);
});

test('a judge rests on boxes that the sheet has', () => {
  for (const review of [pool, library, dairy]) {
    const asked = new Set(boxesOf(buildSheet(review)).map(({ box }) => box.id));
    const astray = visitOf(review, {}).judgements.flatMap(({ boxes }) =>
      boxes.filter((box) => !asked.has(box)),
    );
    expect(astray).toEqual([]);
  }
});

describe('limits', () => {
  test('one from memory or a custom compares and decides nothing; one written on site with its page decides', () => {
    const runout = (more: Record<string, string>) =>
      judgedBy(visitOf(pool, { 'coupling.runout': '0.003', ...more }), 'shaft-runout')[0];
    expect(runout({})).toMatchObject({ verdict: 'exceeds', comparison: true });
    expect(
      runout({ 'coupling.runout-limit': '0.002', 'coupling.runout-limit-from': 'manual, page 16' }),
    ).toMatchObject({
      verdict: 'exceeds',
      comparison: false,
      citation: { source: 'field-sheet', clause: 'manual, page 16' },
    });
  });

  test('a number without its document is no limit', () => {
    const judged = judgedBy(
      visitOf(pool, { 'plumb.along': '0', 'plumb.across': '0', 'plumb.limit': '0.01' }),
      'plumb-shaft',
    )[0];
    expect(judged).toMatchObject({
      verdict: 'cannot-tell',
      comparison: true,
      reason: { code: 'fieldwork.limit-without-source' },
    });
  });

  test('where nobody gives one, it says so', () => {
    const judged = judgedBy(visitOf(pool, { 'seal.leakage': '4' }), 'seal-leakage')[0];
    expect(judged).toMatchObject({
      verdict: 'cannot-tell',
      comparison: true,
      reason: { code: 'fieldwork.no-limit' },
    });
  });

  test('the plate of the motor comes before the file', () => {
    const judged = judgedBy(
      visitOf(pool, { ...amps('24', '24', '24'), 'identity.motor-current': '23' }),
      'current',
    )[0];
    expect(judged).toMatchObject({ verdict: 'exceeds', limit: 23 });
  });

  test('one direction over the limit is enough; to meet it takes all three', () => {
    const limit = { 'vibration.limit': '0.15', 'vibration.limit-from': 'x' };
    expect(
      judgedBy(visitOf(pool, { 'vibration.motor-top-along': '0.2', ...limit }), 'vibration', 'motor top')[0]
        ?.verdict,
    ).toBe('exceeds');
    expect(
      judgedBy(visitOf(pool, { 'vibration.motor-top-along': '0.1', ...limit }), 'vibration', 'motor top')[0]
        ?.verdict,
    ).toBe('cannot-tell');
  });

  test('a drive that is kept out of the speeds near a frequency meets', () => {
    const struck = { 'knock-test.along-first': '18', 'knock-test.along-second': '40' };
    const locked = { 'knock-test.locked-from': '950', 'knock-test.locked-to': '1230' };
    expect(judgedBy(visitOf(dairy, struck), 'knock-margin')[0]?.verdict).toBe('exceeds');
    expect(judgedBy(visitOf(dairy, { ...struck, ...locked }), 'knock-margin')[0]?.verdict).toBe('meets');
  });
});
