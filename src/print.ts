/**
 * A review on paper: PDF, page, comparison, field sheet, as-installed review, and the style of a firm. Templates and
 * fonts are handed in: those of the package are data in `pipeborne/templates` and `pipeborne/fonts`.
 */

export { type AsInstalledPrint, renderAsInstalledPdf, renderNextSheetPdf } from './app/as-installed.js';
export type { TemplatesToCheck } from './app/check-templates.js';
export type { ComparisonRendering } from './app/compare-revisions.js';
export { renderFieldSheetPdf, type SheetOptions } from './app/field-sheet.js';
export type { FontFiles, Logo, RenderOptions } from './app/render-review.js';
export {
  checkTemplates,
  readLogo,
  renderComparisonPdf,
  renderReviewHtml,
  renderReviewPdf,
} from './app/review.js';
export { type Firm, type ReadFirm, readFirm } from './input/read-firm.js';
export {
  EngineError,
  type Issue,
  type IssueCode,
  type IssueData,
  IssuesError,
  type Place,
} from './issues/issue.js';
export type { Reader } from './report/context.js';
export { fixedTemplates } from './report/fixed-templates.js';
