import { EngineError } from '../../issues/issue.js';

/** A load against time, straight between samples. Two samples at one time are a jump; before the first there is none. */
export interface LoadHistory {
  /** Never falling [s]. */
  readonly time: readonly number[];
  /** [N or N·m] */
  readonly load: readonly number[];
}

/** Samples a finer history has at most [-]. */
const MOST_SAMPLES = 200_000;

/**
 * The same load with more samples on its straight pieces, and its last value held for a while. Where the samples would
 * be more than 200 000 they stand farther apart: only peaks between them are then missed.
 *
 * @param history - load against time
 * @param wanted - largest step between samples and time to hold the last load
 * @returns load against time
 * @throws EngineError `mechanics.out-of-range`, `mechanics.not-a-number`
 * @source dynamics
 */
export function finerHistory(
  history: LoadHistory,
  wanted: { /** [s] */ readonly step: number /** [s] */; readonly activeRestraint: number },
): LoadHistory {
  checkHistory(history);
  const last = history.time.length - 1;
  const time = [...history.time, history.time[last]! + wanted.activeRestraint];
  const load = [...history.load, history.load[last]!];
  const span = time[last + 1]! - time[0]!;
  const step = Math.max(wanted.step, span / MOST_SAMPLES);
  const fine: { time: number[]; load: number[] } = { time: [time[0]!], load: [load[0]!] };
  for (let index = 0; index <= last; index += 1) {
    const length = time[index + 1]! - time[index]!;
    const pieces = Math.max(1, Math.ceil(length / step));
    for (let piece = 1; piece <= pieces; piece += 1) {
      const share = piece / pieces;
      fine.time.push(time[index]! + share * length);
      fine.load.push(load[index]! + share * (load[index + 1]! - load[index]!));
    }
  }
  return fine;
}

/**
 * Sample of the largest magnitude.
 *
 * @param values - samples in one unit [-]
 * @returns its place in the list [-]
 * @source statics
 */
export function indexOfLargest(values: readonly number[]): number {
  let largest = 0;
  for (let index = 1; index < values.length; index += 1)
    if (Math.abs(values[index]!) > Math.abs(values[largest]!)) largest = index;
  return largest;
}

function checkHistory({ time, load }: LoadHistory): void {
  if (time.length === 0 || time.length !== load.length)
    throw new EngineError('mechanics.out-of-range', { what: 'samples of the load', value: load.length });
  for (let index = 0; index < time.length; index += 1) {
    if (!Number.isFinite(time[index]!) || !Number.isFinite(load[index]!))
      throw new EngineError('mechanics.not-a-number', { what: `sample ${index + 1} of the load` });
    if (index > 0 && time[index]! < time[index - 1]!)
      throw new EngineError('mechanics.out-of-range', { what: 'time of a sample', value: time[index]! });
  }
}
