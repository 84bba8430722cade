/**
 * What solving a frame gives, per condition. Plain data; recovery functions live beside.
 */
import type { Coded } from '../../issues/issue.js';
import type { Movement, Vec3, Wrench } from '../../model/conventions.js';

/** How the sum of everything that acts compares with the sum of everything that holds. */
export interface Balance {
  /** Sum of applied forces [N] and their moment about the origin [N·m]. */
  readonly applied: Wrench;
  /** Sum of support reactions on the frame [N] and their moment about the origin [N·m]. */
  readonly reacted: Wrench;
  /** |applied + reacted| over the largest of weight and reaction, forces and moments (moments over weight × size) [-]. */
  readonly residual: number;
}

/** State of one restraint after solving. */
export type RestraintState =
  | 'holding'
  | 'lifted'
  | 'in gap'
  | 'slipping'
  | 'absent'
  | 'stopped'
  /** A spring at the end of its travel where it carries least, and where it carries most. */
  | 'topped out'
  | 'bottomed out';

/** State of a joint with rods that have a gap, or with an angle through which it bends freely. */
export interface JointState {
  /** Movement of its `to` side away from its `from` side along its axis [m]. */
  readonly lengthening: number;
  /** Resultant of its two bending angles [rad]. */
  readonly angle: number;
  /** Present where it has rods with a gap. */
  readonly rods?: 'slack' | 'engaged';
  /** Tension of the rods together; 0 while slack [N]. */
  readonly rodTension?: number;
  /** Present where it bends freely up to an angle. */
  readonly bending?: 'free' | 'at limit';
}

export interface SupportResponse {
  /** As the pipe acts on the support, about the support point. */
  readonly load: Wrench;
  /** Per restraint, in the order of the frame. */
  readonly states: readonly RestraintState[];
  /**
   * What of the load nothing determines: rigid supports of one rigid body share it in a way that neither statics nor
   * stiffness says, and the load given is the share with the least sum of squares. Absent where all is determined.
   */
  readonly undetermined?: readonly UndeterminedShare[];
}

/** Part of the load of a support: upright, level, or moment. */
export type UndeterminedShare = 'vertical' | 'sideways' | 'moment';

/** One condition solved. */
export interface ConditionResponse {
  readonly name: string;
  readonly movements: Readonly<Record<string, Movement>>;
  readonly supports: Readonly<Record<string, SupportResponse>>;
  /** End wrenches of each member as the points act on it, global axes, about each end. */
  readonly members: Readonly<Record<string, { readonly from: Wrench; readonly to: Wrench }>>;
  /** Wrench that `to` exerts on the joint … as the joint acts on each side's point. */
  readonly joints: Readonly<Record<string, { readonly from: Wrench; readonly to: Wrench }>>;
  /** Total weight of everything present, positive number [N]. */
  readonly weight: number;
  readonly balance: Balance;
  /** Joints with play, by name; absent where the frame has none. */
  readonly jointStates?: Readonly<Record<string, JointState>>;
  /** Virtual work of the final state: |work that acts − work taken up| over the sum of their parts [-]. */
  readonly energy?: number;
  /** Rounds the contact iteration took; 1 where nothing is one-way, swings or has play. */
  readonly rounds: number;
}

/** Trust figures of a solution. */
export interface Quality {
  /** Largest |K u − f| over |f| of all conditions [-]. */
  readonly residual: number;
  /** Estimate of the reciprocal condition number of the scaled stiffness [-]. */
  readonly reciprocalCondition: number;
  /** Largest `energy` of all conditions [-]. */
  readonly energy?: number;
  /** Number of unknowns. */
  readonly unknowns: number;
  /** Entries kept in the profile of the factor. */
  readonly profile: number;
}

/** Why a what-if condition has no solution. */
export type UnsolvedCondition = Coded;

/** All conditions solved. */
export interface Response {
  readonly conditions: Readonly<Record<string, ConditionResponse>>;
  /** What-if conditions that cannot stand, by name. */
  readonly unsolved?: Readonly<Record<string, UnsolvedCondition>>;
  readonly quality: Quality;
}

export type { Movement, Vec3, Wrench };
