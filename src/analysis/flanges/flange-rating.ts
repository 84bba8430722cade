import { betweenRows } from '../../catalog/index.js';
import type { FlangeDimensions } from '../../input/installation.js';

/** What a system may be tested to, as a share of the rating at ambient temperature [-]. */
const TEST_SHARE = 1.5;

/** A pressure allowed at a temperature: pairs of temperature [K] and gauge pressure [Pa], rising in temperature. */
type Rating = NonNullable<FlangeDimensions['rating']>;

/**
 * Pressure a flange is rated for at a temperature, by straight lines between the rows of its table. Below the first
 * row the first rating holds; beyond the last there is none.
 *
 * @param rating - table of the flange: temperature [K], gauge pressure [Pa]
 * @param temperature - of the metal [K]
 * @returns rated gauge pressure [Pa], or undefined where the table does not reach
 */
export function ratedPressure(rating: Rating | undefined, temperature: number): number | undefined {
  const first = rating?.[0];
  if (rating === undefined || first === undefined || !Number.isFinite(temperature)) return undefined;
  if (temperature <= first[0]) return first[1];
  return betweenRows(rating, temperature);
}

/**
 * Pressure a flange may be tested to: one and a half times its rating at the temperature of the test.
 *
 * @param rating - table of the flange: temperature [K], gauge pressure [Pa]
 * @param temperature - at the test [K]
 * @returns gauge pressure [Pa], or undefined where the table does not reach
 */
export function testPressureAllowed(rating: Rating | undefined, temperature: number): number | undefined {
  const rated = ratedPressure(rating, temperature);
  return rated === undefined ? undefined : TEST_SHARE * rated;
}
