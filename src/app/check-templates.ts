/** Whether a folder of templates holds: filled for every reader of many reviews, and its names looked up in all of them. */

import type { Firm } from '../input/read-firm.js';
import type { Issue } from '../issues/issue.js';
import { renderHtml } from '../render/html/render-html.js';
import type { Logo } from '../render/logo/logo-shape.js';
import { type MissingName, missingNames } from '../render/template/missing-names.js';
import type { TemplateView } from '../render/template/template-view.js';
import { composeReview, type ReviewSubject } from '../report/compose-review.js';
import { fillReview } from './fill-review.js';
import { version } from './version.js';

/** The templates to check. */
export interface TemplatesToCheck {
  readonly templates: Readonly<Record<string, string>>;
  /** Those of the program: a name they print is known, whether a review at hand has it or not. */
  readonly shipped: Readonly<Record<string, string>>;
  readonly firm?: Firm;
  readonly logo?: Logo;
}

const READERS = ['contractor', 'engineer', 'commissioning'] as const;

/**
 * Fills the templates with reviews, for every reader, and looks through branches that none of them takes.
 *
 * @param reviews - several reviews, as unlike each other as may be
 * @param check - the templates
 * @returns names that nothing is called; empty where all is well
 * @throws EngineError, IssuesError as filling and laying out do
 */
export function checkTemplates(reviews: readonly ReviewSubject[], check: TemplatesToCheck): readonly Issue[] {
  const { templates, shipped, firm, logo } = check;
  const views = new Map<string, TemplateView[]>();
  for (const review of reviews) {
    for (const reader of READERS) {
      const order = firm?.outline[reader];
      const composed = composeReview(review, {
        reader,
        units: review.installation.review.units,
        version,
        firm: {
          cautions: firm?.cautions ?? [],
          ...(firm?.letterhead && { letterhead: firm.letterhead }),
          ...(order && { outline: order }),
        },
      });
      const options = { templates, headings: firm?.headings ?? {}, hasOwnOrder: order !== undefined };
      const markup = fillReview(composed, options);
      renderHtml(markup, {
        drawings: composed.drawings,
        title: composed.title,
        language: 'en',
        ...(logo && { logo }),
      });
      gather(views, composed.view.sections as readonly Record<string, TemplateView>[]);
    }
  }
  const known = new Set(
    [...views].flatMap(([name, values]) => missingNames(name, shipped, values).map(keyOf)),
  );
  return [...views]
    .flatMap(([name, values]) => missingNames(name, templates, values))
    .filter((name) => !known.has(keyOf(name)))
    .map(issueOf);
}

/** A name and the template it stands in, wherever in it. */
const keyOf = ({ template, found }: MissingName): string => `${template} ${found}`;

function gather(views: Map<string, TemplateView[]>, slots: readonly Record<string, TemplateView>[]): void {
  for (const slot of slots) {
    for (const [id, view] of Object.entries(slot)) {
      if (view === false || typeof view !== 'object' || view === null) continue;
      const name = `sections/${id === 'own' && 'id' in view ? String(view.id) : id}`;
      views.set(name, [...(views.get(name) ?? []), view]);
    }
  }
}

function issueOf({ template, line, column, found, available, nearest }: MissingName): Issue {
  const missing = found.split(/[./]/).at(-1) ?? found;
  return {
    code: 'render.template.unknown-name',
    severity: 'error',
    data: { template, line, column, found, missing, available, ...(nearest !== undefined && { nearest }) },
    place: { file: `${template}.hbs`, line, column, path: '' },
  };
}
