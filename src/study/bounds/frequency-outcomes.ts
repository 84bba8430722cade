/** What a sweep of natural frequencies says of a margin: over all samples, and over every span between them. */
import type { Excitation } from '../../analysis/motion/pump-modes.js';
import type { Subject } from '../../analysis/subject.js';
import { type Compared, compareWithLimit } from '../../judging/compare-with-limit.js';
import type { Finding } from '../../judging/finding.js';
import type { AtBound } from '../../judging/over-bounds.js';
import { lockOutBands, type SpeedBand } from '../../mechanics/modes/lock-out-bands.js';
import type { FrequencySweep, SweepSample, SweptGroup } from './frequency-sweep.js';

/**
 * The outcomes of one frequency finding of a pump with one speed, at every sample and over every span.
 *
 * @param finding - as stated
 * @param excitation - what it is held against
 * @param sweep - samples and spans
 * @param subject - speed and margin
 * @returns outcomes, as stated first; only that where no margin is given or the stated one could not be judged
 */
export function frequencyBounds(
  finding: Finding,
  excitation: Excitation,
  sweep: FrequencySweep,
  subject: Subject,
): readonly AtBound[] {
  const { speed, speeds } = subject.installation.pump.motor;
  const margin = subject.installation.limits.frequencyMargin?.value;
  const stated: AtBound = { varied: [], outcome: finding };
  const isJudged = finding.verdict === 'meets' || finding.verdict === 'exceeds';
  // Frequencies are swept as far as running speed; what it is compared with beyond stays as stated.
  if (margin === undefined || !isJudged || excitation.timesPerTurn > 1) return [stated];
  if (speeds !== undefined) {
    const bands = sweptLockOut(sweep, { timesPerTurn: 1, margin, speeds });
    const verdict = bands.length > 0 ? 'cannot-tell' : finding.verdict;
    return [stated, { varied: allWords(sweep), outcome: { verdict } }];
  }
  const exciting = (excitation.timesPerTurn * speed) / (2 * Math.PI);
  const outcome = (away: number): Compared =>
    compareWithLimit({ demand: Math.max(0, 1 - away / exciting), limit: 1 - margin });
  const words = (groups: readonly SweptGroup[]) => groups.flatMap((group) => thingWords(sweep, group));
  const samples = sweep.samples.slice(1).map((sample): AtBound => {
    const away = Math.min(
      ...sample.modes.filter(({ counts }) => counts).map(({ frequency }) => Math.abs(frequency - exciting)),
    );
    return { varied: words(movedIn(sample)), outcome: outcome(away) };
  });
  const spans = sweep.spans.map(({ low, high, varied }): AtBound => {
    const away =
      low <= exciting && exciting <= high ? 0 : Math.min(Math.abs(low - exciting), Math.abs(high - exciting));
    return { varied: words(varied), outcome: outcome(away) };
  });
  const failed: readonly AtBound[] =
    sweep.failed > 0 || sweep.completeTo < exciting * (1 + margin)
      ? [
          {
            varied: allWords(sweep),
            outcome: { verdict: 'cannot-tell', why: 'demand-missing' },
          },
        ]
      : [];
  return [stated, ...samples, ...spans, ...failed];
}

const allWords = (sweep: FrequencySweep): readonly string[] =>
  (['bracket', 'structure', 'friction'] as const).flatMap((group) => thingWords(sweep, group));

/** Groups that have moved in a sample. */
function movedIn(sample: SweepSample): readonly SweptGroup[] {
  return (['bracket', 'structure', 'friction'] as const).filter((group) => sample[group] > 0);
}

/** Trade words of a group of things. */
function thingWords({ things }: FrequencySweep, group: SweptGroup): readonly string[] {
  if (group === 'bracket') return things.bracket === undefined ? [] : [things.bracket.what];
  if (group === 'friction') return things.friction.map(({ what }) => what);
  // Swept together: one word for all of them.
  return things.structure.length === 0 ? [] : [SWEPT_TOGETHER];
}

/** Word of all stiffnesses that are swept together. */
export const SWEPT_TOGETHER = 'stiffness of what supports, anchors and joints hold by';

/** Steps in which a span is laid out, so that the stretches of its frequencies overlap [-]. */
const STEP = 0.01;

/**
 * Speeds to keep away from over everything that nobody stated: of every sample, and of every frequency that is passed
 * between samples.
 *
 * @param sweep - samples and spans
 * @param asked - times per turn, margin as a share [-], and speeds of the drive [rad/s]
 * @returns stretches of speed, rising and apart from each other [rad/s]
 * @source dynamics
 */
export function sweptLockOut(
  sweep: FrequencySweep,
  asked: {
    readonly timesPerTurn: number;
    readonly margin: number;
    readonly speeds: { readonly lowest: number; readonly highest: number };
  },
): readonly SpeedBand[] {
  const single = sweep.samples.flatMap(({ modes }) =>
    modes.filter(({ counts }) => counts).map(({ frequency }) => frequency),
  );
  const passed = sweep.spans.flatMap(({ low, high }) => {
    const steps = low > 0 ? Math.ceil(Math.log(high / low) / Math.log1p(Math.min(STEP, asked.margin))) : 0;
    return Array.from({ length: Math.max(0, steps) }, (_, step) => low * (high / low) ** (step / steps));
  });
  return lockOutBands({ ...asked, frequencies: [...single, ...passed] });
}
