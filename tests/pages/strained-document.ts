/** Reviews with their words strained: the same sections and tables, filled with what a stranger might write. */
import type { MarkupElement, MarkupNode } from '../../src/render/markup.js';

export const STRAINS = [
  'long names',
  'very long words',
  'missing data',
  'right-hand units',
  'many rows',
] as const;
export type Strain = (typeof STRAINS)[number];

/** How many rows a table of three or more gets. */
const MANY = 500;
/** Attributes that are words to be read; all others name things. */
const WORDS: ReadonlySet<string> = new Set(['title', 'caption', 'label']);

/**
 * A document with all its words changed one way.
 *
 * @param element - the root
 * @param strain - what is done to the words
 * @param growing - caption of the one table that grows, for many rows
 */
export function strained(element: MarkupElement, strain: Strain, growing: string): MarkupElement {
  const attributes = Object.fromEntries(
    Object.entries(element.attributes).map(([key, value]) => [
      key,
      WORDS.has(key) && value !== '' ? strainWords(value, strain) : value,
    ]),
  );
  const children = element.children.map((child): MarkupNode => {
    // Heads are the template's own words; only what grows by repeating them is tried there.
    if (child.kind === 'element' && child.name === 'head' && strain !== 'long names') return child;
    if (child.kind === 'element') return strained(child, strain, growing);
    return { ...child, text: strainWords(child.text, strain) };
  });
  const isGrowing =
    strain === 'many rows' && element.name === 'table' && element.attributes.caption === growing;
  return { ...element, attributes, children: isGrowing ? grown(children) : children };
}

function strainWords(text: string, strain: Strain): string {
  if (text.trim() === '') return text;
  const isNumber = /^\s*[−-]?[\d\s.,]+\s*$/.test(text);
  switch (strain) {
    case 'long names':
      return isNumber ? text : `${text} of the north-west plant room, ${text}`;
    case 'very long words':
      return isNumber ? text : `${text} ${'Wärmeübertragerkreislauf'.repeat(6)}`;
    case 'missing data':
      return isNumber || text.length % 3 === 0 ? '–' : text;
    case 'right-hand units':
      return isNumber ? `${text.trim()}\u00a0m³/h` : text;
    case 'many rows':
      return text;
  }
}

/** Rows again and again; their ids are left with the first. */
function grown(children: readonly MarkupNode[]): readonly MarkupNode[] {
  const rows = children.filter((child) => child.kind === 'element' && child.name === 'row');
  const more = Array.from({ length: Math.max(0, MANY - rows.length) }, (_, i): readonly MarkupNode[] => {
    const row = rows[i % rows.length];
    if (row?.kind !== 'element') return [];
    const { id: _id, ...attributes } = row.attributes;
    return [{ ...row, attributes }];
  });
  return [...children, ...more.flat()];
}

/** Captions of the tables of a document that have three rows or more. */
export function captionsOf(element: MarkupElement): readonly string[] {
  const inside = element.children.flatMap((child) => (child.kind === 'element' ? captionsOf(child) : []));
  const rows = element.children.filter((child) => child.kind === 'element' && child.name === 'row').length;
  const { caption } = element.attributes;
  return element.name === 'table' && caption && rows >= 3 ? [caption, ...inside] : inside;
}
