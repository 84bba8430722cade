import { displacementStressRange } from '../mechanics/code-stress.js';
import { sectionForce } from '../mechanics/code-stress-sections.js';
import type { Vec3 } from '../model/conventions.js';
import type { FrameMember, Tube } from '../model/frame.js';
import { operatingOnly, type SolvedCondition } from './conditions.js';
import { memberIntensifications } from './end-intensification.js';
import type { Subject } from './finding.js';
import { factorAt, sectionShares } from './section-shares.js';

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
  const pairs = everyPair(operatingOnly(subject));
  const worst = new Map<string, DisplacementStress>();
  const factors = memberIntensifications(subject);
  for (const member of subject.layout.frame.members) {
    const info = subject.layout.memberInfo[member.name];
    if (info === undefined) continue;
    for (const share of sectionShares) {
      const range = largestRange(subject, member, share, pairs);
      if (range === undefined) continue;
      const intensification = factorAt(factors[member.name], share);
      const stress = displacementStressRange({ tube: member.tube, moment: range.moment, intensification });
      const key = `${info.line}: ${info.part}`;
      const before = worst.get(key);
      if (before !== undefined && stress <= before.stress) continue;
      const place = { line: info.line, part: info.part, member: member.name, share, tube: member.tube };
      worst.set(key, { ...place, ...range, intensification, stress });
    }
  }
  return [...worst.values()];
}

type Pair = readonly [SolvedCondition, SolvedCondition];

function everyPair(conditions: readonly SolvedCondition[]): readonly Pair[] {
  return conditions.flatMap((one, index) => conditions.slice(index + 1).map((other): Pair => [one, other]));
}

function largestRange(
  subject: Subject,
  member: FrameMember,
  share: number,
  pairs: readonly Pair[],
): { readonly moment: number; readonly between: string } | undefined {
  let largest: { readonly moment: number; readonly between: string } | undefined;
  for (const [one, other] of pairs) {
    const [near, far] = [momentAt(subject, one, member, share), momentAt(subject, other, member, share)];
    if (near === undefined || far === undefined) return undefined;
    const moment = Math.hypot(near[0] - far[0], near[1] - far[1], near[2] - far[2]);
    // Not a number has to come through, or it would hide behind the other pairs.
    if (largest === undefined || !(moment <= largest.moment)) {
      largest = { moment, between: `${one.name} to ${other.name}` };
    }
  }
  return largest;
}

function momentAt(
  { layout }: Subject,
  { acts, solved }: SolvedCondition,
  member: FrameMember,
  share: number,
): Vec3 | undefined {
  const start = solved.members[member.name]?.from;
  return start && sectionForce(layout.frame, acts, member, start, share).moment;
}
