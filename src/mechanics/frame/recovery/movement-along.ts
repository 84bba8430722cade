import { gaussLegendre } from '../../../algebra/gauss-legendre.js';
import { largestOnUnit } from '../../../algebra/largest-on-unit.js';
import { EngineError } from '../../../issues/issue.js';
import type { Movement, Vec3 } from '../../../model/conventions.js';
import type { Frame, FrameCondition } from '../../../model/frame/frame.js';
import { add, cross, dot, norm, scale, subtract, UP } from '../../../model/vector.js';
import { movedMovement } from '../elements/rigid-arm.js';
import { memberStrain } from '../elements/thermal-strain.js';
import { memberCompliance } from '../elements/tube-section.js';
import type { ConditionResponse } from '../response.js';
import { sectionWrenches } from './member-forces.js';
import { memberNamed, memberPath } from './member-path.js';

const RULE = gaussLegendre(16);

/**
 * Movement of any place on a member, exact with its distributed weight.
 *
 *     u(x) = u_from + θ_from × (x − x_from) + ε (x − x_from) + ∫ [γ + κ × (x − ξ)] dξ,   θ(x) = θ_from + ∫ κ dξ
 *     γ, κ: strain and curvature from the wrench on the section at ξ
 *
 * @param frame - the frame solved
 * @param condition - the condition solved
 * @param response - its response
 * @param member - name of the member [-]
 * @returns movement by share of the length from the `from` end [m], [rad]
 * @throws EngineError `mechanics.unknown-name`
 * @source beam-theory
 */
export function movementAlong(
  frame: Frame,
  condition: FrameCondition,
  response: ConditionResponse,
  member: string,
): (share: number) => Movement {
  const found = memberNamed(frame, member);
  const path = memberPath(frame, found);
  const wrenchAt = sectionWrenches(frame, condition, response, found, path);
  const material = frame.materials[found.material]!;
  const f = memberCompliance(found, material, frame.options?.withoutShear === true);
  const strain = memberStrain(frame, found, condition);
  const start = response.movements[found.from]!;
  const from = frame.points[found.from]!;
  return (share) => {
    const here = path.place(share);
    const arm = subtract(here, from);
    const rigid = movedMovement(start, arm);
    let translation = add(rigid.translation, scale(arm, strain));
    let rotation = rigid.rotation;
    for (let g = 0; g < RULE.points.length; g++) {
      const s = RULE.points[g]! * share;
      const weight = RULE.weights[g]! * share * path.length;
      const { along, inPlane, across } = path.axes(s);
      const { force, moment } = wrenchAt(s);
      const give = (vector: Vec3, lengthwise: number, square: number): Vec3 =>
        add(
          scale(along, lengthwise * dot(vector, along)),
          add(scale(inPlane, square * dot(vector, inPlane)), scale(across, square * dot(vector, across))),
        );
      const curvature = give(moment, f.torsion, f.bending);
      const stretch = add(give(force, f.axial, f.shear), cross(curvature, subtract(here, path.place(s))));
      translation = add(translation, scale(stretch, weight));
      rotation = add(rotation, scale(curvature, weight));
    }
    return { translation, rotation };
  };
}

/** How far a run of members hangs below the straight line between its ends. */
export interface Sag {
  /** Largest distance below the line between the moved ends, along gravity; 0 where it rises everywhere [m]. */
  readonly sag: number;
  readonly member: string;
  /** Share of that member's length from its `from` end [-]. */
  readonly share: number;
}

/**
 * Largest sag of a run of members below the straight line between its two ends, measured along gravity.
 *
 *     sag(d) = −up · [u(d) − (1 − d/L) u_start − (d/L) u_end]     d along the run
 *
 * @param frame - the frame solved
 * @param condition - the condition solved
 * @param response - its response
 * @param members - names of members in the order in which they are joined [-]
 * @returns largest sag [m] and where it is
 * @throws EngineError `mechanics.not-a-chain`; data: `members`
 * @source beam-theory
 */
export function sagAlong(
  frame: Frame,
  condition: FrameCondition,
  response: ConditionResponse,
  members: readonly string[],
): Sag {
  const chain = orient(frame, members);
  const weight = norm(condition.gravity);
  const up = weight > 0 ? scale(condition.gravity, -1 / weight) : UP;
  const total = chain.reduce((sum, link) => sum + link.length, 0);
  const first = chain[0]!;
  const last = chain[chain.length - 1]!;
  const endMovement = (point: string) => response.movements[point]!.translation;
  const start = dot(up, endMovement(first.reversed ? first.to : first.from));
  const end = dot(up, endMovement(last.reversed ? last.from : last.to));
  let before = 0;
  let best: Sag = { sag: 0, member: first.name, share: first.reversed ? 1 : 0 };
  for (const link of chain) {
    const moved = movementAlong(frame, condition, response, link.name);
    const sag = (share: number) => {
      const d = (before + (link.reversed ? 1 - share : share) * link.length) / total;
      return (1 - d) * start + d * end - dot(up, moved(share).translation);
    };
    const { at, value } = largestOnUnit(sag, 16);
    if (value > best.sag) best = { sag: value, member: link.name, share: at };
    before += link.length;
  }
  return best;
}

interface Link {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly length: number;
  readonly reversed: boolean;
}

function orient(frame: Frame, members: readonly string[]): readonly Link[] {
  const found = members.map((name) => memberNamed(frame, name));
  const refuse = () => new EngineError('mechanics.not-a-chain', { members });
  const head = found[0];
  if (head === undefined) throw refuse();
  const next = found[1];
  const touches = (point: string) => next !== undefined && (next.from === point || next.to === point);
  let at = touches(head.from) && !touches(head.to) ? head.to : head.from;
  return found.map((member) => {
    const reversed = member.to === at;
    if (!reversed && member.from !== at) throw refuse();
    at = reversed ? member.from : member.to;
    const { length } = memberPath(frame, member);
    return { name: member.name, from: member.from, to: member.to, length, reversed };
  });
}
