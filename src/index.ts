/**
 * The whole, in one door. What stands here is a promise; everything else may change. `pipeborne/frame`,
 * `pipeborne/review` and `pipeborne/print` are the same things in three parts, for who needs one of them.
 *
 * `readInstallation` → `review` → `reviewResults`, `renderReviewPdf`, `renderReviewHtml` is the whole way.
 */

export type * from './frame.js';
export { EngineError, naturalFrequencies, solveFrame, type Vec3, wrenchOnBody } from './frame.js';
export type * from './print.js';
export {
  checkTemplates,
  fixedTemplates,
  readFirm,
  readLogo,
  renderAsInstalledPdf,
  renderComparisonPdf,
  renderFieldSheetPdf,
  renderNextSheetPdf,
  renderReviewHtml,
  renderReviewPdf,
} from './print.js';
export type * from './review.js';
export {
  advise,
  asInstalled,
  asInstalledJsonSchema,
  asInstalledResults,
  asInstalledSummary,
  buildFrame,
  buildLayout,
  compareRevisions,
  earlierVisit,
  fieldSheet,
  IssuesError,
  installationJsonSchema,
  overallVerdict,
  printIssue,
  readFieldSheet,
  readInstallation,
  readingsJsonSchema,
  readReadings,
  readResults,
  resultsJsonSchema,
  review,
  reviewResults,
  reviewSummary,
  runChecks,
  runTrial,
  scheduleUnits,
  startFile,
  storedReadings,
  studyBands,
  supportSchedule,
  version,
} from './review.js';
