import type { Subject } from '../../analysis/subject.js';
import { isWithinLimit } from '../../judging/compare-with-limit.js';
import type { FindingBand, Sampled } from './bands.js';
import { keyOf } from './evaluate.js';
import { isThere, type Study } from './finding-band.js';
import { latinHypercube, seedOf } from './latin-hypercube.js';
import type { RunTrials } from './run-trials.js';

/**
 * The ratios of findings by samples of all uncertainties at once.
 *
 * @param study - what is varied
 * @param findings - those of which ratios are wanted
 * @param count - number of samples, at least 2 [-]
 * @param subject - whose fingerprint is the seed
 * @param runTrials - who works trials out
 * @returns mean, standard deviation, quantiles and share beyond the limit [-]
 * @source latin-hypercube
 */
export async function sampledBands(
  { base }: Study,
  findings: readonly FindingBand[],
  count: number,
  { installation }: Subject,
  runTrials: RunTrials,
): Promise<Sampled> {
  const seed = seedOf(installation.fingerprint);
  const varying = base.uncertainties.map(({ moves }) => moves !== 'alternative');
  const columns = varying.filter(Boolean).length;
  const rows = latinHypercube(columns, count, seed).map((row) => {
    let next = 0;
    return varying.map((varies) => (varies ? (row[next++] ?? 0) : 0));
  });
  const trials = (await runTrials(base, rows)).flatMap((trial) => (trial.ok ? [trial.values] : []));
  const place = new Map(base.figures.map((figure, index) => [keyOf(figure), index]));
  return {
    count,
    seed,
    failed: count - trials.length,
    findings: findings.flatMap(({ check, at }) => {
      const index = place.get(keyOf({ of: 'ratio', check, at })) ?? -1;
      const values = trials
        .flatMap((trial) => (isThere(trial[index]) ? [trial[index]] : []))
        .sort((a, b) => a - b);
      if (values.length < 2) return [];
      const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
      const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
      return [
        {
          check,
          at,
          mean,
          standard: Math.sqrt(variance),
          low: quantile(values, 0.025),
          high: quantile(values, 0.975),
          beyond: values.filter((value) => !isWithinLimit(value)).length / values.length,
        },
      ];
    }),
  };
}

/** Straight between the sorted values. */
function quantile(sorted: readonly number[], share: number): number {
  const at = share * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(at)] ?? Number.NaN, sorted[Math.ceil(at)] ?? Number.NaN];
  return low + (high - low) * (at - Math.floor(at));
}
