import {
  buildingSustainedStress,
  powerSustainedStress,
  type SustainedState,
} from '../mechanics/code-stress.js';
import { largestMomentShare, sectionForce } from '../mechanics/code-stress-sections.js';
import type { FrameMember } from '../model/frame.js';
import { type SolvedCondition, solvedConditions } from './conditions.js';
import { memberIntensifications } from './end-intensification.js';
import type { Subject } from './finding.js';
import { factorAt, sectionShares } from './section-shares.js';

/** Sustained stress at the worst section of one part. */
export interface SustainedStress {
  readonly line: string;
  readonly part: string;
  readonly member: string;
  /** Distance along the member as a share of its length [-]. */
  readonly share: number;
  readonly state: SustainedState;
  /** [Pa] */
  readonly stress: number;
}

/** Weight, contents and thrust act alone in this condition: no temperature. */
const SUSTAINED = 'filled';

/**
 * Longitudinal stress from pressure, weight and other lasting loads in every part, each at its worst section. Ends of
 * members, points between and the largest moment inside straight pipe are looked at.
 *
 * @param subject - installation, layout and response
 * @returns one row per part, in the order of the frame; empty where the filled condition was not solved
 */
export function sustainedStresses(subject: Subject): readonly SustainedStress[] {
  const condition = solvedConditions(subject).find(({ name }) => name === SUSTAINED);
  if (condition === undefined) return [];
  const worst = new Map<string, SustainedStress>();
  const factors = memberIntensifications(subject);
  for (const member of subject.layout.frame.members) {
    for (const share of sharesOf(subject, condition, member)) {
      const row = sustainedStressAt(subject, condition, member, share, factorAt(factors[member.name], share));
      const key = `${row?.line}: ${row?.part}`;
      const before = worst.get(key);
      if (row !== undefined && (before === undefined || !(row.stress <= before.stress))) worst.set(key, row);
    }
  }
  return [...worst.values()];
}

function sharesOf(subject: Subject, condition: SolvedCondition, member: FrameMember): readonly number[] {
  const start = condition.solved.members[member.name]?.from;
  const { frame } = subject.layout;
  const inside = start && largestMomentShare(frame, condition.acts, member, start);
  return inside === undefined ? sectionShares : [...sectionShares, inside];
}

/**
 * Sustained stress at one section by the code of the installation.
 *
 * @param subject - installation, layout and response
 * @param condition - filled
 * @param member - member of the frame
 * @param share - distance along it as a share of its length [-]
 * @param intensification - stress intensification factor there [-]
 * @returns the stress with its place, or undefined where the member was not solved or belongs to no line
 */
export function sustainedStressAt(
  subject: Subject,
  condition: SolvedCondition,
  member: FrameMember,
  share: number,
  intensification: number,
): SustainedStress | undefined {
  const { installation, layout } = subject;
  const start = condition.solved.members[member.name]?.from;
  const info = layout.memberInfo[member.name];
  if (start === undefined || info === undefined) return undefined;
  const { moment, axial } = sectionForce(layout.frame, condition.acts, member, start, share);
  const state: SustainedState = {
    tube: member.tube,
    pressure: installation.service.designPressure.value,
    moment: Math.hypot(...moment),
    intensification,
    axialForce: axial,
  };
  const stress =
    installation.limits.stress.code === 'B31.1'
      ? powerSustainedStress(state)
      : buildingSustainedStress(state);
  return { line: info.line, part: info.part, member: member.name, share, state, stress };
}
