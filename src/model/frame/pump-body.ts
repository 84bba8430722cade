import type { Pump } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import { add } from '../vector.js';
import type { FrameBody } from './frame.js';

/** Point on the shaft axis where motor and casing meet. */
export const MOTOR_SEAT = 'motor seat';

/**
 * The pump as two rigid bodies joined at the motor seat, so that the motor can be lifted away: the casing with its
 * water from flange face to flange face, and the motor.
 *
 * @param pump - masses [kg], centres [m], contents [m³]
 * @returns casing and motor; points `pump suction`, `pump discharge`, `motor seat` and, where it stands, `pump base`
 * @source statics
 */
export function pumpBodies(pump: Pump): readonly [FrameBody, FrameBody] {
  const place = pump.position;
  const group = { contentsGroup: 'pump' };
  const stands = pump.base !== undefined && pump.mount !== 'hung';
  const casing: FrameBody = {
    name: 'pump',
    points: ['pump suction', 'pump discharge', MOTOR_SEAT, ...(stands ? ['pump base'] : [])],
    masses: [
      {
        name: 'pump casing',
        at: add(place, pump.casing.centre),
        mass: pump.casing.mass.value,
        contents: 0,
        ...group,
        inertia: cylinderInertia(pump.casing.mass.value, pump.outline.casingDiameter.value, 0),
      },
      { name: 'pump contents', at: place, mass: 0, contents: pump.contents.value, ...group },
    ],
    material: pump.casing.material,
  };
  const motor: FrameBody = {
    name: 'motor',
    points: [MOTOR_SEAT],
    masses: [
      {
        name: 'motor',
        at: add(place, pump.motor.centre),
        mass: pump.motor.mass.value,
        contents: 0,
        ...group,
        inertia: cylinderInertia(
          pump.motor.mass.value,
          pump.outline.motorDiameter.value,
          2 * Math.max(0, pump.outline.motorTop.value - pump.motor.centre[2]),
        ),
      },
    ],
  };
  return [casing, motor];
}

/**
 * Rotary inertia of an upright solid cylinder about its centre: what casing and motor are taken for.
 *
 *     level axes m (3 r² + h²) / 12,   upright m r² / 2
 *
 * @param mass - mass [kg]
 * @param diameter - outside diameter [m]
 * @param height - height; 0 for a disc [m]
 * @returns inertia about the east, north and upright axes [kg·m²]
 * @source statics
 */
export function cylinderInertia(mass: number, diameter: number, height: number): Vec3 {
  const square = (diameter / 2) ** 2;
  const level = (mass * (3 * square + height ** 2)) / 12;
  return [level, level, (mass * square) / 2];
}

/**
 * The points of the pump.
 *
 * @param pump - places [m]
 * @returns both flange faces, the motor seat on the shaft axis under the motor, and the base where it stands [m]
 */
export function pumpPoints(pump: Pump): Readonly<Record<string, Vec3>> {
  const at = (offset: Vec3): Vec3 => add(pump.position, offset);
  const stands = pump.base !== undefined && pump.mount !== 'hung';
  return {
    'pump suction': at(pump.ports.suction.position),
    'pump discharge': at(pump.ports.discharge.position),
    // Half-way to the motor's centre of gravity: any place on the shaft axis serves, the bodies being rigid.
    [MOTOR_SEAT]: at([0, 0, pump.motor.centre[2] / 2]),
    ...(stands && pump.base && { 'pump base': at(pump.base.position) }),
  };
}
