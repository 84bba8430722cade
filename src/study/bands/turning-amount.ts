import { isWithinLimit } from '../../judging/compare-with-limit.js';

/**
 * The amount at which a ratio passes 1, between nothing and one limit of an uncertainty, by false position with the stale end
 * halved. That the verdict turns there once and not on the way is asked half-way on both sides.
 *
 * @param ratioAt - solves again with the amount [-]
 * @param start - ratio at nothing [-]
 * @param side - which limit
 * @param end - ratio at that limit, on the other side of 1 [-]
 * @returns amount at which it still meets, to 1e-5 of its limit [-]; undefined where it turns more than once, or
 *   nothing can be worked out on the way
 */
export async function turningAmount(
  ratioAt: (amount: number) => Promise<number>,
  start: number,
  side: 1 | -1,
  end: number,
): Promise<number | undefined> {
  const isAsTaken = (ratio: number) => isWithinLimit(ratio) === isWithinLimit(start);
  let near = { amount: 0, beyond: start - 1 };
  let far = { amount: side as number, beyond: end - 1 };
  // The end that meets, at its true ratio.
  let meets = isWithinLimit(start) ? near.amount : far.amount;
  for (let round = 0; round < ROUNDS; round++) {
    const amount = (near.amount * far.beyond - far.amount * near.beyond) / (far.beyond - near.beyond);
    const ratio = await ratioAt(amount);
    if (!Number.isFinite(ratio)) return undefined;
    if (isAsTaken(ratio)) {
      near = { amount, beyond: ratio - 1 };
      far = { ...far, beyond: far.beyond / 2 };
    } else {
      far = { amount, beyond: ratio - 1 };
      near = { ...near, beyond: near.beyond / 2 };
    }
    if (ratio <= 1 + EXACT) meets = amount;
    if (Math.abs(far.amount - near.amount) < CLOSE || Math.abs(ratio - 1) < EXACT) break;
  }
  const before = await ratioAt(meets / 2);
  const behind = await ratioAt((meets + side) / 2);
  return isAsTaken(before) && !isAsTaken(behind) ? meets : undefined;
}

const ROUNDS = 12;
/** Of the half width of the uncertainty [-], and of the ratio [-]. */
const CLOSE = 1e-4;
const EXACT = 1e-5;
