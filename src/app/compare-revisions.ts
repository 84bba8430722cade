/** Two revisions compared: inputs or results, on the terminal or on paper. */

import { compareInputs } from '../compare/compare-inputs.js';
import { compareResults } from '../compare/compare-results.js';
import type { Comparison } from '../compare/comparison.js';
import type { UnitSystem } from '../input/installation.js';
import { readContent } from '../input/written-value.js';
import { refuseGaps } from '../render/firm-markup.js';
import type { PageName } from '../render/layout/style-sheet.js';
import type { TemplateRecord } from '../render/template/template-view.js';
import {
  type ComposedComparison,
  comparisonView,
  composeComparison,
  type RevisionHead,
} from '../report/comparison/compose-comparison.js';
import type { ResultsFile } from '../report/results/results-schema.js';
import { fixedWords } from './fixed-words.js';
import { fillDocument, type Paper, printDocument } from './print-document.js';
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
export interface ComparisonRendering extends Paper {
  readonly page: PageName;
  /** ISO 8601; dates the file. */
  readonly date: string;
  readonly fingerprint: string;
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
  const view = comparisonView(composed) as unknown as TemplateRecord;
  const markup = fillDocument('comparison', view, options, 'loose');
  const { comparison: _, ...partials } = options.templates;
  refuseGaps(markup, [], [fixedWords('fixed/deferral', {}, partials)]);
  const about = {
    title: composed.title,
    subject: `Two revisions of the installation of pump ${composed.pump} compared`,
    date: options.date,
    fingerprint: options.fingerprint,
    units: options.page === 'letter' ? 'us' : 'si',
    head: composed.title,
    own: [composed.title, composed.before, composed.after, composed.inputs],
    foot: { before: 'Estimate for review,' },
  } as const;
  return printDocument(markup, about, options);
}
