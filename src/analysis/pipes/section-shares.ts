import type { FrameMember } from '../../model/frame/frame.js';
import type { MemberIntensification } from './end-intensification.js';

/** Both ends of a straight pipe. */
const ENDS: readonly number[] = [0, 1];

/** A bend is looked at in eighths. */
const EIGHTHS: readonly number[] = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1];

/**
 * Shares of the length at which the sections of a member are looked at. Along straight pipe a moment without weight,
 * and so the difference of two conditions, runs in a straight line and is largest at an end; the largest moment with
 * weight is looked for besides. Along a bend it is not.
 *
 * @param member - pipe or bend
 * @returns shares from 0 to 1 [-]
 */
export function sectionShares(member: FrameMember): readonly number[] {
  return member.kind === 'bend' ? EIGHTHS : ENDS;
}

/**
 * Stress intensification at a share of a member's length.
 *
 * @param factors - of the member; plain pipe where absent
 * @param share - 0 at its start, 1 at its end [-]
 * @returns stress intensification factor [-]
 */
export function factorAt(factors: MemberIntensification | undefined, share: number): number {
  if (factors === undefined) return 1;
  if (share === 0) return factors.from;
  return share === 1 ? factors.to : factors.between;
}

/**
 * Section modulus at a share of a member's length, where it is not that of the pipe.
 *
 * @param factors - of the member; plain pipe where absent
 * @param share - 0 at its start, 1 at its end [-]
 * @returns effective section modulus of a reduced branch, or undefined anywhere else [m³]
 */
export function modulusAt(factors: MemberIntensification | undefined, share: number): number | undefined {
  if (factors?.branch === undefined) return undefined;
  return share === (factors.branch.end === 'from' ? 0 : 1) ? factors.branch.modulus : undefined;
}
