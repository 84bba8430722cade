import type { Vec3 } from '../../model/conventions.js';
import type { Frame, FrameBend, FramePipe } from '../../model/frame/frame.js';
import { arcOf, bendElement } from './elements/bend-element.js';
import type { Element } from './elements/element.js';
import { type JointDirection, jointAxis, jointDirections, jointElement } from './elements/joint-element.js';
import { pipeElement } from './elements/pipe-element.js';
import { memberCompliance } from './elements/tube-section.js';
import { validateFrame } from './validate-frame.js';

/** A frame with numbers for names and its elements worked out; members first, then joints. */
export interface PreparedFrame {
  readonly frame: Frame;
  readonly pointNames: readonly string[];
  readonly pointNumber: ReadonlyMap<string, number>;
  readonly places: readonly Vec3[];
  readonly memberCount: number;
  readonly elementCount: number;
  /** Point numbers of the ends of each element. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Six by six numbers an element, see `element.ts` [N/m, N, N·m]. */
  readonly stiffness: Float64Array;
  /** Three numbers an element [m]. */
  readonly arm: Float64Array;
  /** Three numbers an element [m]. */
  readonly centroid: Float64Array;
  /** Six by three numbers an element [m²/N, m/N]. */
  readonly weightMovement: Float64Array;
  /** [m] */
  readonly length: Float64Array;
  /** Six directions of each joint, as it stands at the moment [N/m], [N·m/rad]. */
  readonly jointDirections: readonly (readonly JointDirection[])[];
}

/**
 * Checks a frame and works out its elements, once for all conditions.
 *
 * @param frame - the frame, SI
 * @returns elements in plan axes [N/m, m]
 * @throws EngineError as `validateFrame` and `arcOf`
 * @source beam-theory
 */
export function prepareFrame(frame: Frame): PreparedFrame {
  validateFrame(frame);
  const pointNames = Object.keys(frame.points);
  const pointNumber = new Map(pointNames.map((name, index) => [name, index]));
  const places = Object.values(frame.points);
  const memberCount = frame.members.length;
  const elementCount = memberCount + frame.joints.length;
  const prepared = {
    frame,
    pointNames,
    pointNumber,
    places,
    memberCount,
    elementCount,
    from: new Int32Array(elementCount),
    to: new Int32Array(elementCount),
    stiffness: new Float64Array(36 * elementCount),
    arm: new Float64Array(3 * elementCount),
    centroid: new Float64Array(3 * elementCount),
    weightMovement: new Float64Array(18 * elementCount),
    length: new Float64Array(elementCount),
    jointDirections: frame.joints.map((joint) => {
      const ends = { from: frame.points[joint.from]!, to: frame.points[joint.to]! };
      return jointDirections(joint, jointAxis(joint, ends));
    }),
  };
  const store = (index: number, from: string, to: string, element: Element): void => {
    prepared.from[index] = pointNumber.get(from)!;
    prepared.to[index] = pointNumber.get(to)!;
    prepared.stiffness.set(element.stiffness, 36 * index);
    prepared.arm.set(element.arm, 3 * index);
    prepared.centroid.set(element.centroid, 3 * index);
    prepared.weightMovement.set(element.weightMovement, 18 * index);
    prepared.length[index] = element.length;
  };
  frame.members.forEach((member, index) => {
    store(index, member.from, member.to, memberElement(frame, member));
  });
  frame.joints.forEach((joint, index) => {
    const ends = { from: frame.points[joint.from]!, to: frame.points[joint.to]! };
    store(memberCount + index, joint.from, joint.to, jointElement(prepared.jointDirections[index]!, ends));
  });
  return prepared;
}

/**
 * The element of a pipe or bend.
 *
 * @param frame - for places [m], materials [Pa] and options
 * @param member - pipe or bend
 * @returns the element in plan axes [N/m]
 * @throws EngineError as `arcOf`
 * @source beam-theory
 */
export function memberElement(frame: Frame, member: FramePipe | FrameBend): Element {
  const material = frame.materials[member.material]!;
  const withoutShear = frame.options?.withoutShear === true;
  const from = frame.points[member.from]!;
  const to = frame.points[member.to]!;
  const before = known.get(member);
  if (
    before !== undefined &&
    before.material === material &&
    before.withoutShear === withoutShear &&
    isPlace(before.from, from) &&
    isPlace(before.to, to)
  )
    return before.element;
  const element = newElement(member, { from, to }, memberCompliance(member, material, withoutShear));
  known.set(member, { material, withoutShear, from, to, element });
  return element;
}

/**
 * Elements by member: the same line is solved again and again with other supports, and members are plain data that
 * nobody changes.
 */
const known = new WeakMap<
  FramePipe | FrameBend,
  {
    readonly material: Frame['materials'][string];
    readonly withoutShear: boolean;
    readonly from: Vec3;
    readonly to: Vec3;
    readonly element: Element;
  }
>();

const isPlace = (one: Vec3, other: Vec3): boolean =>
  one[0] === other[0] && one[1] === other[1] && one[2] === other[2];

function newElement(
  member: FramePipe | FrameBend,
  { from, to }: { readonly from: Vec3; readonly to: Vec3 },
  compliance: ReturnType<typeof memberCompliance>,
): Element {
  if (member.kind === 'pipe') return pipeElement(from, to, compliance);
  const arc = arcOf(member.name, { from, to, centre: member.centre });
  return bendElement(arc, compliance);
}
