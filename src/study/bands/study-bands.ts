/** Bands of a review: each uncertainty at both its limits, solved again; where that does not add up, samples of all at once. */

import type { Subject } from '../../analysis/subject.js';
import { isWithinLimit } from '../../judging/compare-with-limit.js';
import type { Finding } from '../../judging/finding.js';
import type { Bands, FindingBand, Turn } from './bands.js';
import { type Figure, type Trial, trialBase } from './evaluate.js';
import {
  banded,
  findingBand,
  isTurned,
  type PlainBand,
  type Study,
  statementOf,
  turnsWithin,
} from './finding-band.js';
import { missingDataOf } from './missing-data.js';
import { type RunTrials, runHere } from './run-trials.js';
import { sampledBands } from './sampled-bands.js';
import { turningAmount } from './turning-amount.js';
import { uncertaintiesOf } from './uncertainties.js';
import { COVERAGE, valueAt } from './uncertainty.js';

/** How bands are worked out. */
export interface BandOptions {
  /** In the thread that asks, where not said. */
  readonly runTrials?: RunTrials;
  /** Samples of all uncertainties at once: how many, or only where uncertainties do not add up. */
  readonly samples?: number | 'where needed';
}

/** Share by which all weights are taken heavier and lighter together [-]. */
const HEAVIER = 0.15;
/** Samples where uncertainties do not add up [-], and the part of a band from which on they do not [-]. */
const SAMPLES = 100;
const BENT = 0.25;
/** Ratios within this of 1, and their band, are near their limit [-]. */
const NEAR = 0.2;
/** Thresholds looked for in one review, so that its time is bounded [-]. */
const MOST_TURNS = 6;

/**
 * The bands of a review.
 *
 *     u² = Σ (r(+1) − r(−1))² / 12        r with one uncertainty at its upper and lower limit
 *
 * Each uncertainty is rectangular between its limits; all are independent; the band is r ± 2 u.
 *
 * @param review - installation, solved and judged
 * @param options - who runs trials; samples
 * @returns bands, thresholds and what to find out
 * @source gum
 */
export async function studyBands(
  review: Subject & { readonly findings: readonly Finding[] },
  { runTrials = runHere, samples = 'where needed' }: BandOptions = {},
): Promise<Bands> {
  const uncertainties = uncertaintiesOf(review.installation);
  const { base, values } = trialBase(review, uncertainties);
  const one = (index: number, amount: number) =>
    uncertainties.map((_, each) => (each === index ? amount : 0));
  const weights = (share: number) =>
    uncertainties.map(({ varied, half }) => (varied.kind === 'mass' ? share / half : 0));
  const trials = await runTrials(base, [
    weights(HEAVIER),
    weights(-HEAVIER),
    ...uncertainties.flatMap(({ moves }, index) => [
      one(index, 1),
      ...(moves === 'alternative' ? [] : [one(index, -1)]),
    ]),
  ]);
  const [heavier, lighter, ...rest] = trials.map(valuesOf);
  const ends = uncertainties.map(({ moves }) => {
    const high = rest.shift();
    return { high, low: moves === 'alternative' ? undefined : rest.shift() };
  });
  const study: Study = { base, values, ends, heavier, lighter };
  const judged = base.figures.flatMap((figure, index) => {
    const finding = figure.of === 'ratio' ? findingOf(review.findings, figure) : undefined;
    return finding === undefined ? [] : [{ finding, index }];
  });
  const plain = judged
    .map(({ finding, index }) => findingBand(study, finding, index))
    .filter(({ sensitivities }) => sensitivities.length > 0);
  // What stays far from its limit within any band needs no samples.
  const near = plain.filter(({ value, standard }) => Math.abs(value - 1) < NEAR + COVERAGE * standard);
  const bend = Math.max(0, ...near.map(({ bend }) => bend));
  const findings = await withTurns(plain, study, runTrials);
  const count = samples === 'where needed' ? (bend > BENT ? SAMPLES : 0) : samples;
  return {
    uncertainties,
    heavier: HEAVIER,
    findings,
    nozzles: base.figures.flatMap((figure, index) =>
      figure.of === 'nozzle'
        ? [{ nozzle: figure.nozzle, condition: figure.condition, key: figure.key, ...banded(study, index) }]
        : [],
    ),
    supports: base.figures.flatMap((figure, index) =>
      figure.of === 'support'
        ? [{ mark: figure.mark, condition: figure.condition, ...banded(study, index) }]
        : [],
    ),
    bend,
    ...(count > 0 && { sampled: await sampledBands(study, findings, count, review, runTrials) }),
    missingData: missingDataOf(review.findings, findings),
  };
}

function valuesOf(trial: Trial): Float64Array | undefined {
  return trial.ok ? trial.values : undefined;
}

function findingOf(
  findings: readonly Finding[],
  figure: Extract<Figure, { of: 'ratio' }>,
): Finding | undefined {
  return findings.find(({ check, at }) => check === figure.check && at === figure.at);
}

/** Looks for the value at which a verdict turns, for the verdicts that count and the uncertainties that turn them. */
async function withTurns(
  bands: readonly PlainBand[],
  { base }: Study,
  runTrials: RunTrials,
): Promise<readonly FindingBand[]> {
  let left = MOST_TURNS;
  const found: FindingBand[] = [];
  for (const { index, bend: _, ...band } of [...bands].sort(
    (a, b) => Number(a.comparison) - Number(b.comparison) || b.value - a.value,
  )) {
    const turns: Turn[] = [];
    const turning = band.sensitivities.filter((sensitivity) => turnsWithin(band.value, sensitivity));
    for (const { uncertainty, low, high } of band.comparison ? [] : turning) {
      if (uncertainty.moves === 'alternative' || left === 0) continue;
      left -= 1;
      const side = isTurned(band.value, high) ? 1 : -1;
      const end = side === 1 ? high : low;
      if (end === undefined) continue;
      const at = base.uncertainties.indexOf(uncertainty);
      const ratioAt = async (amount: number): Promise<number> => {
        const [trial] = await runTrials(base, [
          base.uncertainties.map((_, each) => (each === at ? amount : 0)),
        ]);
        return trial?.ok ? (trial.values[index] ?? Number.NaN) : Number.NaN;
      };
      const amount = await turningAmount(ratioAt, band.value, side, end);
      if (amount === undefined) continue;
      const value = valueAt(uncertainty, amount);
      const meetsBelow = isWithinLimit(band.value) === (side === 1);
      turns.push({
        uncertainty,
        amount,
        ...(value !== undefined && { value }),
        meets: meetsBelow ? 'below' : 'above',
      });
    }
    found.push({ ...band, turns, statement: statementOf(band, turning.length > 0) });
  }
  return found;
}
