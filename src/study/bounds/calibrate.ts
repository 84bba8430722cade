/** The model corrected by a knock test: one stiffness fitted, that of the motor's bracket, the least certain of all. */

import { conditionOf } from '../../analysis/conditions.js';
import { pumpModes } from '../../analysis/motion/pump-modes.js';
import type { Subject } from '../../analysis/subject.js';
import type { Installation } from '../../input/installation.js';
import { refineFrame } from '../../mechanics/frame/refine-frame.js';
import { vibrationsUpTo } from '../../mechanics/modes/find-vibrations.js';
import { lockOutBands, type SpeedBand } from '../../mechanics/modes/lock-out-bands.js';
import { buildFrameParts } from '../../model/frame/build-frame.js';
import { heldBy } from './layout-at-bounds.js';

/** What came of fitting. */
export interface Calibration {
  /** What was fitted: one stiffness, nothing else. */
  readonly fitted: 'motor bracket';
  /** Natural frequency of the motor on its bracket, the casing held, with which the model gives what was read [Hz]. */
  readonly bracketFrequency: number;
  /** Stiffness over that stated; absent where none was stated or it was rigid [-]. */
  readonly factor?: number;
  /** False where the factor is below 0.5 or above 2: then something else is off, and the fit is not to be relied on. */
  readonly isUsual: boolean;
  /** Vibrations of the pump with it, lowest first [Hz]. */
  readonly frequencies: readonly number[];
  /** Speeds a drive keeps out of with it; none at one speed or without a margin [rad/s]. */
  readonly bands: readonly SpeedBand[];
}

/** Bracket frequencies between which a fit is looked for [Hz]. */
const LOWEST = 5;
const HIGHEST = 1000;
/** Halvings of that range: to a millionth [-]. */
const HALVINGS = 30;
/** Factors on a stated stiffness that are still believed: judgement, no publication [-]. */
const USUAL = [0.5, 2] as const;

/**
 * Fits the bracket so that the vibration in which pump and motor have the largest share comes to a frequency that was read.
 *
 *     f of that vibration never falls with the stiffness of the bracket, so halving the range finds it
 *
 * @param subject - the installation, solved as stated
 * @param measured - frequency of a knock test on the motor, pump stopped and full [Hz]
 * @returns the fit; undefined where no bracket gives that frequency: it lies above the one of a rigid bracket, or below
 * @throws EngineError as `solveFrame`
 * @source dynamics
 */
export function calibrateBracket(subject: Subject, measured: number): Calibration | undefined {
  const { installation, layout } = subject;
  const running = conditionOf(subject, 'running');
  if (running === undefined || !(measured > 0)) return undefined;
  const { speed, speeds } = installation.pump.motor;
  const margin = installation.limits.frequencyMargin?.value;
  const fastest = Math.max(speed, speeds?.highest ?? 0) / (2 * Math.PI);
  const above = 2 * Math.max(measured, fastest);
  const refined = refineFrame(layout.frame, running, above);
  const modesWith = (bracket: number) => {
    const frame = heldBy(refined, buildFrameParts(onBracket(installation, bracket)).frame);
    const frequencies = vibrationsUpTo(frame, running, above);
    return pumpModes({ layout: { ...layout, frame }, frequencies });
  };
  const leading = (bracket: number): number =>
    [...modesWith(bracket)].sort((a, b) => b.share - a.share)[0]?.mode.frequency ?? Number.NaN;
  if (!(leading(LOWEST) <= measured && measured <= leading(HIGHEST))) return undefined;
  let [low, high] = [LOWEST, HIGHEST];
  for (let round = 0; round < HALVINGS; round++) {
    const middle = Math.sqrt(low * high);
    if (leading(middle) < measured) low = middle;
    else high = middle;
  }
  const bracketFrequency = Math.sqrt(low * high);
  const frequencies = modesWith(bracketFrequency)
    .filter(({ counts }) => counts)
    .map(({ mode }) => mode.frequency);
  // Modes jump where another takes the lead: what was read has to be among them.
  if (!frequencies.some((one) => Math.abs(one - measured) < CLOSE * measured)) return undefined;
  const factor = factorOf(installation, bracketFrequency);
  const bands =
    margin === undefined || speeds === undefined
      ? []
      : lockOutBands({ frequencies, timesPerTurn: 1, margin, speeds });
  return {
    fitted: 'motor bracket',
    bracketFrequency,
    ...(factor !== undefined && { factor }),
    isUsual: factor === undefined || (factor >= USUAL[0] && factor <= USUAL[1]),
    frequencies,
    bands,
  };
}

/** How near the fitted frequency has to come [-]. */
const CLOSE = 1e-3;

function onBracket(installation: Installation, frequency: number): Installation {
  const { pump } = installation;
  const value = { value: frequency, origin: { kind: 'assumed', path: 'pump.motor.bracket' } } as const;
  return {
    ...installation,
    pump: { ...pump, motor: { ...pump.motor, bracket: { kind: 'frequency', frequency: value } } },
  };
}

/** Stiffness goes with the square of the frequency. */
function factorOf({ pump }: Installation, fitted: number): number | undefined {
  const { bracket } = pump.motor;
  return bracket?.kind === 'frequency' ? (fitted / bracket.frequency.value) ** 2 : undefined;
}
