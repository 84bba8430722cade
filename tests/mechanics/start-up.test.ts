import { describe, expect, test } from 'vitest';
import { findVibrations } from '../../src/mechanics/modes/find-vibrations.js';
import { rimMovement, twistedSet } from '../../src/mechanics/modes/twisted-set.js';
import { stepFactor } from '../../src/mechanics/start/dynamic-factor.js';
import { steadyTwist } from '../../src/mechanics/start/start-twist.js';
import { type StartUp, startUp, type WorkedStart } from '../../src/mechanics/start/start-up.js';
import type { StartCase } from '../../src/model/conditions/start-case.js';
import { anchor, condition, frame, of, pipe, restraint, STEEL, support } from './small-frames.js';

/**
 * A set on the shaft line of an upright pipe that is fixed below: a moment about the shaft twists it alone, so it is a
 * single freedom with stiffness c = G J / l and inertia Θ. Its centre lies on the axis; the top sways not at all.
 */
const LENGTH = 1;
const THETA = 6;
const MASS = 300;
const TUBE = { outsideDiameter: 0.1143, wall: 0.00602 };
const J = (Math.PI / 32) * (TUBE.outsideDiameter ** 4 - (TUBE.outsideDiameter - 2 * TUBE.wall) ** 4);
const TWIST_STIFFNESS = (STEEL.modulus / 2.6) * (J / LENGTH);
const FREQUENCY = Math.sqrt(TWIST_STIFFNESS / THETA) / (2 * Math.PI);

const post = frame({
  points: { foot: [0, 0, 0], 'motor seat': [0, 0, LENGTH] },
  members: [pipe('post', 'foot', 'motor seat', { tube: TUBE })],
  bodies: [
    {
      name: 'motor',
      points: ['motor seat'],
      masses: [
        {
          name: 'motor',
          at: [0, 0, LENGTH],
          mass: MASS,
          contents: 0,
          contentsGroup: '',
          inertia: [9, 9, THETA],
        },
      ],
    },
  ],
  supports: [anchor('A', 'foot')],
});
const found = findVibrations(post, condition(), 60);

const RPM = Math.PI / 30;
const given = (value: number) =>
  ({ value, assumed: false, citation: { source: 'input', clause: '', confidence: 'read' } }) as const;
const inertia = (least: number, most = least) =>
  ({
    least,
    most,
    how: least === most ? 'both given' : 'by power',
    citation: { source: 'input', clause: '', confidence: 'read' },
  }) as const;

/** 22 kW, four poles, 60 Hz. */
const plain: StartCase = {
  rating: { power: 22_000, speed: 1765 * RPM },
  field: { poles: 4, frequency: 60, synchronousSpeed: 1800 * RPM, slip: 35 / 1800 },
  lockedRotor: given(240),
  breakdown: given(280),
  method: { kind: 'across the line' },
  duty: { flow: 0.06, head: 25, density: 998, efficiency: 0.8 },
  inertia: inertia(0.6),
  damping: 0,
  top: [0, 0, LENGTH + 0.8],
  radius: 0.2,
};

function worked(change: Partial<StartCase> = {}): WorkedStart {
  const start: StartUp = startUp({ ...plain, ...change }, found);
  if (start.kind === 'fails') throw new Error(start.why.code);
  return start;
}

describe('a set that can only twist', () => {
  test('has one vibration in which it twists, and that carries the whole twist', () => {
    const { twisting } = worked();
    expect(twisting).toHaveLength(1);
    expect(twisting[0]?.share).toBeCloseTo(1, 6);
    expect((twisting[0]?.frequency ?? 0) / FREQUENCY).toBeCloseTo(1, 6);
  });

  test('turns by moment over stiffness, and its top moves at the rim alone', () => {
    const { unitTurn, unitTop, topUnderUnit } = twistedSet(found, plain);
    expect(unitTurn * TWIST_STIFFNESS).toBeCloseTo(1, 9);
    expect(Math.hypot(...unitTop)).toBeLessThan(1e-12 * unitTurn);
    expect(topUnderUnit / (unitTurn * plain.radius)).toBeCloseTo(1, 9);
  });

  test('on a start across the line feels its own locked-rotor torque at once, doubled by dynamics', () => {
    // Breakdown less the water stays below locked rotor, so standstill governs: 240 N·m, factor 2 of a step.
    const start = worked({ breakdown: given(250) });
    expect(start.bound.governs).toBe('standstill');
    // A hair after standstill the curve has risen by less than a tenth of a percent.
    expect(start.staticTwist / 240).toBeGreaterThanOrEqual(1);
    expect(start.staticTwist / 240).toBeLessThan(1.001);
    expect(start.dynamicFactor).toBeGreaterThan(1.98);
    expect(start.dynamicFactor).toBeLessThanOrEqual(2);
    expect(start.governs).toBe('start');
    expect(start.twist).toBeCloseTo(start.staticTwist * start.dynamicFactor, 9);
  });

  test('moves by time history as by the factor, since one vibration carries everything', () => {
    const [run] = worked().runs;
    expect(run?.top.quasiStatic).toBeCloseTo(((run?.largestTwist ?? 0) / TWIST_STIFFNESS) * plain.radius, 12);
    expect((run?.top.byHistory ?? 0) / (run?.top.byFactor ?? 1)).toBeGreaterThan(0.99);
    expect((run?.top.byHistory ?? 0) / (run?.top.byFactor ?? 1)).toBeLessThan(1.01);
  });

  test('is twisted the other way by the torque of the water when it is switched off', () => {
    const duty = (998 * 9.80665 * 0.06 * 25) / 0.8 / (1765 * RPM);
    expect(worked().stopTwist).toBeCloseTo(2 * duty, 6);
    expect(worked({ damping: 0.1 }).stopTwist).toBeCloseTo(stepFactor(0.1) * duty, 6);
  });

  test('feels nothing at steady speed', () => {
    expect(steadyTwist()).toBe(0);
  });
});

test('a range of inertia gets the factor of a step across the line, and several runs', () => {
  const start = worked({ inertia: inertia(0.05, 5) });
  expect(start.by).toBe('bound');
  expect(start.runs).toHaveLength(3);
  expect(start.staticTwist).toBe(start.bound.largest);
  expect(start.dynamicFactor).toBe(2);
  const times = start.runs.map(({ duration }) => duration);
  expect(times).toEqual([...times].sort((a, b) => a - b));
});

test('without any bound of the inertia there is no run, and the bound stands', () => {
  const { inertia: _inertia, ...bare } = plain;
  const start = startUp(bare, found);
  expect(start).toMatchObject({ kind: 'worked out', runs: [], by: 'bound', dynamicFactor: 2 });
});

test('damping lowers the factor of a step', () => {
  expect(worked({ inertia: inertia(0.05, 5), damping: 0.05 }).dynamicFactor).toBeCloseTo(
    stepFactor(0.05),
    12,
  );
});

test('the ramp of a drive twists by inertia times acceleration, and switching off by more', () => {
  const ramp = 10;
  const start = worked({
    method: { kind: 'variable-speed drive', torqueLimit: 1.1, ramp },
    inertia: inertia(0.6),
  });
  expect(start.staticTwist).toBeCloseTo((0.6 * 1765 * RPM) / ramp, 6);
  expect(start.by).toBe('run');
  expect(start.governs).toBe('stop');
  expect(start.twist).toBe(start.stopTwist);
});

test('of a range of inertia the drive with the heaviest rotor twists most', () => {
  const drive = { kind: 'variable-speed drive', torqueLimit: 1.1, ramp: 10 } as const;
  const start = worked({ method: drive, inertia: inertia(0.1, 2) });
  expect(start.worst?.inertia).toBeCloseTo(2, 12);
  expect(start.staticTwist).toBeCloseTo((2 * 1765 * RPM) / 10, 6);
});

test('without an efficiency the water takes the torque of the rated motor', () => {
  const { efficiency: _efficiency, ...duty } = plain.duty;
  expect(worked({ duty }).set.load.dutyTorque).toBeCloseTo(22_000 / (1765 * RPM), 9);
});

test('a motor of unknown field, and one that never comes to speed, are told and not thrown', () => {
  const { field: _field, ...odd } = plain;
  expect(startUp(odd, found)).toMatchObject({ kind: 'fails', why: { code: 'mechanics.no-field-speed' } });
  const weak = { kind: 'soft starter', currentLimit: 2, lockedRotorCurrent: 6.5 } as const;
  expect(startUp({ ...plain, method: weak }, found)).toMatchObject({
    kind: 'fails',
    why: { code: 'mechanics.never-reaches-speed' },
  });
});

test('torques that no motor has are told and not thrown', () => {
  expect(startUp({ ...plain, breakdown: given(5000) }, found)).toMatchObject({
    kind: 'fails',
    why: { code: 'mechanics.out-of-range' },
  });
});

test('a fault that is not the start itself is thrown', () => {
  expect(() => startUp({ ...plain, damping: 1.5 }, found)).toThrow(
    expect.objectContaining({ code: 'mechanics.out-of-range' }),
  );
});

test('a set that leans aside of its shaft line sways at the top as well', () => {
  const [motor] = post.bodies;
  const lump = motor?.masses[0];
  if (motor === undefined || lump === undefined) throw new Error('no motor');
  const soft = support('S', 'motor seat', [restraint([0, 1, 0], { stiffness: 1e5 })]);
  const aside = {
    ...post,
    points: { ...post.points, rail: [0.5, 0, LENGTH] as const },
    bodies: [{ ...motor, points: ['motor seat', 'rail'], masses: [lump] }],
    supports: [...post.supports, { ...soft, point: 'rail' }],
  };
  const { unitTop, loaded } = twistedSet(findVibrations(aside, condition(), 60), plain);
  expect(Math.abs(unitTop[1])).toBeGreaterThan(1e-9);
  expect(loaded.filter(({ participation }) => Math.abs(participation) > 1e-6).length).toBeGreaterThan(1);
});

test('sway and turn add up at the rim', () => {
  expect(rimMovement([3e-3, 4e-3, 0], -0.01, 0.2)).toBeCloseTo(7e-3, 12);
  expect(of({ still: rimMovement([0, 0, 0], 0, 1) }, 'still')).toBe(0);
});
