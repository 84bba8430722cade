import { memberForces, type SectionForces } from '../../mechanics/frame/recovery/member-forces.js';
import { displacementStressRange } from '../../mechanics/stress/code-stress.js';
import type { FrameMember, Tube } from '../../model/frame/frame.js';
import { norm, subtract } from '../../model/vector.js';
import { operatingOnly, type SolvedCondition } from '../conditions.js';
import { isWorse } from '../is-worse.js';
import type { Subject } from '../subject.js';
import { memberIntensifications } from './end-intensification.js';
import { factorAt, modulusAt, sectionShares } from './section-shares.js';

/** Displacement stress range at the worst section of one part. */
export interface DisplacementStress {
  readonly line: string;
  readonly part: string;
  readonly member: string;
  /** Distance along the member as a share of its length [-]. */
  readonly share: number;
  readonly tube: Tube;
  /** Resultant of the range of the three moments [N·m]. */
  readonly moment: number;
  readonly intensification: number;
  /** Section modulus where it is not that of the tube, as at a reduced branch [m³]. */
  readonly modulus?: number;
  /** The two conditions it lies between: `cold to hot`. */
  readonly between: string;
  /** [Pa] */
  readonly stress: number;
}

/**
 * Stress range from expansion and other displacement in every part, each at its worst section: the largest difference
 * between any two conditions of normal service.
 *
 * @param subject - installation, layout and response
 * @returns one row per part, in the order of the frame; empty where fewer than two such conditions were solved
 */
export function displacementStresses(subject: Subject): readonly DisplacementStress[] {
  const conditions = operatingOnly(subject);
  const worst = new Map<string, DisplacementStress>();
  const factors = memberIntensifications(subject);
  for (const member of subject.layout.frame.members) {
    const info = subject.layout.memberInfo[member.name];
    if (info === undefined) continue;
    for (const { share, moment, between } of largestRanges(subject, member, conditions)) {
      const intensification = factorAt(factors[member.name], share);
      const modulus = modulusAt(factors[member.name], share);
      const own = modulus === undefined ? {} : { modulus };
      const stress = displacementStressRange({ tube: member.tube, moment, intensification, ...own });
      const key = `${info.line}: ${info.part}`;
      if (!isWorse(stress, worst.get(key)?.stress)) continue;
      const place = { line: info.line, part: info.part, member: member.name, share, tube: member.tube };
      worst.set(key, { ...place, ...own, moment, between, intensification, stress });
    }
  }
  return [...worst.values()];
}

interface Range {
  readonly share: number;
  /** [N·m] */
  readonly moment: number;
  readonly between: string;
}

/** The largest difference of the moment at every section of a member, over all pairs of conditions. */
function largestRanges(
  { layout }: Subject,
  member: FrameMember,
  conditions: readonly SolvedCondition[],
): readonly Range[] {
  const shares = sectionShares(member);
  const solved = conditions
    .filter((condition) => condition.solved.members[member.name] !== undefined)
    .map((condition) => ({
      name: condition.name,
      sections: memberForces(layout.frame, condition.acts, condition.solved, member.name, shares),
    }));
  const pairs = solved.flatMap((one, index) => solved.slice(index + 1).map((other) => ({ one, other })));
  return shares.flatMap((share, index) => {
    const ranges = pairs.map(({ one, other }): Range => {
      const moment = difference(one.sections[index], other.sections[index]);
      return { share, moment, between: `${one.name} to ${other.name}` };
    });
    const [first, ...rest] = ranges;
    if (first === undefined) return [];
    return [rest.reduce((largest, next) => (isWorse(next.moment, largest.moment) ? next : largest), first)];
  });
}

function difference(one: SectionForces | undefined, other: SectionForces | undefined): number {
  if (one === undefined || other === undefined) return Number.NaN;
  return norm(subtract(one.wrench.moment, other.wrench.moment));
}
