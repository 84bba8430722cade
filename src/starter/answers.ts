/** Answers that were read: each quantity as it was written, with its SI value. */
import type { UnitSystem } from '../units/index.js';
import type { Arrangement } from './question.js';

/** A quantity as written, which is what goes into the file, and its value in the SI unit. */
export interface Measured {
  readonly text: string;
  readonly value: number;
}

/** A nominal size as it goes into the file, and its label in the catalogue: `6`, `2-1/2`. */
export interface Size {
  readonly text: string;
  readonly nps: string;
}

export type Plan = 'north' | 'south' | 'east' | 'west';
export type ServiceKind = 'heating' | 'chilled' | 'condenser';

/** Everything a file is made from. What may be left is undefined where it was. */
export interface Answers {
  readonly units: UnitSystem;
  readonly arrangement: Arrangement;
  readonly mark: string;
  readonly project: string | undefined;
  readonly by: string | undefined;
  readonly date: string;
  readonly service: ServiceKind;
  readonly pressure: Measured;
  readonly running: Measured | undefined;
  readonly hot: Measured | undefined;
  readonly cold: Measured | undefined;
  readonly flow: Measured;
  readonly head: Measured;
  /** Of the ports, and of the pipe. */
  readonly size: Size;
  readonly pipeSize: Size;
  readonly schedule: string | undefined;
  readonly insulation: Measured | 'none' | undefined;
  readonly casingWeight: Measured;
  readonly motorPower: Measured;
  readonly motorSpeed: Measured | undefined;
  readonly motorWeight: Measured | undefined;
  readonly motorTop: Measured;
  readonly faces: Measured;
  readonly pumpHeight: Measured;
  readonly baseHeight: Measured | undefined;
  /** Undefined in a header run, whose pipe lies as high as the pump. */
  readonly pipeHeight: Measured | undefined;
  readonly ceiling: Measured;
  readonly facing: Plan;
  readonly turn: Plan;
  readonly drop: Measured | undefined;
  readonly suctionRun: Measured | undefined;
  readonly dischargeRun: Measured;
  readonly leg: Measured | undefined;
  readonly efficiency: Measured | undefined;
  readonly withdrawal: Measured | undefined;
  readonly nozzleForce: Measured | undefined;
  readonly nozzleMoment: Measured | undefined;
}
