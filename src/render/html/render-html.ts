/** Markup and drawings to one HTML page that needs nothing from outside and runs nothing. */
import type { Drawing } from '../../drawing/drawing.js';
import { EngineError } from '../../issues/issue.js';
import { backLinks } from '../back-links.js';
import { elementsOf } from '../judge-markup.js';
import type { NoteKind } from '../layout/styled.js';
import type { Logo } from '../logo/logo-shape.js';
import type { MarkupElement } from '../markup.js';
import { parseMarkup } from '../parse-markup.js';
import { drawingToSvg, escapeText } from '../svg.js';
import { isInline } from '../vocabulary.js';
import { BACK_WORDS, NOTE_WORDS, noteTitle } from '../words.js';
import { contentsToHtml, levelOf } from './contents-html.js';
import { inlineToHtml, verdictParagraph } from './inline-html.js';
import { letterheadToHtml } from './letterhead-html.js';
import { pageStyle } from './page-style.js';
import { readingsToHtml } from './readings-html.js';
import { tableToHtml } from './table-html.js';

export interface HtmlOptions {
  readonly drawings: Readonly<Record<string, Drawing>>;
  readonly title: string;
  readonly language: string;
  readonly author?: string;
  readonly subject?: string;
  /** Words at the end of the page, such as version and fingerprint. */
  readonly foot?: string;
  /** Logo of the letterhead. */
  readonly logo?: Logo;
}

/**
 * Renders a review as one HTML page.
 *
 * @param markup - a filled template, or what `parseMarkup` made of it
 * @param options - drawings, title, language
 * @returns text of the page: style and pictures inside, no script
 * @throws IssuesError when the markup is not as `markup.ts` allows
 * @throws EngineError `render.unknown-drawing`
 */
export function renderHtml(markup: MarkupElement | string, options: HtmlOptions): string {
  const root = typeof markup === 'string' ? parseMarkup(markup) : markup;
  const head = elementsOf(root)
    .filter(({ name }) => name === 'letterhead')
    .slice(0, 1);
  const blocks = elementsOf(root).filter(({ name }) => name !== 'letterhead');
  const meta = (name: string, content: string | undefined): readonly string[] =>
    content === undefined ? [] : [`<meta name="${name}" content="${escapeText(content)}">`];
  const [opening, rest] = atFirstSection(blocks);
  const around: Around = { back: backLinks(root), depth: 1, drawings: options.drawings };
  return [
    '<!doctype html>',
    `<html lang="${escapeText(options.language)}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${NOTHING_FROM_OUTSIDE}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    `<title>${escapeText(options.title)}</title>`,
    ...meta('author', options.author),
    ...meta('description', options.subject),
    `<style>\n${pageStyle(options.title, options.foot ?? '')}\n</style>`,
    '</head>',
    '<body>',
    '<a class="skip" href="#review">Skip to the review</a>',
    '<header>',
    ...head.map((element) => letterheadToHtml(element, options.logo)),
    `<h1>${escapeText(root.attributes.title ?? '')}</h1>`,
    '</header>',
    '<main id="review" tabindex="-1">',
    // The verdict comes before the contents, for the ear and on a small screen; on a wide one they stand beside it.
    ...blocksToHtml(opening, around),
    contentsToHtml(root),
    ...blocksToHtml(rest, around),
    '</main>',
    ...(options.foot === undefined
      ? []
      : [`<footer><p class="small">${escapeText(options.foot)}</p></footer>`]),
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** The page may use its own style and a logo inside it, nothing else: no script, font, picture or frame from anywhere. */
const NOTHING_FROM_OUTSIDE =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

/** Blocks up to the end of the first section, and the others. */
function atFirstSection(
  blocks: readonly MarkupElement[],
): readonly [readonly MarkupElement[], readonly MarkupElement[]] {
  const end = blocks.findIndex(({ name }) => name === 'section') + 1;
  return [blocks.slice(0, end), blocks.slice(end)];
}

interface Around {
  /** Sections that lead back to the one that spoke of them first. */
  readonly back: ReadonlyMap<string, string>;
  readonly depth: 1 | 2;
  readonly drawings: Readonly<Record<string, Drawing>>;
}

function blocksToHtml(blocks: readonly MarkupElement[], around: Around): readonly string[] {
  const html: string[] = [];
  for (let i = 0; i < blocks.length; i++) {
    const block = blocks[i];
    const next = blocks[i + 1];
    if (!block) continue;
    const isPair = isHalf(block) && next !== undefined && isHalf(next);
    if (isPair) {
      html.push(`<div class="pair">${figureToHtml(block, around)}${figureToHtml(next, around)}</div>`);
      i += 1;
    } else html.push(blockToHtml(block, around));
  }
  return html;
}

const isHalf = (block: MarkupElement): boolean =>
  block.name === 'figure' && block.attributes.width === 'half';

function blockToHtml(block: MarkupElement, around: Around): string {
  const at = block.attributes;
  switch (block.name) {
    case 'section':
      return sectionToHtml(block, around);
    case 'list': {
      const tag = at.ordered === 'yes' ? 'ol' : 'ul';
      const items = elementsOf(block).map((item) => `<li>${mixedToHtml(item, around)}</li>`);
      return `<${tag}>${items.join('')}</${tag}>`;
    }
    case 'note': {
      const kind = at.kind as NoteKind;
      const title = `<p class="title">${escapeText(noteTitle(kind, at.title))}</p>`;
      return `<div class="note ${kind}" role="note">${title}${mixedToHtml(block, around)}</div>`;
    }
    case 'table':
      return tableToHtml(block);
    case 'figure':
      return figureToHtml(block, around);
    case 'calculation': {
      const steps = elementsOf(block).map(
        (step) => `<p class="${step.attributes.role}">${inlineToHtml(step.children)}</p>`,
      );
      return `<div class="calculation" id="${escapeText(at.id ?? '')}"><p class="title">${escapeText(at.title ?? '')}</p>${steps.join('')}</div>`;
    }
    case 'facts': {
      const facts = elementsOf(block).map(
        (fact) =>
          `<dt>${escapeText(fact.attributes.label ?? '')}</dt><dd>${inlineToHtml(fact.children)}</dd>`,
      );
      const abreast = at.columns === undefined ? '' : ` class="n${at.columns}"`;
      return `<dl${abreast}>${facts.join('')}</dl>`;
    }
    case 'signatures':
      return `<div class="signatures">${elementsOf(block)
        .map((line) => `<p>${escapeText(line.attributes.label ?? '')}</p>`)
        .join('')}</div>`;
    case 'readings':
      return readingsToHtml(block);
    case 'keep':
      return `<div class="keep">${blocksToHtml(elementsOf(block), around).join('\n')}</div>`;
    case 'columns':
      return `<div class="columns n${at.count ?? '2'}">${blocksToHtml(elementsOf(block), around).join('\n')}</div>`;
    case 'beside':
      return besideToHtml(block, around);
    case 'contents':
      // The page has contents of its own beside it, wherever the template puts those of the print.
      return '';
    case 'page-break':
      return '<div class="new-page"></div>';
    default:
      return paragraphToHtml(block);
  }
}

function besideToHtml(block: MarkupElement, around: Around): string {
  const sides = elementsOf(block);
  const shares = (block.attributes.shares ?? '').trim().split(/\s+/);
  const tracks = sides.map((_, i) => `minmax(0,${Number(shares[i]) || 1}fr)`).join(' ');
  const inside = sides.map((side) => `<div>${mixedToHtml(side, around)}</div>`).join('');
  return `<div class="beside" style="grid-template-columns:${tracks}">${inside}</div>`;
}

function paragraphToHtml(block: MarkupElement): string {
  const { role } = block.attributes;
  const words = role === 'verdict' ? verdictParagraph(block.children) : inlineToHtml(block.children);
  if (role === undefined) return `<p>${words}</p>`;
  const isNamed = words.toLowerCase().startsWith(NOTE_WORDS.caution.toLowerCase());
  const word = role === 'caution' && !isNamed ? `<span class="word">${NOTE_WORDS.caution}:</span> ` : '';
  return `<p class="${role}">${word}${words}</p>`;
}

function sectionToHtml(block: MarkupElement, around: Around): string {
  const at = block.attributes;
  const level = levelOf(block, around.depth);
  const tag = level === 1 ? 'h2' : 'h3';
  const inside = blocksToHtml(elementsOf(block), { ...around, depth: 2 });
  const start = at.page === 'new' ? ' class="new-page"' : '';
  return [
    `<section id="${escapeText(at.id ?? '')}"${start}>`,
    headingToHtml(tag, at.title ?? '', around.back.get(at.id ?? '')),
    ...inside,
    '</section>',
  ].join('\n');
}

function headingToHtml(tag: 'h2' | 'h3', title: string, back: string | undefined): string {
  const heading = `<${tag}>${escapeText(title)}</${tag}>`;
  if (back === undefined) return heading;
  return `<div class="heading">${heading}<a class="back" href="#${escapeText(back)}" aria-label="back to the summary">${BACK_WORDS}</a></div>`;
}

/** Loose words and blocks mixed, as in a list entry. */
function mixedToHtml(element: MarkupElement, around: Around): string {
  return element.children
    .map((child) =>
      child.kind === 'text' || isInline(child.name) ? inlineToHtml([child]) : blockToHtml(child, around),
    )
    .join('');
}

function figureToHtml(block: MarkupElement, around: Around): string {
  const name = block.attributes.drawing ?? '';
  const drawing = Object.hasOwn(around.drawings, name) ? around.drawings[name] : undefined;
  if (!drawing)
    throw new EngineError('render.unknown-drawing', {
      found: name,
      line: block.line,
      available: Object.keys(around.drawings),
    });
  const { caption } = block.attributes;
  const words = caption ? `<figcaption>${escapeText(caption)}</figcaption>` : '';
  // On a narrow screen a wide drawing stays large enough to be read, and moves sideways.
  return `<figure${isHalf(block) ? ' class="half"' : ''}><div class="scroll">${drawingToSvg(drawing)}</div>${words}</figure>`;
}
