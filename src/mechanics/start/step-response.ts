import { checkDamping, checkFrequency } from './dynamic-factor.js';
import { finerHistory, indexOfLargest, type LoadHistory } from './load-history.js';

export type { LoadHistory };

/** A single freedom with stiffness and mass. */
export interface Oscillator {
  /** [Hz] */
  readonly frequency: number;
  /** Damping over critical damping, from 0 to below 1 [-]. */
  readonly dampingRatio: number;
}

/** Answer of an oscillator, as the load that would move it as far if put on slowly. */
export interface OscillatorResponse {
  /** [s] */
  readonly time: readonly number[];
  /** In the unit of the load [N or N·m]. */
  readonly response: readonly number[];
  /** The largest in magnitude, with its sign. */
  readonly largest: number;
  /** When [s]. */
  readonly at: number;
  /** Its magnitude over the largest magnitude of the load [-]. */
  readonly factor: number;
}

/** How the motion is stepped: exactly for straight pieces, or by the average-acceleration rule of Newmark. */
export type Stepping = 'exact' | 'average acceleration';

/** Samples in a period: the peak between two is then missed by at most three in a thousand [-]. */
export const SAMPLES_PER_PERIOD = 40;

/**
 * Movement of an oscillator from rest under a sampled load, in the unit of the load. The last load is held for one
 * period more, so that a peak soon after the end is seen.
 *
 *     d'' + 2 ζ ω d' + ω² d = ω² F(t)
 *
 * @param oscillator - frequency [Hz] and damping ratio [-]
 * @param history - load against time
 * @param stepping - how to step; exact unless said
 * @returns response against time, the largest and the dynamic factor
 * @throws EngineError `mechanics.out-of-range`, `mechanics.not-a-number`
 * @source dynamics
 */
export function oscillatorResponse(
  oscillator: Oscillator,
  history: LoadHistory,
  stepping: Stepping = 'exact',
): OscillatorResponse {
  checkFrequency(oscillator.frequency);
  const period = 1 / oscillator.frequency;
  const fine = finerHistory(history, { step: period / SAMPLES_PER_PERIOD, activeRestraint: period });
  const response = respondTo(oscillator, fine, stepping);
  const largest = indexOfLargest(response);
  const load = Math.abs(fine.load[indexOfLargest(fine.load)]!);
  return {
    time: fine.time,
    response,
    largest: response[largest]!,
    at: fine.time[largest]!,
    factor: load === 0 ? 0 : Math.abs(response[largest]!) / load,
  };
}

/**
 * Response at the samples of a load, without adding any.
 *
 * @param oscillator - frequency [Hz] and damping ratio [-]
 * @param history - load against time
 * @param stepping - how to step
 * @returns response at each sample, in the unit of the load [N or N·m]
 * @throws EngineError `mechanics.out-of-range`
 * @source dynamics
 */
export function respondTo(
  oscillator: Oscillator,
  history: LoadHistory,
  stepping: Stepping,
): readonly number[] {
  checkFrequency(oscillator.frequency);
  checkDamping(oscillator.dampingRatio);
  return stepping === 'exact' ? exactResponse(oscillator, history) : averagedResponse(oscillator, history);
}

/**
 * Exact motion over straight pieces F = F₀ + a t. Sines of equal pieces are worked out once.
 *
 *     held part      d_p = F₀ − 2 ζ a / ω + a t
 *     free part      e^(−ζ ω t) (A cos ω_d t + B sin ω_d t),  ω_d = ω √(1 − ζ²)
 *     from the start A = d₀ − d_p(0),  B = (d'₀ − a + ζ ω A) / ω_d
 */
function exactResponse({ frequency, dampingRatio: ζ }: Oscillator, { time, load }: LoadHistory): number[] {
  const ω = 2 * Math.PI * frequency;
  const damped = ω * Math.sqrt(1 - ζ ** 2);
  const response: number[] = [0];
  let place = 0;
  let rate = 0;
  let known = Number.NaN;
  let cosine = 1;
  let sine = 0;
  for (let index = 1; index < time.length; index += 1) {
    const length = time[index]! - time[index - 1]!;
    if (length > 0) {
      // Pieces of one length differ in their last bits.
      if (!(Math.abs(length - known) <= SAME_LENGTH * length)) {
        const decay = Math.exp(-ζ * ω * length);
        known = length;
        cosine = decay * Math.cos(damped * length);
        sine = decay * Math.sin(damped * length);
      }
      const from = load[index - 1]!;
      const slope = (load[index]! - from) / length;
      const offset = from - (2 * ζ * slope) / ω;
      const A = place - offset;
      const B = (rate - slope + ζ * ω * A) / damped;
      place = A * cosine + B * sine + offset + slope * length;
      rate = damped * (B * cosine - A * sine) - ζ * ω * (A * cosine + B * sine) + slope;
    }
    response.push(place);
  }
  return response;
}

/** Relative difference under which two pieces count as of one length [-]. */
const SAME_LENGTH = 1e-11;

function averagedResponse(oscillator: Oscillator, { time, load }: LoadHistory): number[] {
  const response: number[] = [0];
  let state: State = { place: 0, rate: 0 };
  for (let index = 1; index < time.length; index += 1) {
    const length = time[index]! - time[index - 1]!;
    const piece = { length, from: load[index - 1]!, to: load[index]! };
    if (length > 0) state = averageAccelerationStep(oscillator, state, piece);
    response.push(state.place);
  }
  return response;
}

interface State {
  readonly place: number;
  readonly rate: number;
}

interface StraightPiece {
  readonly length: number;
  readonly from: number;
  readonly to: number;
}

/**
 * Newmark's rule with the average of the accelerations at both ends of the step h:
 *
 *     d₁ = d₀ + h d'₀ + h²/4 (d''₀ + d''₁),  d'₁ = d'₀ + h/2 (d''₀ + d''₁)
 */
function averageAccelerationStep(oscillator: Oscillator, state: State, piece: StraightPiece): State {
  const ω = 2 * Math.PI * oscillator.frequency;
  const ζ = oscillator.dampingRatio;
  const h = piece.length;
  const before = ω ** 2 * (piece.from - state.place) - 2 * ζ * ω * state.rate;
  const reachedPlace = state.place + h * state.rate + (h ** 2 / 4) * before;
  const reachedRate = state.rate + (h / 2) * before;
  const after =
    (ω ** 2 * (piece.to - reachedPlace) - 2 * ζ * ω * reachedRate) / (1 + ζ * ω * h + (ω * h) ** 2 / 4);
  return { place: reachedPlace + (h ** 2 / 4) * after, rate: reachedRate + (h / 2) * after };
}
