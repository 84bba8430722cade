/**
 * The public door. What stands here is a promise; everything else may change.
 *
 * `readInstallation` → `review` → `reviewResults`, `renderReviewPdf`, `renderReviewHtml` is the whole way; `buildLayout`,
 * `solveFrame` and `runChecks` are its steps; `solveFrame` also solves a `Frame` written by hand.
 */

export type { Subject } from './analysis/subject.js';
export { type Advice, type AdvisedFile, type AdviseOptions, type Alternative, advise } from './app/advise.js';
export {
  type Answers,
  type AsInstalled,
  type AsInstalledFile,
  type AsInstalledOptions,
  type AsInstalledPrint,
  type AsInstalledSummary,
  asInstalled,
  asInstalledJsonSchema,
  asInstalledResults,
  asInstalledSummary,
  type EarlierVisit,
  earlierVisit,
  readingsJsonSchema,
  readReadings,
  renderAsInstalledPdf,
  renderNextSheetPdf,
  type StoredReadings,
  storedReadings,
} from './app/as-installed.js';
export type { TemplatesToCheck } from './app/check-templates.js';
export type {
  ComparedRevisions,
  ComparisonRendering,
  Revision as ComparedRevision,
} from './app/compare-revisions.js';
export {
  type FieldSheet,
  type FormReading,
  fieldSheet,
  readFieldSheet,
  renderFieldSheetPdf,
  type SheetOptions,
} from './app/field-sheet.js';
export type { FontFiles, Logo, RenderOptions } from './app/render-review.js';
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
} from './app/review.js';
export { version } from './app/version.js';
export { runChecks } from './checks/all-checks.js';
export type { Comparison } from './compare/comparison.js';
export type * from './input/installation.js';
export { installationJsonSchema } from './input/json-schema.js';
export { type Firm, type ReadFirm, readFirm } from './input/read-firm.js';
export { type ReadInstallation, readInstallation } from './input/read-installation.js';
export { EngineError, type Issue, type IssueData, IssuesError, type Place } from './issues/issue.js';
export { printIssue } from './issues/print.js';
export type { Calculation, CheckUnit, Finding } from './judging/finding.js';
export type { Verdict } from './judging/verdict.js';
export { overallVerdict } from './judging/verdict.js';
export type {
  Balance,
  ConditionResponse,
  Quality,
  Response,
  RestraintState,
  SupportResponse,
  UndeterminedShare,
} from './mechanics/frame/response.js';
export { solveFrame } from './mechanics/frame/solve-frame.js';
export type { Frequencies, Mode } from './mechanics/modes/frequencies.js';
export type { FailedStart, StartRun, StartUp, WorkedStart } from './mechanics/start/start-up.js';
export type { Movement, Wrench } from './model/conventions.js';
export { buildFrame } from './model/frame/build-frame.js';
export type * from './model/frame/frame.js';
export { buildLayout } from './model/layout/build-layout.js';
export type * from './model/layout/layout.js';
export type { Reader } from './report/context.js';
export { fixedTemplates } from './report/fixed-templates.js';
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
