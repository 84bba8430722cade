import { largestMomentSum } from '../../mechanics/frame/recovery/largest-moment-sum.js';
import { memberForces, type SectionForces } from '../../mechanics/frame/recovery/member-forces.js';
import {
  metalArea,
  modulusOf,
  type SustainedState,
  sustainedIntensification,
} from '../../mechanics/stress/code-stress.js';
import { ofRole } from '../../model/conditions/condition-roles.js';
import type { FrameMember } from '../../model/frame/frame.js';
import { norm, subtract } from '../../model/vector.js';
import { type SolvedCondition, solvedConditions } from '../conditions.js';
import { isWorse } from '../is-worse.js';
import type { Subject } from '../subject.js';
import { type MemberIntensification, memberIntensifications } from './end-intensification.js';
import { sectionShares } from './section-shares.js';
import { factorsAt, sectionState, stressOf, sustainedCondition } from './sustained-stresses.js';

/** Sustained and occasional stress together at the worst section of one part in one condition. */
export interface OccasionalStress {
  readonly condition: string;
  /** Condition it is compared with: the same without the occasional load. */
  readonly without: string;
  readonly line: string;
  readonly part: string;
  readonly member: string;
  /** Distance along the member as a share of its length [-]. */
  readonly share: number;
  /** Lasting loads at the section. */
  readonly state: SustainedState;
  /** Resultant of what the occasional load adds to the three moments [N·m]. */
  readonly moment: number;
  /** What it adds to the axial force, in either sense [N]. */
  readonly axialForce: number;
  /** Lasting and occasional together [Pa]. */
  readonly stress: number;
}

/** An occasional condition, the same without the occasional load, and lasting loads alone. */
interface Occasion {
  readonly occasional: SolvedCondition;
  readonly without: SolvedCondition;
  readonly lasting: SolvedCondition;
}

/**
 * The occasional conditions that were solved: sideways loads, which come on top of the filled line, and starts, which
 * come on top of the running one. They are never taken together.
 *
 * @param subject - layout with its frame, and response
 * @returns conditions in the order of the frame; empty where the filled condition was not solved
 */
export function occasionalConditions(subject: Subject): readonly SolvedCondition[] {
  return occasions(subject).map(({ occasional }) => occasional);
}

/**
 * Longitudinal stress from lasting and occasional loads in every part and every occasional condition, each at its worst
 * section. The occasional moment is the difference of the whole line solved with and without the occasional load, so
 * that supports that lift or slip are counted as they are.
 *
 *     SL + 0.75 i MB / Z + |NB| / A          0.75 i at least 1; the axial force by B31.9 only
 *
 * @param subject - installation, layout and response
 * @returns one row per condition and part, in the order of the frame
 * @source asme-b31.1 para 104.8.2, memory; asme-b31.9 para 902.3.3, read
 */
export function occasionalStresses(subject: Subject): readonly OccasionalStress[] {
  const factors = memberIntensifications(subject);
  return occasions(subject).flatMap((occasion) => {
    const worst = new Map<string, OccasionalStress>();
    for (const member of subject.layout.frame.members) {
      for (const row of memberRows(subject, occasion, member, factors[member.name])) {
        const key = `${row.line}: ${row.part}`;
        if (isWorse(row.stress, worst.get(key)?.stress)) worst.set(key, row);
      }
    }
    return [...worst.values()];
  });
}

function occasions(subject: Subject): readonly Occasion[] {
  const lasting = sustainedCondition(subject);
  if (lasting === undefined) return [];
  const solved = solvedConditions(subject);
  const running = ofRole(solved, 'running');
  return solved.flatMap((occasional) => {
    const { kind } = occasional.role;
    const without = kind === 'lateral' ? lasting : kind === 'start' ? running : undefined;
    return without === undefined ? [] : [{ occasional, without, lasting }];
  });
}

function memberRows(
  subject: Subject,
  { occasional, without, lasting }: Occasion,
  member: FrameMember,
  factors: MemberIntensification | undefined,
): readonly OccasionalStress[] {
  const { frame, memberInfo } = subject.layout;
  const info = memberInfo[member.name];
  const conditions = [occasional, without, lasting];
  if (info === undefined || conditions.some(({ solved }) => solved.members[member.name] === undefined))
    return [];
  const shares = [
    ...sectionShares(member),
    largestMomentSum(frame, { lasting, passing: occasional, without }, member.name),
  ];
  const forces = ({ acts, solved }: SolvedCondition) =>
    memberForces(frame, acts, solved, member.name, shares);
  const [over, under, alone] = [forces(occasional), forces(without), forces(lasting)];
  return shares.flatMap((share, index) => {
    const [passing, before, section] = [over[index], under[index], alone[index]];
    if (passing === undefined || before === undefined || section === undefined) return [];
    const pressure = subject.installation.service.designPressure.value;
    const state = sectionState(member.tube, section, pressure, factorsAt(factors, share));
    const moment = difference(passing, before);
    const axialForce = Math.abs(passing.axial - before.axial);
    const axial =
      subject.installation.limits.stress.code === 'B31.1' ? 0 : axialForce / metalArea(state.tube);
    const added = (sustainedIntensification(state.intensification) * moment) / modulusOf(state) + axial;
    return [
      {
        condition: occasional.name,
        without: without.name,
        line: info.line,
        part: info.part,
        member: member.name,
        share,
        state,
        moment,
        axialForce,
        stress: stressOf(subject, state) + added,
      },
    ];
  });
}

function difference(one: SectionForces, other: SectionForces): number {
  return norm(subtract(one.wrench.moment, other.wrench.moment));
}
