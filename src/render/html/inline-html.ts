/** Inline content as HTML. */
import type { MarkupNode } from '../markup.js';
import { escapeText, verdictToSvg } from '../svg.js';
import type { VerdictWord } from '../vocabulary.js';
import { VERDICT_WORDS } from '../words.js';

/** Words and inline elements as HTML, every text escaped. */
export function inlineToHtml(nodes: readonly MarkupNode[]): string {
  return nodes.map(nodeToHtml).join('');
}

/** Shape and word of a verdict. */
function verdictToHtml(verdict: VerdictWord, words: Readonly<Record<VerdictWord, string>>): string {
  const look = verdict === 'exceeds' ? 'verdict-word exceeds-word' : 'verdict-word';
  return `<span class="${look}">${verdictToSvg(verdict)}${words[verdict]}</span>`;
}

/** A paragraph that opens with a verdict opens with a capital. */
export function verdictParagraph(nodes: readonly MarkupNode[]): string {
  const at = nodes.findIndex((node) => node.kind === 'element' || /\S/.test(node.text));
  const first = nodes[at];
  if (first?.kind !== 'element' || first.name !== 'verdict') return inlineToHtml(nodes);
  const verdict = first.attributes.is as VerdictWord;
  const word = VERDICT_WORDS[verdict];
  const capital = { ...VERDICT_WORDS, [verdict]: word.charAt(0).toUpperCase() + word.slice(1) };
  return verdictToHtml(verdict, capital) + inlineToHtml(nodes.slice(at + 1));
}

function nodeToHtml(node: MarkupNode): string {
  if (node.kind === 'text') return escapeText(node.text);
  switch (node.name) {
    case 'br':
      return '<br>';
    case 'verdict':
      return verdictToHtml(node.attributes.is as VerdictWord, VERDICT_WORDS);
    case 'ref':
      return `<a href="#${escapeText(node.attributes.to ?? '')}">${inlineToHtml(node.children)}</a>`;
    default:
      // b, i, sub and sup are called the same in HTML.
      return `<${node.name}>${inlineToHtml(node.children)}</${node.name}>`;
  }
}
