import { EngineError } from '../../issues/issue.js';
import { checkFrequency } from '../start/dynamic-factor.js';
import { finerHistory, indexOfLargest, type LoadHistory } from '../start/load-history.js';
import { respondTo, SAMPLES_PER_PERIOD, type Stepping } from '../start/step-response.js';

/** One natural mode, its shape scaled to unit modal mass. */
export interface LoadedMode {
  /** [Hz] */
  readonly frequency: number;
  /** Shape times the pattern of the load at load 1 [1/√kg times the unit of the pattern]. */
  readonly participation: number;
  /** Each output in the shape itself [1/√kg times the unit of the output]. */
  readonly outputs: Readonly<Record<string, number>>;
}

/** A load against time on a frame whose modes are known. */
export interface ModalCase {
  readonly modes: readonly LoadedMode[];
  /** Each output under the load 1 put on slowly, from the frame's own stiffness. */
  readonly unitStatic: Readonly<Record<string, number>>;
  readonly history: LoadHistory;
  /** Damping over critical damping, the same in all modes; given by the caller, 0 allowed [-]. */
  readonly dampingRatio: number;
}

/** One output against time. */
export interface OutputHistory {
  /** At the times of the response. */
  readonly values: readonly number[];
  /** The largest in magnitude, with its sign. */
  readonly largest: number;
  /** When [s]. */
  readonly at: number;
  /** Under the largest load put on slowly, with its sign. */
  readonly quasiStatic: number;
  /** |largest| over |quasiStatic|; 0 where both are nothing [-]. */
  readonly factor: number;
  /** Sum of each part's own largest magnitude: what no history of these parts can exceed. */
  readonly ceiling: number;
  /** Share of the static output that the modes carry; the rest follows the load without delay [-]. */
  readonly inModes: number;
}

/** Outputs by name, all at the same times. */
export interface ModalResponse {
  /** [s] */
  readonly time: readonly number[];
  readonly outputs: Readonly<Record<string, OutputHistory>>;
}

/**
 * Outputs of a frame under a load against time, mode by mode, with what the modes left out would add standing still.
 *
 *     o(t) = Σ (p q / ω²) d(t) + (o_static − Σ p q / ω²) F(t)
 *
 * p participation, q output of the shape, d(t) answer of the mode's oscillator in the unit of the load.
 *
 * @param loaded - modes, static outputs, load and damping
 * @param stepping - how each mode is stepped; exact unless said
 * @returns each output against time, its largest, and the same quasi-statically
 * @throws EngineError `mechanics.out-of-range`, `mechanics.not-a-number`
 * @source dynamics
 */
export function modalHistory(loaded: ModalCase, stepping: Stepping = 'exact'): ModalResponse {
  const { modes, unitStatic, dampingRatio } = loaded;
  const fine = timesFor(loaded);
  const responses = modes.map(({ frequency }) => respondTo({ frequency, dampingRatio }, fine, stepping));
  const largestOf = responses.map((response) => Math.abs(response[indexOfLargest(response)]!));
  const largestLoad = fine.load[indexOfLargest(fine.load)]!;
  const outputs = Object.entries(unitStatic).map(([name, value]) => {
    const shares = modes.map((mode, index) => shareOf(mode, name, index));
    const carried = shares.reduce((sum, share) => sum + share, 0);
    const rest = value - carried;
    // Mode by mode over all samples: there are a hundred thousand of them.
    const values = fine.load.map((load) => rest * load);
    shares.forEach((share, mode) => {
      const response = responses[mode]!;
      for (let sample = 0; sample < values.length; sample++) values[sample]! += share * response[sample]!;
    });
    const peak = indexOfLargest(values);
    const quasiStatic = value * largestLoad;
    const output: OutputHistory = {
      values,
      largest: values[peak]!,
      at: fine.time[peak]!,
      quasiStatic,
      factor: values[peak] === 0 ? 0 : Math.abs(values[peak]! / quasiStatic),
      ceiling: shares.reduce(
        (sum, share, mode) => sum + Math.abs(share) * largestOf[mode]!,
        Math.abs(rest * largestLoad),
      ),
      inModes: value === 0 ? 0 : carried / value,
    };
    return [name, output] as const;
  });
  return { time: fine.time, outputs: Object.fromEntries(outputs) };
}

/** Fine enough for the highest mode, and one period of the lowest beyond the end of the load. */
function timesFor({ modes, history }: ModalCase): LoadHistory {
  const frequencies = modes.map(({ frequency }) => {
    checkFrequency(frequency);
    return frequency;
  });
  if (frequencies.length === 0)
    throw new EngineError('mechanics.out-of-range', { what: 'number of modes', value: 0 });
  return finerHistory(history, {
    step: 1 / (Math.max(...frequencies) * SAMPLES_PER_PERIOD),
    activeRestraint: 1 / Math.min(...frequencies),
  });
}

/** Static output of one mode under the load 1. */
function shareOf(mode: LoadedMode, name: string, index: number): number {
  const share =
    (mode.participation * (mode.outputs[name] ?? Number.NaN)) / (2 * Math.PI * mode.frequency) ** 2;
  if (!Number.isFinite(share))
    throw new EngineError('mechanics.not-a-number', { what: `output "${name}" of mode ${index + 1}` });
  return share;
}

/** An output by time history beside the static one times a dynamic factor. */
export interface FactorComparison {
  /** |quasi-static| times the factor. */
  readonly estimate: number;
  /** |largest by history| over the estimate [-]. */
  readonly ratio: number;
  /** Whether the estimate is on the safe side of the history. */
  readonly covers: boolean;
}

/**
 * Compares an output by time history with the quick way, static value times dynamic factor. The quick way fails where
 * modes cancel in the static value and not in motion: `covers` says so.
 *
 * @param output - one output of `modalHistory`
 * @param dynamicFactor - for example of `stepFactor` [-]
 * @returns both, their ratio, and whether the quick way is safe
 * @source dynamics
 */
export function againstDynamicFactor(output: OutputHistory, dynamicFactor: number): FactorComparison {
  const estimate = Math.abs(output.quasiStatic) * dynamicFactor;
  const largest = Math.abs(output.largest);
  return {
    estimate,
    ratio: largest === 0 ? 0 : largest / estimate,
    covers: largest <= estimate * (1 + 1e-9),
  };
}
