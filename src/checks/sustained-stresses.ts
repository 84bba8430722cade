import {
  buildingSustainedStress,
  powerSustainedStress,
  type SustainedState,
} from '../mechanics/code-stress.js';
import { largestMoment, memberForces, type SectionForces } from '../mechanics/index.js';
import type { FrameMember } from '../model/frame.js';
import { type SolvedCondition, solvedConditions } from './conditions.js';
import { memberIntensifications } from './end-intensification.js';
import type { Subject } from './finding.js';
import { isWorse } from './is-worse.js';
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
 * The condition in which sustained stress is read.
 *
 * @param subject - layout with its frame, and response
 * @returns the filled condition, or undefined where it was not solved
 */
export function sustainedCondition(subject: Subject): SolvedCondition | undefined {
  return solvedConditions(subject).find(({ name }) => name === SUSTAINED);
}

/**
 * Longitudinal stress from pressure, weight and other lasting loads in every part, each at its worst section. Ends of
 * members, points between and the place of the largest moment are looked at.
 *
 * @param subject - installation, layout and response
 * @returns one row per part, in the order of the frame; empty where the filled condition was not solved
 */
export function sustainedStresses(subject: Subject): readonly SustainedStress[] {
  const condition = sustainedCondition(subject);
  if (condition === undefined) return [];
  const { frame } = subject.layout;
  const worst = new Map<string, SustainedStress>();
  const factors = memberIntensifications(subject);
  for (const member of frame.members) {
    if (condition.solved.members[member.name] === undefined) continue;
    const sections = [
      ...memberForces(frame, condition.acts, condition.solved, member.name, sectionShares(member)),
      largestMoment(frame, condition.acts, condition.solved, member.name),
    ];
    for (const section of sections) {
      const row = stressAt(subject, member, section, factorAt(factors[member.name], section.share));
      const key = `${row?.line}: ${row?.part}`;
      if (row !== undefined && isWorse(row.stress, worst.get(key)?.stress)) worst.set(key, row);
    }
  }
  return [...worst.values()];
}

/**
 * Sustained stress at one section, by the code of the installation.
 *
 * @param subject - installation, layout and response
 * @param member - name of the member
 * @param share - distance along it as a share of its length [-]
 * @param intensification - stress intensification factor there [-]
 * @returns stress [Pa], or undefined where the filled condition or the member was not solved
 */
export function sustainedStressAt(
  subject: Subject,
  member: string,
  share: number,
  intensification: number,
): number | undefined {
  const condition = sustainedCondition(subject);
  const found = subject.layout.frame.members.find(({ name }) => name === member);
  if (condition?.solved.members[member] === undefined || found === undefined) return undefined;
  const [section] = memberForces(subject.layout.frame, condition.acts, condition.solved, member, [share]);
  return section && stressAt(subject, found, section, intensification)?.stress;
}

function stressAt(
  { installation, layout }: Subject,
  member: FrameMember,
  section: SectionForces,
  intensification: number,
): SustainedStress | undefined {
  const info = layout.memberInfo[member.name];
  if (info === undefined) return undefined;
  const state: SustainedState = {
    tube: member.tube,
    pressure: installation.service.designPressure.value,
    moment: section.moment,
    intensification,
    axialForce: section.axial,
  };
  const stress =
    installation.limits.stress.code === 'B31.1'
      ? powerSustainedStress(state)
      : buildingSustainedStress(state);
  return { line: info.line, part: info.part, member: member.name, share: section.share, state, stress };
}
