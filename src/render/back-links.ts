/** Ways back: a section that the first section of a review leads to leads back to it. */
import { elementsOf } from './judge-markup.js';
import type { MarkupElement } from './markup.js';

/**
 * Ids of sections with the id of the section that leads there from the start of the document.
 *
 * @param root - the root element
 * @returns for each section that the first one refers to, the id of the first one
 */
export function backLinks(root: MarkupElement): ReadonlyMap<string, string> {
  const first = elementsOf(root).find(({ name }) => name === 'section');
  const home = first?.attributes.id;
  const back = new Map<string, string>();
  if (!first || home === undefined) return back;
  const visit = (element: MarkupElement): void => {
    const { to } = element.attributes;
    if (to !== undefined && to !== home) back.set(to, home);
    for (const child of elementsOf(element)) visit(child);
  };
  visit(first);
  return back;
}
