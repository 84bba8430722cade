import type { Pump } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import { add, UP } from '../vector.js';
import type { FrameBody, FrameJoint } from './frame.js';

/** Point on the shaft axis where motor and casing meet. */
export const MOTOR_SEAT = 'motor seat';
/** The same place on the motor's side, where a bracket lies between that rocks. */
export const MOTOR_FOOT = 'motor foot';

/** The point that moves with the motor. @param points - points of a frame @returns its name */
export function motorPoint(points: Readonly<Record<string, Vec3>>): string {
  return points[MOTOR_FOOT] === undefined ? MOTOR_SEAT : MOTOR_FOOT;
}

/**
 * The pump as two rigid bodies joined at the motor seat, so that the motor can be lifted away: the casing with its
 * water from flange face to flange face, and the motor.
 *
 * @param pump - masses [kg], centres [m], contents [m³]
 * @returns casing and motor; points `pump suction`, `pump discharge`, `motor seat` and, where it stands, `pump base`;
 *   where the bracket rocks the motor stands on `motor foot`
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
      ...inertiaBase(pump),
    ],
    material: pump.casing.material,
  };
  const motor: FrameBody = {
    name: 'motor',
    points: [bracketStiffness(pump) === undefined ? MOTOR_SEAT : MOTOR_FOOT],
    masses: [
      {
        name: 'motor',
        at: add(place, pump.motor.centre),
        mass: pump.motor.mass.value,
        contents: 0,
        ...group,
        inertia: motorInertia(pump),
      },
    ],
  };
  return [casing, motor];
}

/** Place of the centre of gravity of an inertia base. @param pump - places [m] @returns place, where it has one [m] */
export function inertiaBaseAt({ base, position }: Pump): Vec3 | undefined {
  if (base?.inertiaBase === undefined) return undefined;
  return add(position, [base.position[0], base.position[1], base.position[2] - base.inertiaBase.below]);
}

function inertiaBase(pump: Pump): FrameBody['masses'] {
  const at = inertiaBaseAt(pump);
  const mass = pump.base?.inertiaBase?.mass.value;
  if (at === undefined || mass === undefined) return [];
  return [{ name: 'inertia base', at, mass, contents: 0, contentsGroup: 'pump' }];
}

/**
 * Stiffness of the bracket between casing and motor against rocking about any level axis through the motor seat:
 *
 *     k = (2 π f)² (J + m h²)        J of the motor about its centre, h from the seat to there
 *
 * with f the natural frequency of the motor on its bracket, the casing held. The stiffness taken with it gives that
 * frequency again whatever the place of the seat.
 *
 * @param pump - bracket as given; mass [kg], places [m]
 * @returns stiffness [N·m/rad]; undefined where it is rigid or nothing is said of it
 * @source dynamics
 */
export function bracketStiffness(pump: Pump): number | undefined {
  const { bracket, mass, centre } = pump.motor;
  if (bracket === undefined) return undefined;
  if (bracket.kind === 'stiffness')
    return Number.isFinite(bracket.rotation.value) ? bracket.rotation.value : undefined;
  const [about] = motorInertia(pump);
  const arm = centre[2] - seatHeight(pump);
  return (2 * Math.PI * bracket.frequency.value) ** 2 * (about + mass.value * arm ** 2);
}

/**
 * The bracket as a joint: rigid but for rocking.
 *
 * @param pump - bracket as given
 * @returns joint between casing and motor, stiffness [N/m], [N·m/rad]; nothing where it is rigid
 * @source statics
 */
export function bracketJoint(pump: Pump): readonly FrameJoint[] {
  const bending = bracketStiffness(pump);
  if (bending === undefined) return [];
  const rigid = Number.POSITIVE_INFINITY;
  return [
    {
      name: 'motor bracket',
      from: MOTOR_SEAT,
      to: MOTOR_FOOT,
      axis: UP,
      axial: rigid,
      lateral: rigid,
      torsion: rigid,
      bending,
      thrustArea: 0,
      mass: 0,
    },
  ];
}

/** Half-way to the motor's centre of gravity: of a rigid set any place on the shaft axis serves, of a bracket its middle. */
const seatHeight = ({ motor }: Pump): number => motor.centre[2] / 2;

function motorInertia({ motor, outline }: Pump): Vec3 {
  return cylinderInertia(
    motor.mass.value,
    outline.motorDiameter.value,
    2 * Math.max(0, outline.motorTop.value - motor.centre[2]),
  );
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
    [MOTOR_SEAT]: at([0, 0, seatHeight(pump)]),
    ...(bracketStiffness(pump) !== undefined && { [MOTOR_FOOT]: at([0, 0, seatHeight(pump)]) }),
    ...(stands && pump.base && { 'pump base': at(pump.base.position) }),
  };
}
