/**
 * From the text of a file to a verdict and everything behind it:
 * `readInstallation` → `review` → `reviewResults`, `supportSchedule`, `compareRevisions`. `buildLayout`, `buildFrame`,
 * `solveFrame` of `pipeborne/frame` and `runChecks` are its steps.
 */

export type { Subject } from './analysis/subject.js';
export { type Advice, type AdvisedFile, type AdviseOptions, type Alternative, advise } from './app/advise.js';
export {
  type Answers,
  type AsInstalled,
  type AsInstalledFile,
  type AsInstalledOptions,
  type AsInstalledSummary,
  asInstalled,
  asInstalledJsonSchema,
  asInstalledResults,
  asInstalledSummary,
  type EarlierVisit,
  earlierVisit,
  readingsJsonSchema,
  readReadings,
  type StoredReadings,
  storedReadings,
} from './app/as-installed.js';
export type { ComparedRevisions, Revision as ComparedRevision } from './app/compare-revisions.js';
export { type FieldSheet, type FormReading, fieldSheet, readFieldSheet } from './app/field-sheet.js';
export { compareRevisions, type Review, readResults, review, reviewResults } from './app/review.js';
export { version } from './app/version.js';
export { runChecks } from './checks/all-checks.js';
export type { Comparison } from './compare/comparison.js';
export type * from './input/installation.js';
export { installationJsonSchema } from './input/json-schema.js';
export { type ReadInstallation, readInstallation } from './input/read-installation.js';
export {
  EngineError,
  type Issue,
  type IssueCode,
  type IssueData,
  IssuesError,
  type Place,
} from './issues/issue.js';
export { printIssue } from './issues/print.js';
export type { Calculation, CheckUnit, Finding } from './judging/finding.js';
export { overallVerdict, type Verdict } from './judging/verdict.js';
export type { FailedStart, StartRun, StartUp, WorkedStart } from './mechanics/start/start-up.js';
export { buildFrame } from './model/frame/build-frame.js';
export { buildLayout } from './model/layout/build-layout.js';
export type * from './model/layout/layout.js';
export { type ResultsFile, resultsJsonSchema } from './report/results/results-schema.js';
export {
  type ScheduleRow,
  type ScheduleUnits,
  scheduleUnits,
  supportSchedule,
} from './report/rows/support-schedule.js';
export { type ReviewSummary, reviewSummary } from './report/summary.js';
export type { Citation, Confidence, Source, SourceId } from './sources/index.js';
export { type StartedFile, startFile } from './starter/start-file.js';
export type * from './study/bands/bands.js';
export { type Figure, runTrial, type Trial, type TrialBase } from './study/bands/evaluate.js';
export type { RunTrials } from './study/bands/run-trials.js';
export { type BandOptions, studyBands } from './study/bands/study-bands.js';
export type { Obtained, Uncertainty } from './study/bands/uncertainty.js';
