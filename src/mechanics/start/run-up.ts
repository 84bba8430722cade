import { EngineError } from '../../issues/issue.js';
import type { DriveStage } from './drive-stages.js';
import { resistingTorque, type StartingLoad } from './starting-load.js';

/** Everything a run-up needs. */
export interface RunUpCase {
  /** Both rotors, coupling and entrained liquid [kg·m²]. */
  readonly inertia: number;
  readonly load: StartingLoad;
  readonly stages: readonly DriveStage[];
}

/** A set on its way from standstill to its running speed. At a changeover two samples have the same time. */
export interface RunUp {
  /** [s] */
  readonly time: readonly number[];
  /** [rad/s] */
  readonly speed: readonly number[];
  /** Torque left to speed up the rotor, J dω/dt [N·m]. */
  readonly netTorque: readonly number[];
  /** Time to the end of the last stage [s]. */
  readonly duration: number;
  /** [N·m] */
  readonly largestNetTorque: number;
  /** Speed at which it acts [rad/s]. */
  readonly atSpeed: number;
  /** Work of the net torque, summed over the samples [J]. */
  readonly work: number;
  /** What the rotor then holds, J ω²/2 [J]: equal to the work but for rounding. */
  readonly kineticEnergy: number;
}

/** Steps a stage is meant to take, and at most takes [-]. */
const STEPS = 2000;
const MOST_STEPS = 20 * STEPS;

/**
 * Speed of a set against time from standstill, by fourth-order Runge-Kutta in equal steps, a stage at a time.
 *
 *     J dω/dt = T_motor − T_water − T_friction
 *
 * @param start - inertia [kg·m²], what holds back and what drives
 * @returns samples of time, speed and net torque, the largest, and both sides of the energy
 * @throws EngineError `mechanics.never-reaches-speed`, `mechanics.changeover-not-reached`, `mechanics.out-of-range`
 * @source dynamics
 */
export function runUp(start: RunUpCase): RunUp {
  const { inertia, load } = start;
  if (!(inertia > 0 && Number.isFinite(inertia)))
    throw new EngineError('mechanics.out-of-range', { what: 'inertia of the rotors', value: inertia });
  const time: number[] = [];
  const speed: number[] = [];
  const netTorque: number[] = [];
  let now = 0;
  let reached = 0;
  for (const stage of start.stages) {
    if (stage.to <= reached) continue;
    const net: NetTorque = (at, when) => {
      const left = stage.torqueAt(at, when) - resistingTorque(load, at);
      // Friction holds a shaft that stands; it does not turn it backwards.
      return at <= 0 ? Math.max(0, left) : left;
    };
    const quickest = stageTime(stage, inertia, reached, load);
    const step = (quickest + Math.max(0, (stage.rise ?? 0) - now)) / STEPS;
    const record = () => {
      time.push(now);
      speed.push(reached);
      netTorque.push(net(reached, now));
    };
    record();
    for (let count = 0; reached < stage.to; count += 1) {
      if (count >= MOST_STEPS) throw stalled(stage, reached, load);
      const advance = (taken: number) => advanced({ speed: reached, time: now }, taken, inertia, net);
      const next = advance(step);
      const last = next >= stage.to;
      const taken = last ? timeTo(stage.to, step, advance) : step;
      now += taken;
      reached = last ? stage.to : next;
      record();
    }
  }
  return { time, speed, netTorque, duration: now, ...summary(time, speed, netTorque, inertia) };
}

/** Torque left to speed up the rotor [N·m] at a speed [rad/s] and time [s]. */
type NetTorque = (speed: number, time: number) => number;

/** Speed after one Runge-Kutta step of J dω/dt = net(ω, t). */
function advanced(
  from: { readonly speed: number; readonly time: number },
  step: number,
  inertia: number,
  net: NetTorque,
): number {
  const { speed, time } = from;
  const half = step / 2;
  const first = net(speed, time) / inertia;
  const second = net(speed + half * first, time + half) / inertia;
  const third = net(speed + half * second, time + half) / inertia;
  const fourth = net(speed + step * third, time + step) / inertia;
  return Math.max(0, speed + (step / 6) * (first + 2 * second + 2 * third + fourth));
}

/** Part of a step after which a speed is met, by halving. */
function timeTo(target: number, step: number, advance: (taken: number) => number): number {
  let low = 0;
  let high = step;
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (advance(middle) < target) low = middle;
    else high = middle;
  }
  return high;
}

/** Time a stage takes with nothing left to rise, t = ∫ J dω / T_net by the rule of the middle; refused where none is left. */
function stageTime(stage: DriveStage, inertia: number, from: number, load: StartingLoad): number {
  const net = (at: number) => stage.torqueAt(at, Number.POSITIVE_INFINITY) - resistingTorque(load, at);
  const width = (stage.to - from) / STEPS;
  if (!(net(from) > 0)) throw stalled(stage, from, load);
  let sum = 0;
  for (let index = 0; index < STEPS; index += 1) {
    const middle = from + (index + 0.5) * width;
    const left = net(middle);
    if (!(left > 0)) throw stalled(stage, middle, load);
    sum += (inertia * width) / left;
  }
  return sum;
}

function stalled(stage: DriveStage, speed: number, load: StartingLoad): EngineError {
  const reached = Math.floor((100 * speed) / load.runningSpeed);
  return stage.purpose === 'reduced'
    ? new EngineError('mechanics.changeover-not-reached', { reached })
    : new EngineError('mechanics.never-reaches-speed', { reached });
}

function summary(
  time: readonly number[],
  speed: readonly number[],
  netTorque: readonly number[],
  inertia: number,
): Pick<RunUp, 'largestNetTorque' | 'atSpeed' | 'work' | 'kineticEnergy'> {
  let largest = 0;
  let work = 0;
  for (let index = 0; index < time.length; index += 1) {
    if (netTorque[index]! > netTorque[largest]!) largest = index;
    if (index === 0) continue;
    const power = (netTorque[index]! * speed[index]! + netTorque[index - 1]! * speed[index - 1]!) / 2;
    work += power * (time[index]! - time[index - 1]!);
  }
  return {
    largestNetTorque: netTorque[largest]!,
    atSpeed: speed[largest]!,
    work,
    kineticEnergy: (inertia * speed[speed.length - 1]! ** 2) / 2,
  };
}
