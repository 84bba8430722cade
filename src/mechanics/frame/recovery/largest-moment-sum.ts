import { largestOnUnit } from '../../../algebra/largest-on-unit.js';
import type { Frame, FrameCondition } from '../../../model/frame/frame.js';
import { norm, subtract } from '../../../model/vector.js';
import type { ConditionResponse } from '../response.js';
import { sectionWrenches } from './member-forces.js';
import { memberNamed, memberPath } from './member-path.js';

/** A condition as it acts, with its answer. */
export interface ActingCondition {
  readonly acts: FrameCondition;
  readonly solved: ConditionResponse;
}

/** What lasts, and what comes on top of it for a while. */
export interface LastingAndPassing {
  /** Lasting loads alone. */
  readonly lasting: ActingCondition;
  /** The condition with the passing load, and the same without it: their difference is the passing load's share. */
  readonly passing: ActingCondition;
  readonly without: ActingCondition;
}

/** Steps at which a member is looked at before the place is refined; a load spread along it gives few humps. */
const STEPS = 8;

/**
 * Where along a member the resultant of the lasting moment and the resultant of what the passing load adds are largest
 * together.
 *
 *     |M lasting| + |M passing − M without|
 *
 * @param frame - the frame solved
 * @param loads - the conditions
 * @param member - name of the member [-]
 * @returns place as a share of the length [-]
 * @throws EngineError `mechanics.unknown-name`
 * @source statics
 */
export function largestMomentSum(frame: Frame, loads: LastingAndPassing, member: string): number {
  const found = memberNamed(frame, member);
  const path = memberPath(frame, found);
  const wrenches = ({ acts, solved }: ActingCondition) => sectionWrenches(frame, acts, solved, found, path);
  const [lasting, passing, without] = [
    wrenches(loads.lasting),
    wrenches(loads.passing),
    wrenches(loads.without),
  ];
  return largestOnUnit(
    (share) => norm(lasting(share).moment) + norm(subtract(passing(share).moment, without(share).moment)),
    STEPS,
  ).at;
}
