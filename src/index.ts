/**
 * The public door. What stands here is a promise; everything else may change.
 *
 * `readInstallation` → `review` → `reviewResults`, `renderReviewPdf`, `renderReviewHtml` is the whole way; `buildLayout`,
 * `solveFrame` and `runChecks` are its steps; `solveFrame` also solves a `Frame` written by hand.
 */
export { type Advice, type AdvisedFile, type AdviseOptions, type Alternative, advise } from './advise.js';
export {
  type Answers,
  type AsInstalled,
  type AsInstalledFile,
  type AsInstalledGlance,
  type AsInstalledOptions,
  type AsInstalledPrint,
  asInstalled,
  asInstalledGlance,
  asInstalledJsonSchema,
  asInstalledResults,
  type EarlierVisit,
  earlierVisit,
  readingsJsonSchema,
  readReadings,
  renderAsInstalledPdf,
  renderNextSheetPdf,
  type StoredReadings,
  storedReadings,
} from './as-installed.js';
export type { TemplatesToCheck } from './check-templates.js';
export type { Calculation, CheckUnit, Finding, Subject, Verdict } from './checks/finding.js';
export { overallVerdict, runChecks } from './checks/index.js';
export type { Comparison } from './compare/comparison.js';
export type {
  ComparedRevisions,
  ComparisonRendering,
  Revision as ComparedRevision,
} from './compare-revisions.js';
export {
  type FieldSheet,
  type FormReading,
  fieldSheet,
  readFieldSheet,
  renderFieldSheetPdf,
  type SheetOptions,
} from './field-sheet.js';
export {
  type Firm,
  installationJsonSchema,
  type ReadFirm,
  type ReadInstallation,
  readFirm,
  readInstallation,
} from './input/index.js';
export type * from './input/installation.js';
export { EngineError, type Issue, type IssueData, IssuesError, type Place } from './issues/issue.js';
export { printIssue } from './issues/print.js';
export type { Frequencies, Mode } from './mechanics/frequencies.js';
export type {
  Balance,
  ConditionResponse,
  Quality,
  Response,
  RestraintState,
  SupportResponse,
} from './mechanics/response.js';
export { solveFrame } from './mechanics/solve-frame.js';
export type { FailedStart, StartRun, StartUp, WorkedStart } from './mechanics/start-up.js';
export type { Movement, Wrench } from './model/conventions.js';
export type * from './model/frame.js';
export { buildFrame, buildLayout } from './model/index.js';
export type * from './model/layout.js';
export type { FontFiles, Logo, RenderOptions } from './render-review.js';
export type { Reader } from './report/context.js';
export { fixedTemplates } from './report/fixed-templates.js';
export { type Glance, glance } from './report/glance.js';
export { type ResultsFile, resultsJsonSchema } from './report/results-schema.js';
export {
  type ScheduleRow,
  type ScheduleUnits,
  scheduleUnits,
  supportSchedule,
} from './report/support-schedule.js';
export {
  checkTemplates,
  compareRevisions,
  type Review,
  readLogo,
  readResults,
  renderComparisonPdf,
  renderReviewHtml,
  renderReviewPdf,
  review,
  reviewResults,
} from './review.js';
export type { Citation, Confidence, Source, SourceId } from './sources/index.js';
export { type StartedFile, startFile } from './starter/index.js';
export type * from './study/bands.js';
export type { Doubt, Obtained } from './study/doubt.js';
export { type Figure, type Trial, type TrialBase, tryOut } from './study/evaluate.js';
export type { RunTrials } from './study/run-trials.js';
export { type BandOptions, studyBands } from './study/study-bands.js';
export { version } from './version.js';
