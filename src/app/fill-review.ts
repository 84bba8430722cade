/** From a composed review to its markup: templates filled, a firm's own sections put in, fixed words looked for. */

import { EngineError, IssuesError } from '../issues/issue.js';
import { refuseGaps, withHeadings, withoutLooseLinks } from '../render/firm-markup.js';
import type { MarkupElement } from '../render/markup.js';
import { parseMarkup } from '../render/parse-markup.js';
import { fillTraced } from '../render/template/fill-template.js';
import type { TemplateRecord } from '../render/template/template-view.js';
import type { ComposedReview } from '../report/compose-review.js';
import { fixedTemplates } from '../report/fixed-templates.js';
import { ALONE, alone, fixedWords } from './fixed-words.js';

/** What filling needs to know of how a review is printed. */
export interface FillOptions {
  readonly templates: Readonly<Record<string, string>>;
  /** Headings in the firm's words, by section. */
  readonly headings?: Readonly<Record<string, string>>;
  /** True where sections may be left out, so that links to them become words. */
  readonly hasOwnOrder: boolean;
}

/**
 * Fills the templates of a review.
 *
 * @param composed - views of its sections
 * @param options - templates, headings, whether sections may be left out
 * @returns the document
 * @throws EngineError `render.template.…`; IssuesError `render.markup.…` with the places in the templates
 */
export function fillReview(composed: ComposedReview, options: FillOptions): MarkupElement {
  const { hasOwnOrder, headings = {} } = options;
  const { review: master, ...partials } = options.templates;
  if (master === undefined) throw new EngineError('render.template.missing', { name: 'review' });
  const slots = (composed.view.sections as readonly TemplateRecord[]).map((slot) =>
    slot.own === false ? slot : { ...slot, own: fillOwn(slot.own as TemplateRecord, partials) },
  );
  const view: TemplateRecord = { ...(composed.view as TemplateRecord), sections: slots };
  const { text, placeOf } = fillTraced(master, view, { name: 'review', partials });
  const filled = hasOwnOrder
    ? parseMarkup(text, { placeOf, looseLinks: true })
    : strict(text, placeOf, composed.sections);
  const root = withHeadings(hasOwnOrder ? withoutLooseLinks(filled) : filled, headings);
  refuseGaps(root, composed.sections, fixedBlocks(slots, partials));
  return root;
}

/** Where a section is missing, that is said rather than that links to it lead nowhere. */
function strict(
  text: string,
  placeOf: ReturnType<typeof fillTraced>['placeOf'],
  sections: readonly string[],
): MarkupElement {
  try {
    return parseMarkup(text, { placeOf });
  } catch (error) {
    const isLoose =
      error instanceof IssuesError &&
      error.issues.every(({ code }) => code === 'render.markup.link-leads-nowhere');
    if (isLoose) refuseGaps(parseMarkup(text, { placeOf, looseLinks: true }), sections, []);
    throw error;
  }
}

/** A firm's own section, filled and judged by itself, so that its faults are told where they were written. */
function fillOwn(view: TemplateRecord, partials: Readonly<Record<string, string>>): TemplateRecord {
  const name = `sections/${String(view.id)}`;
  const template = Object.hasOwn(partials, name) ? partials[name] : undefined;
  if (template === undefined) throw new EngineError('render.template.missing', { name });
  const { text, placeOf } = fillTraced(template, view, { name, partials });
  parseMarkup(alone(text), {
    placeOf: (line, column) => placeOf(line, line === 1 ? Math.max(1, column - ALONE) : column),
    looseLinks: true,
  });
  return { ...view, markup: text };
}

/** The words that stand in every review, filled with what this review says. */
function fixedBlocks(slots: readonly TemplateRecord[], partials: Readonly<Record<string, string>>) {
  return fixedTemplates.map((template) => {
    const id = template.split('/').at(-1) ?? '';
    const view = slots.map((slot) => slot[id]).find((found) => found !== undefined && found !== false);
    if (view === undefined && template.startsWith('sections/'))
      throw new EngineError('render.template.section-left-out', { missing: [id] });
    return fixedWords(template, view ?? {}, partials);
  });
}
