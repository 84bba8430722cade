/**
 * Composes a review: the sections of the reader's outline as views of finished text, the drawings they name, and
 * the words of the page's head and foot.
 */

import type { Subject } from '../analysis/subject.js';
import type { Drawing } from '../drawing/drawing.js';
import type { Letterhead, UnitSystem } from '../input/installation.js';
import { EngineError } from '../issues/issue.js';
import type { Finding } from '../judging/finding.js';
import type { Verdict } from '../judging/verdict.js';
import type { Bands } from '../study/bands/bands.js';
import type { Bounds } from '../study/bounds/bounds.js';
import type { Reader, ReportContext, View } from './context.js';
import { outline, type SectionId, sections } from './outline.js';
import { reviewDrawings } from './review-drawings.js';
import { rankAssumptions } from './rows/rank-assumptions.js';
import { createWriter } from './writer.js';

/** What is reviewed and what came of it. */
export interface ReviewSubject extends Subject {
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
  /** What nobody stated, where it was tried. */
  readonly bounds?: Bounds;
  /** How sure the numbers are, where that was worked out. */
  readonly bands?: Bands;
}

export interface ReviewOptions {
  readonly reader: Reader;
  /** Units to print in. */
  readonly units: UnitSystem;
  /** Version of the program, printed on page one. */
  readonly version: string;
  /** The firm's own style: letterhead, order of sections, cautions it adds. */
  readonly firm?: FirmStyle;
}

/** What a firm's style changes in a view; headings are changed in the markup. */
export interface FirmStyle {
  readonly letterhead?: Letterhead;
  readonly cautions?: readonly string[];
  /** Sections of this reader in printing order: those of the program, and the firm's own by the names of their templates. */
  readonly outline?: readonly string[];
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
  /** Name of the firm; empty without a letterhead. */
  readonly firm: string;
  /** Ids of the sections, in printing order. */
  readonly sections: readonly string[];
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
  const wanted = options.firm?.outline ?? outline[options.reader];
  // Bands cost several times the review, so they may have been left out.
  const order = wanted.filter((id) => id !== 'bands' || review.bands !== undefined);
  const context: ReportContext = {
    subject: review,
    findings: review.findings,
    verdict: review.verdict,
    ...(review.bounds && { bounds: review.bounds }),
    ...(review.bands && { bands: review.bands }),
    reader: options.reader,
    printed: new Set(order),
    version: options.version,
    write: createWriter(options.units),
    assumptions: rankAssumptions(installation.assumptions, review.findings),
    furtherCautions: options.firm?.cautions ?? [],
  };
  const shown = shownSections(order, context);
  const { project, status, date, revisions, preparedBy } = installation.review;
  const title = `Review of pump ${installation.pump.mark}, ${project}`;
  const revision = revisions.at(-1)?.mark;
  const letterhead = installation.review.letterhead ?? options.firm?.letterhead;
  return {
    view: {
      title,
      isContractor: options.reader === 'contractor',
      isEngineer: options.reader === 'engineer',
      isCommissioning: options.reader === 'commissioning',
      letterhead: letterhead === undefined ? false : { name: letterhead.name, address: letterhead.address },
      sections: shown.map(({ id, view }, index) => sectionSlots(id, view, String(index + 1), context)),
    },
    drawings: reviewDrawings(context),
    title,
    head: `${project} · pump ${installation.pump.mark} · ${status}${revision === undefined ? '' : ` · revision ${revision}`} · ${date}`,
    foot: `Estimate for review, input ${installation.fingerprint.slice(0, 12)}, pipeborne ${options.version}`,
    firm: letterhead?.name ?? '',
    sections: shown.map(({ id }) => id),
    author: preparedBy ?? letterhead?.name ?? '',
    about: `Installation and piping loads of in-line pump ${installation.pump.mark}: ${installation.service.name}`,
  };
}

/** Views in printing order. A section that has nothing to say to its reader is left out, and takes no number. */
function shownSections(order: readonly string[], context: ReportContext) {
  return order
    .map((id) => ({ id, view: isSection(id) ? (sections[id](context) as View) : undefined }))
    .filter(({ view }) => view?.omitted !== true);
}

/**
 * One place of the master template's loop: a slot for every section there is, all but one of them empty, because a
 * template calls a section by its name and never by a value. A firm's own section has the slot `own`.
 */
function sectionSlots(id: string, view: View | undefined, number: string, context: ReportContext): View {
  const slots: Record<string, View | false> = { own: false };
  for (const each of Object.keys(sections)) slots[each] = false;
  if (view) slots[id] = { ...view, number };
  else slots.own = { id, ...ownView(number, context) };
  return slots;
}

const isSection = (id: string): id is SectionId => Object.hasOwn(sections, id);

/** What a firm's own section may print: the title block. */
function ownView(number: string, context: ReportContext): View {
  const { installation } = context.subject;
  const { project, location, client, preparedBy, engineerOfRecord, status, date, revisions } =
    installation.review;
  return {
    number,
    project,
    location: location ?? '',
    client: client ?? '',
    pump: installation.pump.mark,
    service: installation.service.name,
    preparedBy: preparedBy ?? '',
    engineerOfRecord: engineerOfRecord ?? '',
    status,
    revision: revisions.at(-1)?.mark ?? '',
    date,
    isContractor: context.reader === 'contractor',
    isEngineer: context.reader === 'engineer',
    isCommissioning: context.reader === 'commissioning',
  };
}
