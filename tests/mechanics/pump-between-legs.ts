/** A rigid pump between two straight legs, for what happens at its flanges. */
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameBody, FrameMass } from '../../src/model/frame/frame.js';
import { anchor, frame, NPS4, pipe, STEEL } from './small-frames.js';

/** Half the length of the pump, and length of each leg [m]. */
export const HALF = 0.25;
export const LEG = 3;

/** Bending stiffness, axial stiffness, torsional stiffness of the pipe [N·m²], [N], [N·m²]. */
const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
const inertia = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - inside ** 4);
const area = (Math.PI / 4) * (NPS4.outsideDiameter ** 2 - inside ** 2);
export const EI = STEEL.modulus * inertia;
export const EA = STEEL.modulus * area;
export const GJ = (STEEL.modulus / (2 * (1 + STEEL.poisson))) * 2 * inertia;

export const mass = (name: string, at: Vec3, kg: number): FrameMass => ({
  name,
  at,
  mass: kg,
  contents: 0,
  contentsGroup: 'pump',
});

/** The pump from south to north about the origin. */
export const pump = (masses: readonly FrameMass[] = []): FrameBody => ({
  name: 'pump',
  points: ['pump suction', 'pump discharge'],
  masses,
});

export const SUCTION = { which: 'suction', point: 'pump suction', axis: [0, -1, 0] } as const;
export const DISCHARGE = { which: 'discharge', point: 'pump discharge', axis: [0, 1, 0] } as const;

/** Slender legs (no shear) of the same pipe, anchored at their far ends. */
export function pumpBetweenLegs(parts: Partial<Frame> = {}, metal = 0): Frame {
  const weighing = { mass: { metal, covering: 0 } };
  return frame({
    points: {
      south: [0, -HALF - LEG, 0],
      'pump suction': [0, -HALF, 0],
      'pump discharge': [0, HALF, 0],
      north: [0, HALF + LEG, 0],
    },
    members: [
      pipe('suction leg', 'pump suction', 'south', weighing),
      pipe('discharge leg', 'pump discharge', 'north', weighing),
    ],
    bodies: [pump()],
    supports: [anchor('south', 'south'), anchor('north', 'north')],
    options: { withoutShear: true },
    ...parts,
  });
}
