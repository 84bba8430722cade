/** Contents of the page: links to its sections, what stands below them folded. */
import { elementsOf } from '../judge-markup.js';
import type { MarkupElement } from '../markup.js';
import { escapeText } from '../svg.js';

/** Fewer sections than this need no contents. */
const FEW_SECTIONS = 3;

/** Level of a section: the one it names, or the one it stands on. */
export const levelOf = (section: MarkupElement, depth: 1 | 2): 1 | 2 =>
  section.attributes.level === '2' ? 2 : section.attributes.level === '1' ? 1 : depth;

interface Entry {
  readonly section: MarkupElement;
  readonly parts: MarkupElement[];
}

/** Contents as a landmark of its own; nothing when there is little to find. */
export function contentsToHtml(root: MarkupElement): string {
  const entries: Entry[] = [];
  const visit = (element: MarkupElement, depth: 1 | 2): void => {
    for (const child of elementsOf(element)) {
      if (child.name !== 'section') {
        visit(child, depth);
        continue;
      }
      const last = entries.at(-1);
      if (levelOf(child, depth) === 1 || !last) entries.push({ section: child, parts: [] });
      else last.parts.push(child);
      visit(child, 2);
    }
  };
  visit(root, 1);
  if (entries.length < FEW_SECTIONS) return '';
  const items = entries.map(
    ({ section, parts }) => `<li>${linkTo(section)}${partsToHtml(section, parts)}</li>`,
  );
  return `<nav aria-labelledby="contents-title"><p id="contents-title">Contents</p><ol>${items.join('')}</ol></nav>`;
}

const linkTo = ({ attributes: { id = '', title = '' } }: MarkupElement): string =>
  `<a href="#${escapeText(id)}">${escapeText(title)}</a>`;

function partsToHtml(section: MarkupElement, parts: readonly MarkupElement[]): string {
  if (parts.length === 0) return '';
  const count = parts.length === 1 ? 'one part' : `${parts.length} parts`;
  const of = `<span class="unseen"> of ${escapeText(section.attributes.title ?? '')}</span>`;
  const items = parts.map((part) => `<li>${linkTo(part)}</li>`);
  return `<details><summary>${count}${of}</summary><ol>${items.join('')}</ol></details>`;
}
