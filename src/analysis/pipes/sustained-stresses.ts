import {
  largestMoment,
  memberForces,
  type SectionForces,
} from '../../mechanics/frame/recovery/member-forces.js';
import {
  buildingSustainedStress,
  powerSustainedStress,
  type SustainedState,
} from '../../mechanics/stress/code-stress.js';
import type { FrameMember } from '../../model/frame/frame.js';
import { type SolvedCondition, solvedOf } from '../conditions.js';
import { isWorse } from '../is-worse.js';
import type { Subject } from '../subject.js';
import { type MemberIntensification, memberIntensifications } from './end-intensification.js';
import { factorAt, modulusAt, sectionShares } from './section-shares.js';

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

/** A cross-section with its factors. */
export interface JudgedSection {
  readonly member: string;
  /** Distance along the member as a share of its length [-]. */
  readonly share: number;
  readonly intensification: number;
  /** Section modulus where it is not that of the tube [m³]. */
  readonly modulus?: number;
}

/**
 * The condition in which sustained stress is read: weight, contents and thrust act alone in it, no temperature.
 *
 * @param subject - layout with its frame, and response
 * @returns the filled condition, or undefined where it was not solved
 */
export function sustainedCondition(subject: Subject): SolvedCondition | undefined {
  return solvedOf(subject, 'filled');
}

/**
 * Longitudinal stress from pressure, weight and other lasting loads in every part, each at its worst section. Ends of
 * members, points between and the place of the largest moment are looked at.
 *
 * @param subject - installation, layout and response
 * @returns one row per part, in the order of the frame; empty where the filled condition was not solved
 */
export function sustainedStresses(subject: Subject): readonly SustainedStress[] {
  const { designPressure } = subject.installation.service;
  return longitudinalStresses(subject, sustainedCondition(subject), designPressure.value);
}

/**
 * Longitudinal stress in every part during the pressure test, each at its worst section. The codes set no limit to it;
 * it is printed so that the engineer sees what the water of the test does to the pipe.
 *
 * @param subject - installation, layout and response
 * @returns one row per part, in the order of the frame; empty where the test was not solved
 */
export function testStresses(subject: Subject): readonly SustainedStress[] {
  const condition = solvedOf(subject, 'test');
  return longitudinalStresses(subject, condition, subject.installation.service.testPressure.value);
}

/**
 * Sustained stress at one section, by the code of the installation.
 *
 * @param subject - installation, layout and response
 * @param at - the section
 * @returns stress [Pa], or undefined where the filled condition or the member was not solved
 */
export function sustainedStressAt(subject: Subject, at: JudgedSection): number | undefined {
  const condition = sustainedCondition(subject);
  const member = subject.layout.frame.members.find(({ name }) => name === at.member);
  if (condition?.solved.members[at.member] === undefined || member === undefined) return undefined;
  const [section] = memberForces(subject.layout.frame, condition.acts, condition.solved, at.member, [
    at.share,
  ]);
  const pressure = subject.installation.service.designPressure.value;
  return section && stressOf(subject, sectionState(member.tube, section, pressure, at));
}

/**
 * State of a section for the equations of the codes.
 *
 * @param tube - pipe of the member [m]
 * @param section - what it carries
 * @param pressure - gauge pressure [Pa]
 * @param factors - intensification [-] and own section modulus [m³]
 * @returns state
 */
export function sectionState(
  tube: FrameMember['tube'],
  section: SectionForces,
  pressure: number,
  factors: Pick<JudgedSection, 'intensification' | 'modulus'>,
): SustainedState {
  return {
    tube,
    pressure,
    moment: section.moment,
    intensification: factors.intensification,
    axialForce: section.axial,
    ...(factors.modulus !== undefined && { modulus: factors.modulus }),
  };
}

/**
 * Intensification and section modulus at a share of a member.
 *
 * @param factors - of the member; plain pipe where absent
 * @param share - 0 at its start, 1 at its end [-]
 * @returns intensification [-] and own section modulus [m³]
 */
export function factorsAt(
  factors: MemberIntensification | undefined,
  share: number,
): Pick<JudgedSection, 'intensification' | 'modulus'> {
  const modulus = modulusAt(factors, share);
  return { intensification: factorAt(factors, share), ...(modulus !== undefined && { modulus }) };
}

/**
 * Longitudinal stress of a state by the code of the installation.
 *
 * @param subject - for the code
 * @param state - tube, pressure, moment and axial force of the section
 * @returns stress [Pa]
 */
export function stressOf({ installation }: Subject, state: SustainedState): number {
  return installation.limits.stress.code === 'B31.1'
    ? powerSustainedStress(state)
    : buildingSustainedStress(state);
}

function longitudinalStresses(
  subject: Subject,
  condition: SolvedCondition | undefined,
  pressure: number,
): readonly SustainedStress[] {
  if (condition === undefined) return [];
  const { frame, memberInfo } = subject.layout;
  const worst = new Map<string, SustainedStress>();
  const factors = memberIntensifications(subject);
  for (const member of frame.members) {
    const info = memberInfo[member.name];
    if (condition.solved.members[member.name] === undefined || info === undefined) continue;
    const sections = [
      ...memberForces(frame, condition.acts, condition.solved, member.name, sectionShares(member)),
      largestMoment(frame, condition.acts, condition.solved, member.name),
    ];
    for (const section of sections) {
      const at = factorsAt(factors[member.name], section.share);
      const state = sectionState(member.tube, section, pressure, at);
      const stress = stressOf(subject, state);
      const key = `${info.line}: ${info.part}`;
      if (!isWorse(stress, worst.get(key)?.stress)) continue;
      worst.set(key, {
        line: info.line,
        part: info.part,
        member: member.name,
        share: section.share,
        state,
        stress,
      });
    }
  }
  return [...worst.values()];
}
