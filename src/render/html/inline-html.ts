/** Inline content as HTML. */
import type { MarkupNode } from '../markup.js';
import { escapeText, verdictToSvg } from '../svg.js';
import type { VerdictWord } from '../vocabulary.js';
import { VERDICT_WORDS } from '../words.js';

/** Words and inline elements as HTML, every text escaped. */
export function inlineToHtml(nodes: readonly MarkupNode[]): string {
  return nodes.map(nodeToHtml).join('');
}

function nodeToHtml(node: MarkupNode): string {
  if (node.kind === 'text') return escapeText(node.text);
  switch (node.name) {
    case 'br':
      return '<br>';
    case 'verdict': {
      const verdict = node.attributes.is as VerdictWord;
      const word = VERDICT_WORDS[verdict];
      return (
        verdictToSvg(verdict) + (verdict === 'exceeds' ? `<span class="exceeds-word">${word}</span>` : word)
      );
    }
    case 'ref':
      return `<a href="#${escapeText(node.attributes.to ?? '')}">${inlineToHtml(node.children)}</a>`;
    default:
      // b, i, sub and sup are called the same in HTML.
      return `<${node.name}>${inlineToHtml(node.children)}</${node.name}>`;
  }
}
