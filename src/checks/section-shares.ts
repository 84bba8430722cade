import type { MemberIntensification } from './end-intensification.js';

/** How many equal pieces a member is looked at in. */
const PIECES = 16;

/** Shares of the length at which the sections of a member are looked at [-]. */
export const sectionShares: readonly number[] = Array.from(
  { length: PIECES + 1 },
  (_, index) => index / PIECES,
);

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
