/** The lift over the motor: eyes, sling, hook and anchor in their heights. */
import { type Capsule, type Group, plus } from '../../geometry/index.js';
import type { Installation } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import type { PumpSolids } from './pump-solids.js';

/** Heights and places of a lift, motor in its seat. */
export interface LiftGeometry {
  readonly anchor: Vec3;
  /** Lifting eyes [m]. */
  readonly eyes: readonly Vec3[];
  /** Over the eyes: top of the sling, and bearing of the hook; absent where the sling is not given [m]. */
  readonly slingHeight?: number;
  readonly hookHeight?: number;
  /** From the anchor to the bearing of the hook, hoist pulled up; absent where it is not given [m]. */
  readonly hoistHeight?: number;
  /** From the eyes to the anchor [m]. */
  readonly available: number;
  /** From the eyes to the anchor, as sling, hook and hoist take it up; absent where one of them is not given [m]. */
  readonly gear?: number;
  /** How far the anchor stands off the centre line of the motor in plan [m]. */
  readonly offCentre: number;
  /** Legs of the sling and the hook over it, motor in its seat [m]. */
  readonly rigging?: Group;
}

/** Radius of sling legs and hook: half an inch [m]. */
const ROPE = 0.0127;

/**
 * The lift over the motor.
 *
 *     gear = height of the sling + hook to sling + hoist pulled up
 *
 * @param installation - room and pump [m]
 * @param pump - solids of the pump [m]
 * @returns heights and places; nothing where the file gives no lift [m]
 * @source statics
 */
export function liftGeometry(installation: Installation, pump: PumpSolids): LiftGeometry | undefined {
  const { lift } = installation.room;
  if (lift === undefined) return undefined;
  const { anchor, sling, hoistHeight, hookToSling } = lift;
  const [east, north] = installation.pump.position;
  const centre: Vec3 = [east, north, pump.eyes];
  const half = (sling?.spread ?? 0) / 2;
  const count = sling?.legs ?? 1;
  const bearing = eyeBearing(installation);
  const eyes = Array.from({ length: count }, (_, index): Vec3 => {
    const turn = bearing + (2 * Math.PI * index) / count;
    return plus(centre, [half * Math.sin(turn), half * Math.cos(turn), 0]);
  });
  const hookHeight = sling && sling.height.value + hookToSling.value;
  return {
    anchor,
    eyes,
    available: anchor[2] - pump.eyes,
    offCentre: Math.hypot(anchor[0] - east, anchor[1] - north),
    ...(hoistHeight && { hoistHeight: hoistHeight.value }),
    ...(sling && { slingHeight: sling.height.value }),
    ...(hookHeight !== undefined && { hookHeight }),
    ...(hookHeight !== undefined && hoistHeight && { gear: hookHeight + hoistHeight.value }),
    ...(sling && { rigging: rigging(eyes, centre, sling.height.value, hookToSling.value) }),
  };
}

/** Eyes stand across the terminal box, or across the ports where there is none [rad]. */
function eyeBearing({ pump }: Installation): number {
  const side = pump.dimensions?.terminalBox?.side ?? pump.ports.discharge.facing;
  return Math.atan2(side[0], side[1]) + Math.PI / 2;
}

function rigging(eyes: readonly Vec3[], centre: Vec3, height: number, hook: number): Group {
  const top = plus(centre, [0, 0, height]);
  const line = (from: Vec3, to: Vec3): Capsule => ({ kind: 'capsule', from, to, radius: ROPE });
  return {
    kind: 'group',
    pieces: [...eyes.map((eye) => line(eye, top)), line(top, plus(top, [0, 0, hook]))],
  };
}

/**
 * How much more a leg of a sling pulls than an upright one.
 *
 *     factor = 1 / sin(angle from the level)
 *
 * @param angle - of the leg from the level [rad]
 * @returns factor [-]
 * @source sling-tables
 */
export function slingFactor(angle: number): number {
  return 1 / Math.sin(angle);
}

/**
 * Legs that can be relied on to carry: of four, a stiff load may hang in two that lie across from each other.
 *
 * @param legs - legs of the sling [-]
 * @returns legs that carry [-]
 * @source statics
 */
export function carryingLegs(legs: number): number {
  return legs > 3 ? 2 : legs;
}

/**
 * Pull in one leg of a sling.
 *
 *     pull = load / legs that carry × 1 / sin(angle)
 *
 * @param load - what hangs in the sling [N]
 * @param legs - legs of the sling [-]
 * @param angle - of the legs from the level [rad]
 * @returns pull in the leg that carries most [N]
 * @source sling-tables
 */
export function legPull(load: number, legs: number, angle: number): number {
  return (load / carryingLegs(legs)) * slingFactor(angle);
}
