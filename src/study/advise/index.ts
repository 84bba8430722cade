/** Advice: the smallest changes that make an installation meet its limits. */
export {
  type Advice,
  type AdviseOptions,
  type AdviseTools,
  type Alternative,
  adviseWith,
  type ReviewedText,
  type Unsolved,
} from './advise.js';
export { type Change, type ChangeKind, changeKinds, usualEffort } from './change.js';
export type { FindingPair } from './compare-findings.js';
export type { Edit } from './edit.js';
export { type ScreenOutcome, type ScreenPlan, screen } from './screen.js';
