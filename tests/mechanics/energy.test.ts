import { describe, expect, test } from 'vitest';
import { prepareFrame } from '../../src/mechanics/frame/prepare-frame.js';
import { frameSolver, solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import { energyOf, LARGEST_ENERGY_ERROR } from '../../src/mechanics/frame/system/energy.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import {
  anchor,
  condition,
  force,
  frame,
  GRAVITY,
  of,
  restraint,
  runThrough,
  STRAIN,
  support,
} from './small-frames.js';

const EAST: Vec3 = [1, 0, 0];
const UP: Vec3 = [0, 0, 1];

// A line with everything in it: weight, heat, a spring with a setting, a rest with friction, a leaning rod, an imposed
// movement and rods that engage.
const everything: Partial<Frame> = {
  ...runThrough(
    [
      [0, 0, 0],
      [3, 0, 0],
      [6, 0, 0],
      [6, 4, 0],
    ],
    { mass: { metal: 16, covering: 2 } },
  ),
  supports: [
    anchor('A', 'a'),
    support('V', 'b', [restraint(UP, { stiffness: 2e4, preload: 400, sense: 'push' })]),
    support('R', 'c', [restraint(UP, { sense: 'push', friction: 0.3, imposed: 0.001 })]),
    support('H', 'd', [restraint(UP, { sense: 'push', swingLength: 1.2 })]),
    support('E', 'e', [restraint(EAST, { stiffness: 1e6 })]),
  ],
  joints: [
    {
      name: 'connector',
      from: 'd',
      to: 'e',
      axis: [0, 1, 0],
      axial: 2e5,
      lateral: 1e6,
      torsion: 1e5,
      bending: 1e5,
      thrustArea: 0.01,
      mass: 5,
      rodGap: 0.002,
    },
  ],
  conditions: [
    condition({
      gravity: GRAVITY,
      temperature: 380,
      pressure: 6e5,
      covering: true,
      imposed: { R: [0.002, 0, 0] },
      loads: [force('e', [50, 300, -20])],
    }),
  ],
};
const built = frame({ ...everything, points: { ...everything.points, e: [6, 4.2, 0] } });

describe('the work of the final state', () => {
  test('of what acts is what is taken up, whatever lifts, slips, leans or engages', () => {
    const response = solveFrame(built);
    const answer = of(response.conditions, 'test');
    expect(of(answer.supports, 'R').states).toEqual(['slipping']);
    expect(of(answer.jointStates ?? {}, 'connector').rods).toBe('engaged');
    expect(response.quality.energy).toBe(answer.energy);
    expect(answer.energy).toBeLessThan(1e-10);
  });

  test('tells a solution that is not one', () => {
    const { converged } = frameSolver(prepareFrame(built))(built.conditions[0] ?? condition());
    expect(energyOf(converged)).toBeLessThan(1e-10);
    const movements = converged.solution.movements.map((value, i) => (i === 8 ? value * (1 + 1e-4) : value));
    const moved = { ...converged, solution: { ...converged.solution, movements } };
    expect(energyOf(moved)).toBeGreaterThan(LARGEST_ENERGY_ERROR);
    const activeRestraints = converged.activeRestraints.map((activeRestraint, i) =>
      i === 6 ? { ...activeRestraint, preload: activeRestraint.preload + 1 } : activeRestraint,
    );
    expect(energyOf({ ...converged, activeRestraints })).toBeGreaterThan(LARGEST_ENERGY_ERROR);
  });

  test('is nothing where nothing acts', () => {
    const still = solveFrame(
      frame({ ...everything, points: built.points, supports: [anchor('A', 'a')], conditions: [condition()] }),
    );
    expect(still.quality.energy).toBe(0);
  });

  test('is none where a frame without weight grows freely: its end moves by the strain times its place', () => {
    const places: readonly Vec3[] = [
      [0, 0, 0],
      [3, 0.4, 0],
      [3, 2, 0.7],
      [3.1, 2, 5],
    ];
    const grown = solveFrame(
      frame({
        ...runThrough(places),
        supports: [anchor('A', 'a')],
        conditions: [condition({ temperature: 400 })],
      }),
    );
    const answer = of(grown.conditions, 'test');
    [3.1, 2, 5].forEach((place, i) => {
      expect(of(answer.movements, 'd').translation[i]).toBeCloseTo(STRAIN * place, 12);
    });
    expect(Math.hypot(...of(answer.supports, 'A').load.force)).toBeLessThan(1e-6);
    expect(answer.energy).toBeLessThanOrEqual(LARGEST_ENERGY_ERROR);
  });

  test('is none where a frame without weight is carried along by what holds it', () => {
    const carried = solveFrame(
      frame({
        ...runThrough([
          [0, 0, 0],
          [3, 0, 0],
          [3, 2, 0],
          [3, 2, 5],
        ]),
        supports: [anchor('A', 'a')],
        conditions: [condition({ imposed: { A: [0.01, 0.02, 0.003] } })],
      }),
    );
    const answer = of(carried.conditions, 'test');
    [0.01, 0.02, 0.003].forEach((by, i) => {
      expect(of(answer.movements, 'd').translation[i]).toBeCloseTo(by, 12);
    });
    expect(answer.energy).toBeLessThanOrEqual(LARGEST_ENERGY_ERROR);
  });
});
