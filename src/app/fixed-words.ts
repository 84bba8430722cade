/** Words that stand in every document, filled by themselves, so that it can be seen whether they stand in it. */
import { EngineError } from '../issues/issue.js';
import { withoutLooseLinks } from '../render/firm-markup.js';
import type { MarkupElement } from '../render/markup.js';
import { parseMarkup } from '../render/parse-markup.js';
import { fillTraced } from '../render/template/fill-template.js';
import type { TemplateView } from '../render/template/template-view.js';

/** Markup that stands by itself, on the same line as its first word. */
export const alone = (markup: string): string => `<review title="-" language="en">${markup}</review>`;
/** How far its first word stands from the start of the line. */
export const ALONE = alone('').indexOf('</review>');

/**
 * Blocks of a template that no document may lack.
 *
 * @param template - name of the template
 * @param view - what it prints
 * @param partials - all templates
 * @returns the template, and its blocks without links
 * @throws EngineError `render.template.missing`
 */
export function fixedWords(
  template: string,
  view: TemplateView,
  partials: Readonly<Record<string, string>>,
): { readonly template: string; readonly blocks: readonly MarkupElement[] } {
  const words = Object.hasOwn(partials, template) ? partials[template] : undefined;
  if (words === undefined) throw new EngineError('render.template.missing', { name: template });
  const { text } = fillTraced(words, view, { name: template, partials });
  const root = withoutLooseLinks(parseMarkup(alone(text), { looseLinks: true }));
  const elements = root.children.filter((child) => child.kind === 'element');
  // The heading of a section may be in the firm's words; what stands in it may not.
  const blocks = elements.flatMap((block) =>
    block.name === 'section' ? block.children.filter((child) => child.kind === 'element') : [block],
  );
  return { template, blocks };
}
