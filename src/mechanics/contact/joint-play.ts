import type { Movement, Vec3 } from '../../model/conventions.js';
import { cross, dot, norm, scale, subtract } from '../../model/vector.js';
import type { ConditionLoads } from '../frame/condition-loads.js';
import {
  type JointDirection,
  jointElement,
  movementAcross,
  playAtEnd,
} from '../frame/elements/joint-element.js';
import type { PreparedFrame } from '../frame/prepare-frame.js';
import type { Clusters } from '../frame/system/cluster.js';

/** A joint with rods that engage after a gap, or with an angle through which it bends freely. */
export interface JointPlay {
  readonly joint: number;
  readonly from: number;
  readonly to: number;
  readonly ends: { readonly from: Vec3; readonly to: Vec3 };
  /** From `from` to `to` [-]. */
  readonly axis: Vec3;
  /** Its six directions without play [N/m], [N·m/rad]. */
  readonly directions: readonly JointDirection[];
  /** Own axial stiffness [N/m] and bending stiffness [N·m/rad]; Infinity is rigid. */
  readonly axial: number;
  readonly bending: number;
  readonly hasRods: boolean;
  readonly bendsFreely: boolean;
  /** [m]; 0 without rods. */
  readonly rodGap: number;
  /** [rad]; 0 where it does not bend freely. */
  readonly freeRotation: number;
}

/** What the rods and the free bending of a joint do at the moment. */
export interface JointPlayState {
  /** `closed`: held at the length it was set to. */
  readonly rods?: 'closed' | 'slack' | 'engaged';
  /** `centred`: held straight, because nothing says which way it would bend. */
  readonly turning?: 'free' | 'centred' | 'limit';
  /** At the limit: about which axis, with what moment [N·m], at what angle [rad]. */
  readonly way?: { readonly direction: Vec3; readonly moment: number; readonly angle: number };
}

/**
 * Joints with rods or free bending that stand between two parts that can move against each other.
 *
 * @param prepared - the frame
 * @param clusters - which joints stand
 * @returns joints with play, in the order of the frame [m], [rad]
 * @source statics
 */
export function jointPlays(prepared: PreparedFrame, clusters: Clusters): readonly JointPlay[] {
  const { frame, memberCount, places } = prepared;
  return frame.joints.flatMap((joint, index): readonly JointPlay[] => {
    if (joint.rodGap === undefined && joint.freeRotation === undefined) return [];
    if (clusters.jointStands[index] === false) return [];
    const from = prepared.from[memberCount + index]!;
    const to = prepared.to[memberCount + index]!;
    if (clusters.nodeOf[from] === clusters.nodeOf[to]) return [];
    const directions = prepared.jointDirections[index]!;
    const { rodGap, freeRotation, axial, bending } = joint;
    return [
      {
        joint: index,
        from,
        to,
        ends: { from: places[from]!, to: places[to]! },
        axis: directions[0]!.direction,
        directions,
        axial,
        bending,
        hasRods: rodGap !== undefined,
        bendsFreely: freeRotation !== undefined,
        rodGap: rodGap ?? 0,
        freeRotation: freeRotation ?? 0,
      },
    ];
  });
}

/**
 * Where joints with play start: rods slack, bending free; a joint whose rate is rigid starts at its set length.
 *
 * @param plays - joints with play
 * @returns one state a joint
 * @source statics
 */
export function startPlay(plays: readonly JointPlay[]): JointPlayState[] {
  return plays.map(({ hasRods, bendsFreely, axial }) => ({
    ...(hasRods && { rods: Number.isFinite(axial) ? ('slack' as const) : ('closed' as const) }),
    ...(bendsFreely && { turning: 'free' as const }),
  }));
}

/** The six directions of a joint in its state; [N/m], [N·m/rad]. */
function standingDirections(play: JointPlay, state: JointPlayState): readonly JointDirection[] {
  const { axis, axial, bending } = play;
  const along = state.rods === undefined ? axial : axialStiffness(axial, state.rods);
  const first: JointDirection = { direction: axis, acts: 'translation', stiffness: along };
  const others = play.directions.slice(1, 4);
  const turns = play.directions.slice(4);
  if (state.turning === undefined) return [first, ...others, ...turns];
  const turn = (direction: Vec3, stiffness: number): JointDirection => ({
    direction,
    acts: 'rotation',
    stiffness,
  });
  if (state.turning === 'limit' && state.way !== undefined) {
    const { direction, moment, angle } = state.way;
    // Square to the way it bends, the moment turns with the angle: it vanishes once the way is right.
    const square = angle > 0 ? moment / angle : 0;
    return [first, ...others, turn(direction, bending), turn(cross(axis, direction), square)];
  }
  const held = state.turning === 'centred' ? Number.POSITIVE_INFINITY : 0;
  return [first, ...others, ...turns.map(({ direction }) => turn(direction, held))];
}

function axialStiffness(own: number, rods: 'closed' | 'slack' | 'engaged'): number {
  if (rods !== 'slack') return Number.POSITIVE_INFINITY;
  // A joint that cannot be pressed shorter is, within the gap of its rods, not stretched at any rate that is known.
  return Number.isFinite(own) ? own : 0;
}

/**
 * The frame with its joints as they stand in their states.
 *
 * @param prepared - the frame
 * @param plays - joints with play
 * @param states - one a joint
 * @returns the same frame where no joint has play, else one with other joint elements [N/m]
 * @source statics
 */
export function withPlay(
  prepared: PreparedFrame,
  plays: readonly JointPlay[],
  states: readonly JointPlayState[],
): PreparedFrame {
  if (plays.length === 0) return prepared;
  const stiffness = Float64Array.from(prepared.stiffness);
  const jointDirections = [...prepared.jointDirections];
  plays.forEach((play, index) => {
    const directions = standingDirections(play, states[index]!);
    jointDirections[play.joint] = directions;
    stiffness.set(jointElement(directions, play.ends).stiffness, 36 * (prepared.memberCount + play.joint));
  });
  return { ...prepared, stiffness, jointDirections };
}

/**
 * The loads with the play that joints have used up.
 *
 * @param loads - what acts
 * @param prepared - the frame
 * @param plays - joints with play
 * @param states - one a joint
 * @returns the same loads where no joint has play [m], [rad]
 * @source statics
 */
export function loadsWithPlay(
  loads: ConditionLoads,
  prepared: PreparedFrame,
  plays: readonly JointPlay[],
  states: readonly JointPlayState[],
): ConditionLoads {
  if (plays.length === 0) return loads;
  const freeMovement = Float64Array.from(loads.freeMovement);
  const play = new Map<number, Movement>();
  plays.forEach((each, index) => {
    const { rods, turning, way } = states[index]!;
    const used: Movement = {
      translation: rods === 'engaged' ? scale(each.axis, each.rodGap) : [0, 0, 0],
      rotation:
        turning === 'limit' && way !== undefined ? scale(way.direction, each.freeRotation) : [0, 0, 0],
    };
    play.set(each.joint, used);
    freeMovement.set(playAtEnd(used, each.ends), 6 * (prepared.memberCount + each.joint));
  });
  return { ...loads, freeMovement, play };
}

/**
 * Text that is the same for two lists of states that give the same stiffness.
 *
 * @param states - one a joint with play
 * @returns key [-]
 * @source statics
 */
export function playKey(states: readonly JointPlayState[]): string {
  return states
    .map(({ rods = '', turning = '', way }) => {
      const about = way === undefined ? '' : `${way.direction.join(',')}@${way.moment / way.angle}`;
      return `${rods}.${turning}.${about}`;
    })
    .join(';');
}

/**
 * Lengthening and bending of a joint.
 *
 * @param play - the joint
 * @param movements - six numbers a point [m], [rad]
 * @returns lengthening along its axis [m], and bending as a vector across it [rad]
 * @source statics
 */
export function playMovement(
  play: JointPlay,
  movements: Float64Array,
): { readonly lengthening: number; readonly bending: Vec3 } {
  const across = movementAcross(play.ends, movementAt(movements, play.from), movementAt(movements, play.to));
  const twist = dot(across.rotation, play.axis);
  return {
    lengthening: dot(across.translation, play.axis),
    bending: subtract(across.rotation, scale(play.axis, twist)),
  };
}

/**
 * A loose joint that a free movement goes through: it is held where it was set, and released if it is pressed.
 *
 * @param plays - joints with play
 * @param states - one a joint
 * @param movements - free movement, six numbers a point [-]
 * @returns number of the joint among those with play and its new state, or undefined where none gives
 * @source statics
 */
export function looseJoint(
  plays: readonly JointPlay[],
  states: readonly JointPlayState[],
  movements: Float64Array,
): { readonly play: number; readonly to: JointPlayState } | undefined {
  const largest = movements.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  for (const [index, each] of plays.entries()) {
    const state = states[index]!;
    const { lengthening, bending } = playMovement(each, movements);
    if (state.rods === 'slack' && Math.abs(lengthening) > 1e-6 * largest)
      return { play: index, to: { ...state, rods: 'closed' } };
    if (state.turning === 'free' && norm(bending) > 1e-6 * largest)
      return { play: index, to: { ...state, turning: 'centred' } };
  }
  return undefined;
}

function movementAt(movements: Float64Array, point: number): Movement {
  const at = 6 * point;
  return {
    translation: [movements[at]!, movements[at + 1]!, movements[at + 2]!],
    rotation: [movements[at + 3]!, movements[at + 4]!, movements[at + 5]!],
  };
}
