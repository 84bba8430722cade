/** A number, or a verdict, with its band: from what each uncertainty does alone. */
import { isWithinLimit } from '../../judging/compare-with-limit.js';
import type { Finding } from '../../judging/finding.js';
import type { Banded, FindingBand, Sensitivity, Statement } from './bands.js';
import type { TrialBase } from './evaluate.js';
import { COVERAGE, STANDARD_OF_RECTANGLE } from './uncertainty.js';

/** Values as taken, with each uncertainty at its limits, and with all weights heavier and lighter; in the order of the figures. */
export interface Study {
  readonly base: TrialBase;
  readonly values: Float64Array;
  readonly ends: readonly {
    readonly high: Float64Array | undefined;
    readonly low: Float64Array | undefined;
  }[];
  readonly heavier: Float64Array | undefined;
  readonly lighter: Float64Array | undefined;
}

/**
 * A number with the uncertainties added up. Where nothing could be worked out at one limit, the other stands for both.
 *
 * @param study - values with each uncertainty at its limits
 * @param index - place of the figure [-]
 * @returns value and standard uncertainty, in the unit of the figure
 * @source gum
 */
export function banded({ base, values, ends }: Study, index: number): Banded {
  const value = values[index] ?? Number.NaN;
  let square = 0;
  base.uncertainties.forEach(({ moves }, uncertainty) => {
    if (moves === 'alternative') return;
    const half = halfChange(value, ends[uncertainty]?.low?.[index], ends[uncertainty]?.high?.[index]);
    square += (half * STANDARD_OF_RECTANGLE) ** 2;
  });
  return { value, standard: Math.sqrt(square) };
}

function halfChange(value: number, low = Number.NaN, high = Number.NaN): number {
  if (Number.isFinite(low) && Number.isFinite(high)) return (high - low) / 2;
  if (Number.isFinite(high)) return high - value;
  return Number.isFinite(low) ? value - low : 0;
}

export interface PlainBand extends Omit<FindingBand, 'turns' | 'statement'> {
  readonly index: number;
  readonly bend: number;
}

/**
 * A verdict with its band, and what each uncertainty alone does to it.
 *
 * @param study - values with each uncertainty at its limits
 * @param finding - the finding
 * @param index - place of its ratio among the figures [-]
 * @returns band, and how far uncertainties are from adding up [-]
 * @source gum
 */
export function findingBand(study: Study, finding: Finding, index: number): PlainBand {
  const { base, ends, heavier, lighter } = study;
  const { value, standard } = banded(study, index);
  const sensitivities = base.uncertainties.map((uncertainty, each): Sensitivity => {
    const [low, high] = [ends[each]?.low?.[index], ends[each]?.high?.[index]];
    return { uncertainty, ...(isThere(low) && { low }), ...(isThere(high) && { high }) };
  });
  const reach = (sensitivity: Sensitivity) =>
    Math.max(Math.abs((sensitivity.low ?? value) - value), Math.abs((sensitivity.high ?? value) - value));
  const bent = sensitivities.reduce(
    (sum, { low, high }) =>
      sum + (low === undefined || high === undefined ? 0 : Math.abs(low + high - 2 * value) / 2),
    0,
  );
  const [more, less] = [heavier?.[index], lighter?.[index]];
  return {
    check: finding.check,
    title: finding.title,
    at: finding.at,
    comparison: finding.comparison,
    value,
    standard,
    ...(isThere(more) && { heavier: more }),
    ...(isThere(less) && { lighter: less }),
    sensitivities: sensitivities
      .filter((sensitivity) => reach(sensitivity) > 1e-6)
      .sort((a, b) => reach(b) - reach(a)),
    index,
    bend: standard > 1e-3 ? bent / (COVERAGE * standard) : 0,
  };
}

/** Whether a number was found. */
export function isThere(value: number | undefined): value is number {
  return value !== undefined && Number.isFinite(value);
}

/** Whether two ratios stand on two sides of the limit. */
export function isTurned(value: number, other: number | undefined): boolean {
  return other !== undefined && isWithinLimit(value) !== isWithinLimit(other);
}

/** Whether an uncertainty alone turns a verdict within its limits. */
export function turnsWithin(value: number, { low, high }: Sensitivity): boolean {
  return isTurned(value, low) || isTurned(value, high);
}

/** What may be said of a verdict: of its band, of each uncertainty alone, and of all weights together. */
export function statementOf(band: Omit<FindingBand, 'statement' | 'turns'>, turns: boolean): Statement {
  const { value, standard, heavier, lighter } = band;
  const reach = COVERAGE * standard;
  const togetherTurns = isTurned(value, heavier) || isTurned(value, lighter);
  if (isWithinLimit(value))
    return !isWithinLimit(value + reach) || turns || togetherTurns ? 'meets only if' : 'meets throughout';
  return isWithinLimit(value - reach) || turns || togetherTurns ? 'exceeds unless' : 'exceeds throughout';
}
