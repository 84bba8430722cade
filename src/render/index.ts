/** The door of the renderer: templates to markup, markup and drawings to a PDF or an HTML page. */

export { refuseGaps, withHeadings, withoutLooseLinks } from './firm-markup.js';
export { type FontFiles, missingSigns } from './font/typeface.js';
export { type HtmlOptions, renderHtml } from './html/render-html.js';
export type { PageName } from './layout/style-sheet.js';
export type { Logo } from './logo/logo-shape.js';
export type { MarkupElement, MarkupNode, MarkupText } from './markup.js';
export type { Attachment } from './paint/metadata.js';
export type { Running } from './paint/paint-page.js';
export { parseMarkup } from './parse-markup.js';
export { type PdfOptions, renderPdf } from './render-pdf.js';
export { drawingToSvg } from './svg.js';
export { fillTemplate, fillTraced, type TemplateOptions } from './template/fill-template.js';
export { type MissingName, missingNames } from './template/missing-names.js';
export type { TemplateRecord, TemplateView } from './template/template-view.js';
