/** What a firm's own style does to the filled markup, and what no style may do to it. */
import { EngineError } from '../issues/issue.js';
import { elementsOf } from './judge-markup.js';
import type { MarkupElement, MarkupNode } from './markup.js';

/** Number of a section before its heading. */
const NUMBER = /^\d+(\.\d+)*\.?\s+/;

/**
 * Gives sections headings in a firm's own words; their numbers stay.
 *
 * @param root - the document
 * @param headings - headings by id of the section
 * @returns the document with these headings
 */
export function withHeadings(root: MarkupElement, headings: Readonly<Record<string, string>>): MarkupElement {
  return {
    ...root,
    children: root.children.map((child) => {
      if (child.kind === 'text') return child;
      const id = child.attributes.id ?? '';
      if (child.name !== 'section' || !Object.hasOwn(headings, id)) return child;
      const number = NUMBER.exec(child.attributes.title ?? '')?.[0] ?? '';
      return { ...child, attributes: { ...child.attributes, title: `${number}${headings[id]}` } };
    }),
  };
}

/**
 * Makes words of links to what a firm's outline leaves out.
 *
 * @param root - the document
 * @returns the document, every link of which leads somewhere
 */
export function withoutLooseLinks(root: MarkupElement): MarkupElement {
  const ids = new Set<string>();
  const gather = (element: MarkupElement): void => {
    if (element.attributes.id !== undefined) ids.add(element.attributes.id);
    for (const child of elementsOf(element)) gather(child);
  };
  gather(root);
  const mend = (node: MarkupNode): readonly MarkupNode[] => {
    if (node.kind === 'text') return [node];
    const children = node.children.flatMap(mend);
    const { to, ...others } = node.attributes;
    if (to === undefined || ids.has(to)) return [{ ...node, children }];
    return node.name === 'ref' ? children : [{ ...node, attributes: others, children }];
  };
  return { ...root, children: root.children.flatMap(mend) };
}

/**
 * Refuses a document that leaves out a section of its outline, or the words that stand in every review.
 *
 * @param root - the document
 * @param sections - ids of the sections it must have
 * @param fixed - blocks that must stand in it, by the template they come from
 * @throws EngineError `render.template.section-left-out` | `render.template.fixed-words`
 */
export function refuseGaps(
  root: MarkupElement,
  sections: readonly string[],
  fixed: readonly { readonly template: string; readonly blocks: readonly MarkupElement[] }[],
): void {
  const ids = new Set(elementsOf(root).map(({ attributes }) => attributes.id));
  const missing = sections.filter((id) => !ids.has(id));
  if (missing.length > 0) throw new EngineError('render.template.section-left-out', { missing });
  const standing = new Set<string>();
  const gather = (element: MarkupElement): void => {
    standing.add(printOf(element));
    for (const child of elementsOf(element)) gather(child);
  };
  gather(root);
  for (const { template, blocks } of fixed)
    for (const block of blocks)
      if (!standing.has(printOf(block)))
        throw new EngineError('render.template.fixed-words', {
          template,
          words: wordsOf(block).slice(0, 60),
        });
}

/** Kind and words of an element: what a reader sees of it. */
const printOf = (element: MarkupElement): string => `${element.name} ${wordsOf(element)}`;

/** Words of an element, links and emphasis left out. */
function wordsOf(element: MarkupElement): string {
  const words = (nodes: readonly MarkupNode[]): string =>
    nodes
      .map((node) =>
        node.kind === 'text' ? node.text : `${node.name === 'br' ? ' ' : ''}${words(node.children)}`,
      )
      .join('');
  return words(element.children).replace(/\s+/gu, ' ').trim();
}
