/** Style step for inline content: nested elements become a flat run of spans with blanks brought together. */
import type { MarkupNode } from '../markup.js';
import type { VerdictWord } from '../vocabulary.js';
import { VERDICT_WORDS } from '../words.js';
import type { TextStyle } from './style-sheet.js';
import type { Span } from './styled.js';

/** Size of a raised or lowered sign against the text around it. */
const SCRIPT_SIZE = 0.68;
/** Size of words beside the matter. */
const SMALL_SIZE = 0.92;
const SUPERSCRIPT_RISE = 0.34;
const SUBSCRIPT_RISE = -0.15;

interface Setting {
  readonly style: TextStyle;
  readonly rise: number;
  readonly link: string | undefined;
}

/** A text without markup as spans; none for an empty text. */
export function plain(text: string, style: TextStyle): readonly Span[] {
  return styleInline([{ kind: 'text', text }], style);
}

/**
 * Flattens inline content into spans.
 *
 * @param nodes - inline content
 * @param style - style of the text around it
 * @param link - id the whole content leads to
 * @returns spans; runs of blanks brought together, none at either end
 */
export function styleInline(nodes: readonly MarkupNode[], style: TextStyle, link?: string): readonly Span[] {
  const spans: Span[] = [];
  for (const node of nodes) visit(node, { style, rise: 0, link }, spans);
  return tidyBlanks(spans);
}

function visit(node: MarkupNode, setting: Setting, spans: Span[]): void {
  if (node.kind === 'text') {
    addText(node.text, setting, spans);
    return;
  }
  switch (node.name) {
    case 'br':
      spans.push({ kind: 'break' });
      return;
    case 'verdict': {
      const verdict = node.attributes.is as VerdictWord;
      // The accent and the weight of `exceeds` go with its word.
      const face = verdict === 'exceeds' ? 'bold' : setting.style.face;
      spans.push({ kind: 'mark', verdict, word: VERDICT_WORDS[verdict], style: { ...setting.style, face } });
      return;
    }
  }
  const inner = settingInside(node.name, node.attributes.to, setting);
  for (const child of node.children) visit(child, inner, spans);
}

function settingInside(name: string, to: string | undefined, setting: Setting): Setting {
  const { style, rise } = setting;
  switch (name) {
    case 'b':
      return { ...setting, style: { ...style, face: 'bold' } };
    case 'i':
      return { ...setting, style: { ...style, face: style.face === 'italic' ? 'regular' : 'italic' } };
    case 'sub':
      return {
        ...setting,
        style: { ...style, size: style.size * SCRIPT_SIZE },
        rise: rise + SUBSCRIPT_RISE * style.size,
      };
    case 'sup':
      return {
        ...setting,
        style: { ...style, size: style.size * SCRIPT_SIZE },
        rise: rise + SUPERSCRIPT_RISE * style.size,
      };
    case 'small':
      return { ...setting, style: { ...style, face: 'regular', size: style.size * SMALL_SIZE, ink: 'grey' } };
    case 'ref':
      return { ...setting, link: to };
    default:
      return setting;
  }
}

function addText(text: string, setting: Setting, spans: Span[]): void {
  if (text === '') return;
  const { style, rise, link } = setting;
  spans.push({ kind: 'text', text, style, rise, ...(link === undefined ? {} : { link }) });
}

function tidyBlanks(spans: readonly Span[]): readonly Span[] {
  const tidy: Span[] = [];
  // A blank is wanted only after words, and is written before the next words.
  let blankBefore = true;
  for (const span of spans) {
    if (span.kind !== 'text') {
      if (span.kind === 'break') trimEnd(tidy);
      tidy.push(span);
      blankBefore = span.kind === 'break';
      continue;
    }
    let text = span.text.replace(/[ \t\r\n\f\v]+/g, ' ');
    // Control signs cannot be set; what they were meant to be is not known.
    text = text.replace(/[\p{Cc}\u200b\ufeff]/gu, '');
    if (blankBefore) text = text.replace(/^ /, '');
    if (text === '') continue;
    blankBefore = text.endsWith(' ');
    tidy.push({ ...span, text });
  }
  trimEnd(tidy);
  return tidy;
}

function trimEnd(spans: Span[]): void {
  const last = spans.at(-1);
  if (last?.kind !== 'text' || !last.text.endsWith(' ')) return;
  spans.pop();
  const text = last.text.slice(0, -1);
  if (text !== '') spans.push({ ...last, text });
}
