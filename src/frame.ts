/**
 * A door of its own for the mechanics: a frame written by hand is solved, vibrated and cut here, without an input file,
 * units or sentences. Everything is SI: m, N, N·m, rad, kg, K, Pa, Hz; x east, y north, z up.
 */

export { type FrequencyOptions, naturalFrequencies, solveFrame, wrenchOnBody } from './app/written-frame.js';
export { EngineError, type IssueCode, type IssueData } from './issues/issue.js';
export type {
  Balance,
  ConditionResponse,
  JointState,
  Quality,
  Response,
  RestraintState,
  SupportResponse,
  UndeterminedShare,
  UnsolvedCondition,
} from './mechanics/frame/response.js';
export type { Frequencies, Mode } from './mechanics/modes/frequencies.js';
export type { Movement, Vec3, Wrench } from './model/conventions.js';
export type * from './model/frame/frame.js';
