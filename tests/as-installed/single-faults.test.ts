import { describe, expect, test } from 'vitest';
import { changedSample, reviewedSample } from '../sheet/reviewed-sample.js';
import { decisionsWith } from './whole-visit.js';

/** Three mounts: hung in its pipe, resting on its base, bolted down. */
const units = {
  hung: reviewedSample('pool-hot-water'),
  resting: reviewedSample('dairy-condenser-water'),
  bolted: changedSample('dairy-condenser-water', (file) => {
    file.pump.mount = 'bolted';
  }),
} as const;

/** One fault, what both decisions are with it, and a word of the reason. */
interface Fault {
  readonly put: Readonly<Record<string, string>>;
  readonly start: 'go' | 'hold';
  readonly run: 'go' | 'hold' | 'stop';
  readonly because?: RegExp;
}

const faults: readonly Fault[] = [
  { put: { 'coupling.guard': 'no' }, start: 'hold', run: 'hold', because: /guard/iu },
  { put: { 'coupling.bolts': 'no' }, start: 'hold', run: 'hold', because: /coupling bolts/iu },
  { put: { 'coupling.turns': 'no' }, start: 'hold', run: 'hold', because: /turn freely/iu },
  { put: { 'seal.vented': 'no' }, start: 'hold', run: 'hold', because: /vented/iu },
  { put: { 'seal.flush': 'no' }, start: 'hold', run: 'hold', because: /flush line/iu },
  { put: { 'hydraulic.valves-open': 'no' }, start: 'hold', run: 'hold', because: /isolation valves/iu },
  { put: { 'access.isolates': 'no' }, start: 'hold', run: 'hold', because: /isolation/iu },
  { put: { 'access.bleeds': 'no' }, start: 'hold', run: 'hold', because: /vents and drains|drain/iu },
  { put: { 'access.locks': 'no' }, start: 'hold', run: 'hold', because: /locked open|lock/iu },
  { put: { 'access.in-sight': 'no' }, start: 'hold', run: 'hold', because: /sight|seen/iu },
  { put: { 'electrical.rotation': 'no' }, start: 'hold', run: 'hold', because: /wrong way|arrow/iu },
  { put: { 'before-start.pressure-tested': 'no' }, start: 'hold', run: 'hold', because: /pressure test/iu },
  { put: { 'before-start.flushed': 'no' }, start: 'hold', run: 'hold', because: /flushed/iu },
  { put: { 'before-start.filled': 'no' }, start: 'hold', run: 'hold', because: /filled/iu },
  { put: { 'before-start.tight': 'no' }, start: 'hold', run: 'hold', because: /leaks/iu },
  { put: { 'before-start.protections': 'no' }, start: 'hold', run: 'hold', because: /protections/iu },
  { put: { 'before-start.locks-off': 'no' }, start: 'hold', run: 'hold', because: /lock is still on/iu },
  { put: { 'before-start.people-clear': 'no' }, start: 'hold', run: 'hold', because: /people/iu },
  { put: { 'coupling.guard': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'before-start.filled': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'before-start.locks-off': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'access.isolates': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'before-start.protections': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'identity.state': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'before-start.motor-insulation': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'before-start.cable-insulation': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'electrical.overload': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'electrical.rotation': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'before-start.volts-ab': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'identity.state': 'dry' }, start: 'hold', run: 'hold', because: /dry/iu },
  { put: { 'before-start.motor-insulation': '3' }, start: 'hold', run: 'hold', because: /winding/iu },
  { put: { 'before-start.cable-insulation': '0.5' }, start: 'hold', run: 'hold', because: /cable/iu },
  { put: { 'before-start.winding-temperature': '' }, start: 'hold', run: 'hold', because: /not read/iu },
  { put: { 'electrical.overload': '100 A' }, start: 'hold', run: 'hold', because: /overload/iu },
  { put: { 'before-start.volts-ab': '276 V' }, start: 'hold', run: 'hold', because: /supply/iu },
  {
    put: { 'before-start.volts-bc': '230', 'before-start.volts-ca': '230' },
    start: 'hold',
    run: 'hold',
    because: /voltages of the supply/iu,
  },
  { put: { 'electrical.frequency': '55 Hz' }, start: 'hold', run: 'hold', because: /frequency/iu },
  {
    put: { 'electrical.volts-bc': '230', 'electrical.volts-ca': '230' },
    start: 'hold',
    run: 'stop',
    because: /voltage/iu,
  },
  { put: { 'electrical.amps-c': '0' }, start: 'hold', run: 'stop', because: /a phase carries no current/iu },
  { put: { 'electrical.amps-a': '90 A' }, start: 'hold', run: 'stop', because: /more current/iu },
  { put: { 'identity.motor-power': '60 hp' }, start: 'hold', run: 'hold', because: /plate|review/iu },
  { put: { 'identity.motor-voltage': '230' }, start: 'hold', run: 'hold', because: /plate|review|voltage/iu },
  { put: { 'coupling.runout': '0.2 in' }, start: 'hold', run: 'hold', because: /runs out/iu },
  { put: { 'hydraulic.running-discharge': '290 kPa' }, start: 'hold', run: 'stop', because: /no rise/iu },
  { put: { 'hydraulic.flow': '0' }, start: 'hold', run: 'stop', because: /no liquid moves/iu },
  { put: { 'hydraulic.temperature': '400 °F' }, start: 'hold', run: 'stop', because: /hotter/iu },
  { put: { 'hydraulic.check-holds': 'no' }, start: 'go', run: 'hold', because: /check valve/iu },
  { put: { 'start-up.stop': 'with a slam' }, start: 'go', run: 'hold', because: /slam|check valve/iu },
  { put: { 'start-up.noise': 'knocking' }, start: 'hold', run: 'stop', because: /knock|noise/iu },
  { put: { 'start-up.noise': 'rubbing' }, start: 'hold', run: 'stop', because: /rub|noise/iu },
  { put: { 'start-up.noise': 'whine' }, start: 'go', run: 'hold', because: /whine/iu },
  { put: { 'seal.leakage': '500' }, start: 'hold', run: 'stop', because: /seal leaks/iu },
  { put: { 'seal.leakage': '20' }, start: 'go', run: 'hold', because: /seal leaks/iu },
  { put: { 'seal.looks': 'steady stream' }, start: 'hold', run: 'stop', because: /stream/iu },
  { put: { 'seal.looks': 'spray or smoke' }, start: 'hold', run: 'stop', because: /stream/iu },
  {
    put: { 'vibration.limit': '', 'vibration.stopped': '0.1 mm/s', '@top': '40 in/s' },
    start: 'hold',
    run: 'stop',
    because: /figure of damage/iu,
  },
  { put: { '@top': '6 mm/s' }, start: 'go', run: 'hold', because: /vibrates/iu },
  { put: { 'start-up.bearing': '150 °C' }, start: 'hold', run: 'stop', because: /every figure of a trip/iu },
  { put: { 'start-up.bearing': '95 °C' }, start: 'go', run: 'hold', because: /bearing/iu },
  { put: { 'start-up.bearing-steady': 'no' }, start: 'go', run: 'hold', because: /still rises/iu },
  { put: { 'start-up.motor-top': '1 in' }, start: 'hold', run: 'hold', because: /motor top/iu },
  {
    put: { 'start-up.pipe': '6 in' },
    start: 'hold',
    run: 'hold',
    because: /pipe moves|no limit was given for pipe/iu,
  },
  { put: { 'access.over-motor': '2 in' }, start: 'go', run: 'hold', because: /height over the motor/iu },
  { put: { 'access.over-motor': '100 ft' }, start: 'go', run: 'hold', because: /unlikely/iu },
  { put: { 'before-bolt-up.suction.gap-up': '9 mm' }, start: 'hold', run: 'hold', because: /parallel|gap/iu },
  { put: { 'before-bolt-up.suction.by-hand': 'no' }, start: 'hold', run: 'hold', because: /by hand/iu },
  {
    put: { 'before-bolt-up.discharge.shaft-across': '0.5 mm' },
    start: 'hold',
    run: 'hold',
    because: /shaft moves/iu,
  },
  {
    put: { 'before-bolt-up.suction.gap-up': '', 'before-bolt-up.suction.gap-down': '' },
    start: 'hold',
    run: 'hold',
    because: /gaps/iu,
  },
  { put: { 'before-start.remarks': 'DO NOT START' }, start: 'hold', run: 'hold', because: /DO NOT START/iu },
  {
    put: { 'coupling.guard-not-read': 'guard not delivered yet' },
    start: 'hold',
    run: 'hold',
    because: /not delivered/iu,
  },
  { put: { 'open-items.item-1': 'crack in the casing' }, start: 'hold', run: 'hold', because: /crack/iu },
  { put: { 'sign-off.start': '' }, start: 'hold', run: 'go' },
  { put: { 'sign-off.run': 'n/a' }, start: 'go', run: 'hold' },
  { put: { 'sign-off.start-date': '2026-11-04' }, start: 'hold', run: 'go' },
  { put: { 'identity.by': '' }, start: 'go', run: 'go' },
  { put: { 'electrical.volts-ab': '460/461' }, start: 'go', run: 'hold', because: /cannot be read/iu },
  { put: { 'before-start.volts-ab': '46 V' }, start: 'hold', run: 'hold', because: /supply/iu },
  { put: { 'knock-test.along-first': '@speed' }, start: 'go', run: 'hold', because: /running speed/iu },
];

/** Boxes whose id follows from the unit. */
function putInto(unit: keyof typeof units, put: Fault['put']): Readonly<Record<string, string>> {
  const { motor } = units[unit].installation.pump;
  const top = motor.speeds === undefined ? 'vibration.motor-top-along' : 'vibration.highest-motor-top-along';
  return Object.fromEntries(
    Object.entries(put).map(([id, text]) => [
      id === '@top' ? top : id,
      text === '@speed' ? `${motor.speed / (2 * Math.PI)} Hz` : text,
    ]),
  );
}

test('there are a hundred and twenty sets and more', () => {
  expect(faults.length * Object.keys(units).length).toBeGreaterThanOrEqual(120);
});

describe.each(Object.keys(units) as readonly (keyof typeof units)[])('%s', (unit) => {
  test('in order, and decided by name: go, twice, and nothing open', () => {
    const { decisions, items, verdict } = decisionsWith(units[unit], {});
    expect(items).toEqual([]);
    expect(decisions).toMatchObject({ start: { word: 'go', by: 'R. Okafor' }, run: { word: 'go' } });
    expect(verdict).not.toBe('exceeds');
  });

  test.each(faults.map((fault) => [JSON.stringify(fault.put), fault] as const))('%s', (_name, fault) => {
    const { decisions, verdict } = decisionsWith(units[unit], putInto(unit, fault.put));
    expect([decisions.start.word, decisions.run.word]).toEqual([fault.start, fault.run]);
    if (fault.start !== 'go' || fault.run !== 'go') expect(verdict).not.toBe('meets');
    if (fault.because === undefined) return;
    const reasons = decisions.run.against.map(({ at, title, finding }) => `${title}, ${at}: ${finding}`);
    expect(
      reasons.some((reason) => fault.because?.test(reason)),
      reasons.join(' | '),
    ).toBe(true);
  });
});

describe('what only one of them has', () => {
  test.each([
    ['hung', { 'supports.h2.loaded': 'slack' }, /slack/u],
    ['hung', { 'supports.h2.nuts': 'no' }, /lock nuts/u],
    ['hung', { 'supports.h1.lean': '20 in' }, /leans/u],
    ['hung', { 'coupling.gap-one-top': '0.2 in' }, /gaps of the coupling/u],
    ['resting', { 'supports.pump-base.bolts': 'bolted tight' }, /base/iu],
    ['bolted', { 'supports.pump-base.bolts': 'loose' }, /base/iu],
    ['resting', { 'knock-test.locked-from': '1', 'knock-test.locked-to': '99999' }, /speed/iu],
  ] as const)('%s %j', (unit, put, because) => {
    const { decisions } = decisionsWith(units[unit], put);
    expect(decisions.start.word).toBe('hold');
    const reasons = decisions.start.against.map(({ at, title, finding }) => `${title}, ${at}: ${finding}`);
    expect(
      reasons.some((reason) => because.test(reason)),
      reasons.join(' | '),
    ).toBe(true);
  });
});
