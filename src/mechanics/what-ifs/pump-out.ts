import { EngineError, engineError } from '../../issues/issue.js';
import type { Movement, Vec3 } from '../../model/conventions.js';
import type { Frame, FrameCondition, FrameSupport } from '../../model/frame/frame.js';
import { nozzleAxes } from '../../model/nozzle-axes.js';
import { cross, dot, norm, scale, subtract } from '../../model/vector.js';
import { carrierOf } from '../frame/hanging-joints.js';
import { clampAt, isSetSpring, pinnedFrame, propAt } from '../frame/held-frame.js';
import { prepareFrame } from '../frame/prepare-frame.js';
import type { ConditionResponse, UnsolvedCondition } from '../frame/response.js';
import { frameSolver } from '../frame/solve-frame.js';
import type { NozzleFace } from './fit-up.js';
import { openedJoint } from './opened-joint.js';

/**
 * How an open flange has moved from where it was bolted: the line's face at the pump, which is that of a connector where
 * one is bolted there.
 */
export interface FlangeSpring {
  /** Up positive [m]. */
  readonly rise: number;
  /** Along the nozzle, away from the pump positive: the gap that opens [m]. */
  readonly gap: number;
  /** Level and square to the nozzle, in plan axes; up and down is in `rise` [m]. */
  readonly sideways: Vec3;
  /** Angle between the faces [rad]. */
  readonly tilt: number;
  /** Side of the face where the gap is widest, unit vector; zero where the faces are parallel. */
  readonly widest: Vec3;
  /** Turn about the nozzle's axis, which carries the bolt holes round [rad]. */
  readonly twist: number;
}

/** What one line does when the pump is lifted out. */
export interface OpenFlange {
  readonly which: NozzleFace['which'];
  /** Absent where the line falls. */
  readonly spring?: FlangeSpring;
  /** With every spring pinned where it stood; absent where there are no springs or the line falls. */
  readonly pinnedSpring?: FlangeSpring;
  /** Why the line falls without the pump. */
  readonly falls?: UnsolvedCondition;
  /** Force of a prop that keeps the flange at its height, up positive [N]; absent where that alone does not hold it. */
  readonly prop?: number;
  /** The same with every spring pinned [N]. */
  readonly pinnedProp?: number;
}

/** A spring that pushes as soon as the pump's weight is gone. */
export interface SpringToPin {
  readonly mark: string;
  /** Load with the line filled and bolted [N]. */
  readonly filled: number;
  /** Load left when the line is free [N]. */
  readonly free: number;
  /** How far the line rises there, negative for a fall [m]. */
  readonly rise: number;
}

/** What the fitter meets when the pump comes out. */
export interface PumpOut {
  /** Suction first. */
  readonly flanges: readonly OpenFlange[];
  /** The spring that throws most first; empty where a line falls. */
  readonly springs: readonly SpringToPin[];
}

/**
 * What both lines do when the pump is lifted out, and what keeps them where they are.
 *
 * Movements are those from the line as bolted, filled, to the line left alone. Props are solved with every support as
 * it then acts: a rigid support that keeps the flange at its bolted height, so that on a line without one-way supports
 * its force is the movement over the flexibility of the flange,
 *
 *     P = −rise / f,   f = rise for a unit force up
 *
 * A line that falls is looked at while the other is held where it was, so that one is not blamed for the other.
 *
 * @param frame - the frame
 * @param conditions - as bolted, and with the pump out
 * @param pump - name of the body that is the pump [-]
 * @param faces - nozzles with their points and axes
 * @returns springing of every open flange [m], [rad], props [N] and springs
 * @throws EngineError as `solveFrame` when the bolted condition has no solution
 * @source beam-theory
 */
export function pumpOut(
  frame: Frame,
  conditions: { readonly bolted: FrameCondition; readonly out: FrameCondition },
  pump: string,
  faces: readonly NozzleFace[],
): PumpOut {
  const { bolted, out } = conditions;
  const before = solveWith(frame, bolted, []);
  if ('code' in before) throw engineError(before);
  const standing = faces.filter(({ point, axis }) => openedJoint(frame, { body: pump, point, axis }));
  const had = (point: string) => before.movements[point]!;
  // A connector bolted to the pump is left hanging: what is held and propped is the pipe's flange behind it.
  const held = ({ point }: NozzleFace) => carrierOf(frame, out.removed, point);
  const clamp = (face: NozzleFace) => clampAt(`${face.which} line held`, held(face), had(held(face)));
  const prop = (face: NozzleFace) => propAt(`prop at ${face.which} flange`, held(face), had(held(face)));
  const after = solveWith(frame, out, []);
  const hasSprings = frame.supports.some(
    ({ name, restraints }) => !out.absent.includes(name) && restraints.some(isSetSpring),
  );
  const pinned = hasSprings ? pinnedFrame(frame, before.movements) : undefined;
  const flanges = standing.map((face): OpenFlange => {
    const { which, point, axis } = face;
    const others = standing.filter((other) => other !== face);
    const read = (whole: Frame, known?: ConditionResponse | UnsolvedCondition): Omit<OpenFlange, 'which'> => {
      const alone = known === undefined || 'code' in known ? solveWith(whole, out, others.map(clamp)) : known;
      const propped = solveWith(whole, out, [prop(face), ...others.map(prop)]);
      const kept = 'code' in propped ? solveWith(whole, out, [prop(face), ...others.map(clamp)]) : propped;
      return {
        ...('code' in alone
          ? { falls: alone }
          : { spring: flangeSpring(had(point), alone.movements[point]!, axis) }),
        ...(!('code' in kept) && { prop: -kept.supports[prop(face).name]!.load.force[2] }),
      };
    };
    const plain = read(frame, after);
    if (pinned === undefined) return { which, ...plain };
    const { spring: pinnedSpring, prop: pinnedProp } = read(pinned);
    return {
      which,
      ...plain,
      ...(pinnedSpring && { pinnedSpring }),
      ...(pinnedProp !== undefined && { pinnedProp }),
    };
  });
  return { flanges, springs: 'code' in after ? [] : springsToPin(frame, out, before, after) };
}

/** Solves with further supports; what cannot stand is an answer. */
function solveWith(
  frame: Frame,
  condition: FrameCondition,
  further: readonly FrameSupport[],
): ConditionResponse | UnsolvedCondition {
  try {
    const whole = further.length === 0 ? frame : { ...frame, supports: [...frame.supports, ...further] };
    return frameSolver(prepareFrame(whole))(condition).response;
  } catch (error) {
    if (error instanceof EngineError) return { code: error.code, data: error.data };
    throw error;
  }
}

/**
 * How one flange face has moved against another that stood in its place.
 *
 * @param before - movement of the face as bolted [m], [rad]
 * @param after - movement left alone [m], [rad]
 * @param axis - outward axis of the nozzle [-]
 * @returns rise, gap, sideways offset [m], tilt and twist [rad]
 * @source statics
 */
export function flangeSpring(before: Movement, after: Movement, axis: Vec3): FlangeSpring {
  const { along } = nozzleAxes(axis);
  const moved = subtract(after.translation, before.translation);
  const turned = subtract(after.rotation, before.rotation);
  const gap = dot(moved, along);
  const flat = subtract(moved, scale(along, gap));
  const bending = subtract(turned, scale(along, dot(turned, along)));
  // A point of the face at r goes θ × r; along the axis that is r · (a × θ): widest where r points along a × θ.
  const towards = cross(along, bending);
  const tilt = norm(bending);
  return {
    rise: moved[2],
    gap,
    sideways: [flat[0], flat[1], 0],
    tilt,
    widest: tilt > 0 ? scale(towards, 1 / tilt) : [0, 0, 0],
    twist: dot(turned, along),
  };
}

function springsToPin(
  frame: Frame,
  out: FrameCondition,
  before: ConditionResponse,
  after: ConditionResponse,
): readonly SpringToPin[] {
  return frame.supports
    .filter(({ name, restraints }) => !out.absent.includes(name) && restraints.some(isSetSpring))
    .map((support) => {
      const height = (response: ConditionResponse) => response.movements[support.point]!.translation[2];
      const load = (response: ConditionResponse) => -response.supports[support.name]!.load.force[2];
      return {
        mark: support.name,
        filled: load(before),
        free: load(after),
        rise: height(after) - height(before),
      };
    })
    .sort((a, b) => Math.abs(b.filled - b.free) - Math.abs(a.filled - a.free));
}
