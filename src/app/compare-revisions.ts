/** Two revisions compared: inputs or results, on the terminal or on paper. */

import { compareInputs } from '../compare/compare-inputs.js';
import { compareResults } from '../compare/compare-results.js';
import type { Comparison } from '../compare/comparison.js';
import type { Letterhead, UnitSystem } from '../input/installation.js';
import { readContent } from '../input/written-value.js';
import { EngineError } from '../issues/issue.js';
import { refuseGaps, withoutLooseLinks } from '../render/firm-markup.js';
import type { FontFiles } from '../render/font/typeface.js';
import type { PageName } from '../render/layout/style-sheet.js';
import type { Logo } from '../render/logo/logo-shape.js';
import { parseMarkup } from '../render/parse-markup.js';
import { renderPdf } from '../render/render-pdf.js';
import { fillTraced } from '../render/template/fill-template.js';
import type { TemplateRecord } from '../render/template/template-view.js';
import {
  type ComposedComparison,
  comparisonView,
  composeComparison,
  type RevisionHead,
} from '../report/comparison/compose-comparison.js';
import type { ResultsFile } from '../report/results/results-schema.js';
import { fixedWords } from './fixed-words.js';
import { version } from './version.js';

/** One revision: its results, and the text of its input where that is at hand. */
export interface Revision {
  readonly head: RevisionHead;
  readonly results: ResultsFile;
  readonly input?: string;
}

/** Two revisions compared, as data and as text. */
export interface ComparedRevisions {
  readonly comparison: Comparison;
  readonly composed: ComposedComparison;
}

/**
 * Compares two revisions. The inputs are compared where both are at hand.
 *
 * @param before - the older
 * @param after - the newer
 * @param units - units to print in
 * @returns what differs
 */
export function compareRevisions(before: Revision, after: Revision, units: UnitSystem): ComparedRevisions {
  const inputs =
    before.input === undefined || after.input === undefined
      ? undefined
      : compareInputs(readContent(before.input), readContent(after.input));
  const comparison: Comparison = {
    ...compareResults(before.results, after.results, inputs?.renamed),
    inputs: inputs?.changes,
  };
  const options = { before: before.head, after: after.head, units, version };
  return { comparison, composed: composeComparison(comparison, options) };
}

/** How a comparison is printed. */
export interface ComparisonRendering {
  readonly templates: Readonly<Record<string, string>>;
  readonly fonts: FontFiles;
  readonly page: PageName;
  /** ISO 8601; dates the file. */
  readonly date: string;
  readonly fingerprint: string;
  readonly letterhead?: Letterhead;
  readonly logo?: Logo;
}

/**
 * A comparison as PDF.
 *
 * @param composed - what differs, as text
 * @param options - templates, fonts, page, date, letterhead
 * @returns the bytes
 */
export function comparisonPdf(
  composed: ComposedComparison,
  options: ComparisonRendering,
): Promise<Uint8Array> {
  const { comparison: master, ...partials } = options.templates;
  if (master === undefined) throw new EngineError('render.template.missing', { name: 'comparison' });
  const { letterhead, logo } = options;
  const view = {
    ...comparisonView(composed),
    letterhead: letterhead === undefined ? false : { name: letterhead.name, address: letterhead.address },
  };
  const { text, placeOf } = fillTraced(master, view as TemplateRecord, { name: 'comparison', partials });
  const root = withoutLooseLinks(parseMarkup(text, { placeOf, looseLinks: true }));
  refuseGaps(root, [], [fixedWords('fixed/deferral', {}, partials)]);
  return renderPdf(root, {
    fonts: options.fonts,
    drawings: {},
    page: options.page,
    head: { left: composed.title, right: letterhead?.name ?? '' },
    foot: {
      left: `Estimate for review, input ${options.fingerprint.slice(0, 12)}, pipeborne ${version}`,
      right: '',
    },
    title: composed.title,
    subject: `Two revisions of the installation of pump ${composed.pump} compared`,
    date: options.date,
    language: 'en',
    fingerprint: options.fingerprint,
    producer: `pipeborne ${version}`,
    attachments: [],
    ...(logo && { logo }),
  });
}
