import type { Vec3 } from '../../model/conventions.js';
import { add, dot, norm, scale, subtract } from '../../model/vector.js';
import { rowForces } from '../frame/respond.js';
import type { JointState } from '../frame/response.js';
import type { Solution } from '../frame/solve-condition.js';
import type { System } from '../frame/system/system.js';
import { type JointPlay, type JointPlayState, playMovement } from './joint-play.js';

/** What a joint with play should do instead. */
export interface PlayChange {
  readonly play: number;
  readonly to: JointPlayState;
}

/** Verdict on all joints with play after one solution. */
export interface PlayVerdict {
  readonly changes: readonly PlayChange[];
  /** Joints at their limit, with the newest way they bend. */
  readonly ways: readonly PlayChange[];
  /** True when every such way agrees with the solution. */
  readonly waysFit: boolean;
}

/** Sizes under which a force, a moment, a movement and an angle count as none. */
export interface Tolerances {
  /** [N], and with a lever of one metre [N·m] */
  readonly force: number;
  /** [m] and [rad] */
  readonly step: number;
}

/** What rigid directions of a joint exert on its `to` side [N], [N·m]. */
function heldBy(system: System, solution: Solution): ReadonlyMap<number, { force: Vec3; moment: Vec3 }> {
  const held = new Map<number, { force: Vec3; moment: Vec3 }>();
  const forces = rowForces(system, solution);
  system.unknowns.rows.forEach((row, index) => {
    if (row.of.kind !== 'joint') return;
    const sum = held.get(row.of.joint) ?? { force: [0, 0, 0], moment: [0, 0, 0] };
    const push = scale(row.of.direction, forces[index]!);
    if (row.of.acts === 'translation') sum.force = add(sum.force, push);
    else sum.moment = add(sum.moment, push);
    held.set(row.of.joint, sum);
  });
  return held;
}

/** Tension of the rods of a joint that are engaged [N]: what holds it, less what its own rate carries at the gap. */
function rodTension(play: JointPlay, held: Vec3): number {
  const { axial, axis, rodGap } = play;
  return -dot(held, axis) - (Number.isFinite(axial) ? axial * rodGap : 0);
}

/** Moment with which a joint at its limit resists further bending [N·m]. */
function limitMoment(play: JointPlay, way: Vec3, held: Vec3, bending: Vec3): number {
  const own = play.bending;
  return Number.isFinite(own) ? own * (dot(bending, way) - play.freeRotation) : -dot(held, way);
}

/**
 * Compares what each joint with play was taken to do with the solution that came of it.
 *
 *     rods slack      engage when the joint is longer by more than their gap; a rigid joint closes when shortened
 *     rods engaged    let go when they would have to push
 *     closed          goes to the side that it is pressed
 *     bending free    takes hold when the resultant angle is past the limit
 *     at the limit    lets go when it would have to pull back; M and θ point the same way:  M = k (θ − θ_free)
 *
 * @param plays - joints with play
 * @param states - one a joint
 * @param system - constraint rows
 * @param solution - movements [m], [rad] and forces [N]
 * @param tolerances - what counts as none [N], [m]
 * @returns changes wanted, and how bending at the limit goes on
 * @source statics
 */
export function judgeJoints(
  plays: readonly JointPlay[],
  states: readonly JointPlayState[],
  system: System,
  solution: Solution,
  tolerances: Tolerances,
): PlayVerdict {
  const changes: PlayChange[] = [];
  const ways: PlayChange[] = [];
  let waysFit = true;
  if (plays.length === 0) return { changes, ways, waysFit };
  const { force: least, step } = tolerances;
  const held = heldBy(system, solution);
  plays.forEach((play, index) => {
    const state = states[index]!;
    const { force, moment } = held.get(play.joint) ?? { force: [0, 0, 0], moment: [0, 0, 0] };
    const { lengthening, bending } = playMovement(play, solution.movements);
    const rods = nextRods(play, state, force, lengthening, tolerances);
    if (rods !== state.rods && rods !== undefined) {
      changes.push({ play: index, to: { ...state, rods } });
      return;
    }
    const angle = norm(bending);
    if (state.turning === 'free' && angle > play.freeRotation + step) {
      const way = { direction: scale(bending, 1 / angle), moment: 0, angle };
      changes.push({ play: index, to: { ...state, turning: 'limit', way } });
    } else if (state.turning === 'centred') {
      const across = subtract(moment, scale(play.axis, dot(moment, play.axis)));
      const size = norm(across);
      if (size <= least) return;
      const way = { direction: scale(across, -1 / size), moment: size, angle: play.freeRotation };
      changes.push({ play: index, to: { ...state, turning: 'limit', way } });
    } else if (state.turning === 'limit' && state.way !== undefined) {
      const { direction } = state.way;
      const resisting = limitMoment(play, direction, moment, bending);
      if (resisting < -least) {
        const { way: _, ...without } = state;
        changes.push({ play: index, to: { ...without, turning: 'free' } });
        return;
      }
      const turned = angle > step ? scale(bending, 1 / angle) : direction;
      if (norm(subtract(turned, direction)) > 1e-9) waysFit = false;
      ways.push({
        play: index,
        to: { ...state, way: { direction: turned, moment: Math.max(0, resisting), angle } },
      });
    }
  });
  return { changes, ways, waysFit };
}

function nextRods(
  play: JointPlay,
  { rods }: JointPlayState,
  held: Vec3,
  lengthening: number,
  { force: least, step }: Tolerances,
): JointPlayState['rods'] {
  const isRigid = !Number.isFinite(play.axial);
  if (rods === 'slack') {
    if (lengthening > play.rodGap + step) return 'engaged';
    return isRigid && lengthening < -step ? 'closed' : 'slack';
  }
  if (rods === 'engaged') return rodTension(play, held) < -least ? 'slack' : 'engaged';
  if (rods === 'closed') {
    const tension = -dot(held, play.axis);
    if (tension > least) return 'engaged';
    return !isRigid && tension < -least ? 'slack' : 'closed';
  }
  return rods;
}

/**
 * What every joint with play does in the end.
 *
 * @param plays - joints with play
 * @param states - one a joint
 * @param system - constraint rows
 * @param solution - movements [m], [rad] and forces [N]
 * @returns by name of the joint: rods with their tension [N] and the lengthening [m], bending with its angle [rad]
 * @source statics
 */
export function namedJointStates(
  plays: readonly JointPlay[],
  states: readonly JointPlayState[],
  system: System,
  solution: Solution,
): Record<string, JointState> {
  const named: Record<string, JointState> = {};
  if (plays.length === 0) return named;
  const held = heldBy(system, solution);
  plays.forEach((play, index) => {
    const { rods, turning } = states[index]!;
    const { lengthening, bending } = playMovement(play, solution.movements);
    const force = held.get(play.joint)?.force ?? [0, 0, 0];
    named[system.prepared.frame.joints[play.joint]!.name] = {
      lengthening,
      angle: norm(bending),
      ...(rods !== undefined && {
        rods: rods === 'engaged' ? 'engaged' : 'slack',
        rodTension: rods === 'engaged' ? Math.max(0, rodTension(play, force)) : 0,
      }),
      ...(turning !== undefined && { bending: turning === 'limit' ? 'at limit' : 'free' }),
    };
  });
  return named;
}
