import { EngineError } from '../../issues/issue.js';
import { driveStages, type StartingSet } from './drive-stages.js';
import { runUp } from './run-up.js';
import { startTwist, type TwistBound, twistBound } from './start-twist.js';
import { type Oscillator, oscillatorResponse } from './step-response.js';

/** A start with one inertia out of a range. */
export interface StartWithInertia {
  /** [kg·m²] */
  readonly inertia: number;
  /** Time to running speed [s]. */
  readonly duration: number;
  /** Magnitude of the largest twist [N·m]. */
  readonly largestTwist: number;
  /** Dynamic factor of each oscillator asked for, in their order [-]. */
  readonly factors: readonly number[];
}

/** Starts over a range of inertia, and what bounds them. */
export interface StartTwistRange {
  readonly starts: readonly StartWithInertia[];
  /** Shortest and longest time to running speed [s]. */
  readonly duration: { readonly least: number; readonly most: number };
  /** Largest magnitude of the twist over all of them [N·m]. */
  readonly largestTwist: number;
  /** What no inertia exceeds. */
  readonly bound: TwistBound;
  /** Largest twist times dynamic factor for each oscillator, over all inertias [N·m]. */
  readonly largestResponse: readonly number[];
}

/**
 * A start whose inertia is only known to lie in a range. The largest twist does not depend on it, except on the ramp of
 * a drive; time and dynamic factor do, so each is worked out over the range.
 *
 * @param set - motor, load and way of starting
 * @param range - inertias to try and oscillators to try them on, for example the modes that twist the set
 * @returns every start, its bounds and the largest response
 * @throws EngineError `mechanics.never-reaches-speed`, `mechanics.changeover-not-reached`, `mechanics.out-of-range`
 * @source dynamics
 */
export function startTwistRange(
  set: StartingSet,
  range: { /** [kg·m²] */ readonly inertias: readonly number[]; readonly oscillators: readonly Oscillator[] },
): StartTwistRange {
  if (range.inertias.length === 0)
    throw new EngineError('mechanics.out-of-range', { what: 'number of inertias', value: 0 });
  const starts = range.inertias.map((inertia): StartWithInertia => {
    const run = runUp({ inertia, load: set.load, stages: driveStages(set, inertia) });
    const { history, largest } = startTwist(run);
    const factors = range.oscillators.map((oscillator) => oscillatorResponse(oscillator, history).factor);
    return { inertia, duration: run.duration, largestTwist: Math.abs(largest), factors };
  });
  const durations = starts.map(({ duration }) => duration);
  return {
    starts,
    duration: { least: Math.min(...durations), most: Math.max(...durations) },
    largestTwist: Math.max(...starts.map(({ largestTwist }) => largestTwist)),
    bound: twistBound(set),
    largestResponse: range.oscillators.map((_, index) =>
      Math.max(...starts.map(({ largestTwist, factors }) => largestTwist * (factors[index] ?? 0))),
    ),
  };
}

/**
 * Inertias in even steps of ratio from the least to the most.
 *
 * @param ends - least and most [kg·m²] and how many [-]
 * @returns inertias, rising [kg·m²]
 * @throws EngineError `mechanics.out-of-range`
 * @source statics
 */
export function inertiasBetween(ends: {
  /** [kg·m²] */
  readonly least: number;
  /** [kg·m²] */
  readonly most: number;
  readonly count: number;
}): readonly number[] {
  const { least, most, count } = ends;
  if (!(least > 0 && most >= least && Number.isFinite(most)))
    throw new EngineError('mechanics.out-of-range', { what: 'range of inertia', value: least });
  if (count < 2 || least === most) return [least];
  return Array.from({ length: count }, (_, index) => least * (most / least) ** (index / (count - 1)));
}
