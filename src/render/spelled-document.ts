/** A document and its drawings in their spelling. */
import type { Drawing } from '../drawing/drawing.js';
import { type English, spelled } from '../issues/spelling.js';
import type { MarkupElement, MarkupNode } from './markup.js';

/** Attributes of the markup that a reader sees. */
const SEEN: ReadonlySet<string> = new Set([
  'title',
  'caption',
  'label',
  'tip',
  'unit',
  'expected',
  'what',
  'filled',
  'left-out',
]);

/**
 * A document in the wanted spelling.
 *
 * @param root - the filled document
 * @param english - wanted spelling
 * @param own - texts people wrote themselves
 * @returns the same document where nothing differs
 */
export function spelledMarkup(root: MarkupElement, english: English, own: readonly string[]): MarkupElement {
  if (english === 'british') return root;
  const visit = (node: MarkupNode): MarkupNode => {
    if (node.kind === 'text') return { ...node, text: spelled(node.text, english, own) };
    const attributes = Object.entries(node.attributes).map(
      ([name, value]) => [name, SEEN.has(name) ? spelled(value, english, own) : value] as const,
    );
    return { ...node, attributes: Object.fromEntries(attributes), children: node.children.map(visit) };
  };
  return visit(root) as MarkupElement;
}

/**
 * Drawings in the wanted spelling.
 *
 * @param drawings - by name
 * @param english - wanted spelling
 * @param own - texts people wrote themselves
 * @returns the same drawings with their words respelled
 */
export function spelledDrawings(
  drawings: Readonly<Record<string, Drawing>>,
  english: English,
  own: readonly string[],
): Readonly<Record<string, Drawing>> {
  if (english === 'british') return drawings;
  return Object.fromEntries(
    Object.entries(drawings).map(([name, drawing]) => [
      name,
      {
        ...drawing,
        title: spelled(drawing.title, english, own),
        alt: spelled(drawing.alt, english, own),
        shapes: drawing.shapes.map((shape) =>
          shape.kind === 'text' ? { ...shape, text: spelled(shape.text, english, own) } : shape,
        ),
      },
    ]),
  );
}
