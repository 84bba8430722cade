import { EngineError } from '../issues/issue.js';
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
    const net = (at: number) => stage.torqueAt(at) - resistingTorque(load, at);
    const step = stageTime(stage, inertia, net, reached, load) / STEPS;
    const record = () => {
      time.push(now);
      speed.push(reached);
      netTorque.push(net(reached));
    };
    record();
    for (let count = 0; reached < stage.to; count += 1) {
      if (count >= MOST_STEPS) throw stalled(stage, reached, load);
      const next = advanced(reached, step, inertia, net);
      const last = next >= stage.to;
      const taken = last ? timeTo(stage.to, reached, step, inertia, net) : step;
      now += taken;
      reached = last ? stage.to : next;
      record();
    }
  }
  return { time, speed, netTorque, duration: now, ...summary(time, speed, netTorque, inertia) };
}

/** One Runge-Kutta step of J dω/dt = net(ω). */
function advanced(speed: number, step: number, inertia: number, net: (speed: number) => number): number {
  const first = net(speed) / inertia;
  const second = net(speed + (step / 2) * first) / inertia;
  const third = net(speed + (step / 2) * second) / inertia;
  const fourth = net(speed + step * third) / inertia;
  return speed + (step / 6) * (first + 2 * second + 2 * third + fourth);
}

/** Part of a step after which a speed is met, by halving. */
function timeTo(
  target: number,
  speed: number,
  step: number,
  inertia: number,
  net: (speed: number) => number,
): number {
  let low = 0;
  let high = step;
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (advanced(speed, middle, inertia, net) < target) low = middle;
    else high = middle;
  }
  return high;
}

/** Time a stage takes by the rule of the middle over its speeds, t = ∫ J dω / T_net; refused where none is left. */
function stageTime(
  stage: DriveStage,
  inertia: number,
  net: (speed: number) => number,
  from: number,
  load: StartingLoad,
): number {
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
