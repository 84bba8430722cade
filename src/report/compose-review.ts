/**
 * Composes a review: the sections of the reader's outline as views of finished text, the drawings they name, and
 * the words of the page's head and foot.
 */
import type { Finding, Subject, Verdict } from '../checks/finding.js';
import type { Drawing } from '../drawing/drawing.js';
import type { UnitSystem } from '../input/installation.js';
import { EngineError } from '../issues/issue.js';
import type { Reader, ReportContext, View } from './context.js';
import { outline, type SectionId, sections } from './outline.js';
import { rankAssumptions } from './rank-assumptions.js';
import { reviewDrawings } from './review-drawings.js';
import { createWriter } from './writer.js';

/** What is reviewed and what came of it. */
export interface ReviewSubject extends Subject {
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
}

export interface ReviewOptions {
  readonly reader: Reader;
  /** Units to print in. */
  readonly units: UnitSystem;
  /** Version of the program, printed on page one. */
  readonly version: string;
}

/** Everything the templates and the layout need; nothing in it is a number to be formatted. */
export interface ComposedReview {
  /** View of the master template: title, and the sections in order. */
  readonly view: View;
  /** Drawings by the name a figure calls. */
  readonly drawings: Readonly<Record<string, Drawing>>;
  /** Title of the document. */
  readonly title: string;
  /** Line at the top of every page but the first. */
  readonly head: string;
  /** Line at the foot of every page. */
  readonly foot: string;
  /** Who is named as author in the document's properties. */
  readonly author: string;
  /** What the document is about, in one line. */
  readonly about: string;
}

/**
 * Composes the review for one reader.
 *
 * @param review - installation, results, findings and verdict
 * @param options - reader, units and version
 * @returns views, drawings and page lines
 * @throws EngineError `report.unknown-reader` for a reader without an outline; `report.no-condition` when nothing was solved
 */
export function composeReview(review: ReviewSubject, options: ReviewOptions): ComposedReview {
  const { installation } = review;
  if (!Object.hasOwn(outline, options.reader)) {
    throw new EngineError('report.unknown-reader', {
      found: options.reader,
      available: Object.keys(outline),
    });
  }
  if (Object.keys(review.response.conditions).length === 0) throw new EngineError('report.no-condition');
  const context: ReportContext = {
    subject: review,
    findings: review.findings,
    verdict: review.verdict,
    reader: options.reader,
    version: options.version,
    write: createWriter(options.units),
    assumptions: rankAssumptions(installation.assumptions, review.findings),
  };
  const { project, status, date, revisions, preparedBy } = installation.review;
  const title = `Review of pump ${installation.pump.mark}, ${project}`;
  const revision = revisions.at(-1)?.mark;
  return {
    view: {
      title,
      isContractor: options.reader === 'contractor',
      isEngineer: options.reader === 'engineer',
      isCommissioning: options.reader === 'commissioning',
      sections: outline[options.reader].map((id, index) => sectionSlots(id, String(index + 1), context)),
    },
    drawings: reviewDrawings(context),
    title,
    head: `${project} · pump ${installation.pump.mark} · ${status}${revision === undefined ? '' : ` · revision ${revision}`} · ${date}`,
    foot: `Estimate for review, input ${installation.fingerprint.slice(0, 12)}`,
    author: preparedBy ?? '',
    about: `Installation and piping loads of in-line pump ${installation.pump.mark}: ${installation.service.name}`,
  };
}

/**
 * One place of the master template's loop: a slot for every section there is, all but one of them empty, because a
 * template calls a section by its name and never by a value.
 */
function sectionSlots(id: SectionId, number: string, context: ReportContext): View {
  const slots: Record<string, View | false> = {};
  for (const each of Object.keys(sections)) slots[each] = false;
  slots[id] = { ...sections[id](context), number };
  return slots;
}
