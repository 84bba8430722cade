import { expect, test } from 'vitest';
import { EngineError } from '../../src/issues/issue.js';
import { loadsMovedTo, nozzleInteraction } from '../../src/mechanics/stress/combined-nozzle.js';
import { equivalentPressure } from '../../src/mechanics/stress/flange-equivalent-pressure.js';
import {
  maximumShearStress,
  nozzleStress,
  principalStress,
} from '../../src/mechanics/stress/nozzle-stress.js';

const section = { outsideDiameter: 0.1143, insideDiameter: 0.10226 };
const idle = { ...section, axialForce: 0, crossForce: 0, bendingMoment: 0, torsion: 0 };

test('pure pull gives force over area and no shear', () => {
  const area = (Math.PI * (0.1143 ** 2 - 0.10226 ** 2)) / 4;
  expect(nozzleStress({ ...idle, axialForce: 1000 }).normal).toBeCloseTo(1000 / area, 3);
  expect(nozzleStress({ ...idle, axialForce: 1000 }).shear).toBe(0);
});

test('the same moment gives half the stress in torsion that it gives in bending', () => {
  const bending = nozzleStress({ ...idle, bendingMoment: 800 }).normal;
  expect(nozzleStress({ ...idle, torsion: 800 }).shear).toBeCloseTo(bending / 2, 3);
  expect(nozzleStress({ ...idle, torsion: -800 }).shear).toBeCloseTo(bending / 2, 3);
});

test('pure shear has a principal stress of its own size, pure pull one of its own', () => {
  expect(principalStress({ normal: 0, shear: 7 })).toBe(7);
  expect(principalStress({ normal: 7, shear: 0 })).toBe(7);
  expect(maximumShearStress({ normal: 8, shear: 3 })).toBe(5);
});

test('a nozzle without wall is refused', () => {
  expect(() => nozzleStress({ ...idle, insideDiameter: 0.1143 })).toThrow(EngineError);
  expect(() => nozzleStress({ ...idle, insideDiameter: Number.NaN })).toThrow(EngineError);
});

test('loads moved to a point and back are the same', () => {
  const load = { force: [10, -20, 30], moment: [1, 2, 3] } as const;
  const moved = loadsMovedTo([{ at: [0.4, 0.1, -0.2], load }], [0, 0, 0]);
  const back = loadsMovedTo([{ at: [0, 0, 0], load: moved }], [0.4, 0.1, -0.2]);
  expect(back.force).toEqual(load.force);
  for (const axis of [0, 1, 2] as const) expect(back.moment[axis]).toBeCloseTo(load.moment[axis], 12);
});

test('a nozzle at its table resultants has two thirds of each share', () => {
  const load = { force: [300, 0, 400], moment: [0, 50, 0] } as const;
  expect(nozzleInteraction(load, { force: 500, moment: 50 })).toBeCloseTo(4 / 3, 12);
});

test('a pull over the area inside the gasket is its own equivalent pressure', () => {
  const pull = (5e5 * Math.PI * 0.2 ** 2) / 4;
  expect(equivalentPressure({ bendingMoment: 0, tension: pull, gasketDiameter: 0.2 })).toBeCloseTo(5e5, 6);
});
