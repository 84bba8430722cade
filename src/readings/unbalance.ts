/** Unbalance of three readings. */

/**
 * Largest difference from the mean, over the mean:
 *
 *     u = max |x_i − x̄| / x̄
 *
 * @param three - voltages [V] or currents [A]
 * @returns share [-]; nothing where the mean is not above zero
 * @source nema-mg-1
 */
export function unbalance(three: readonly number[]): number | undefined {
  const mean = three.reduce((sum, value) => sum + value, 0) / three.length;
  if (!(mean > 0)) return undefined;
  return Math.max(...three.map((value) => Math.abs(value - mean))) / mean;
}
