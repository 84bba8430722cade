/** Lines to fill in as HTML: frames to write in by hand when the page is printed. Nothing can be sent from it. */
import { elementsOf } from '../judge-markup.js';
import type { MarkupElement } from '../markup.js';
import { escapeText } from '../svg.js';
import { inlineToHtml } from './inline-html.js';

/** Lines to fill in, under their heads. */
export function readingsToHtml(block: MarkupElement): string {
  const { what = '', filled = '', 'left-out': leftOut = '' } = block.attributes;
  const heads = [what, filled, leftOut].map((words) => `<th scope="col">${escapeText(words)}</th>`);
  return [
    '<div class="scroll"><table class="readings">',
    `<thead><tr>${heads.join('')}</tr></thead>`,
    '<tbody>',
    ...elementsOf(block).map(rowToHtml),
    '</tbody></table></div>',
  ].join('\n');
}

function rowToHtml(row: MarkupElement): string {
  const children = elementsOf(row);
  const asides = children
    .filter(({ name }) => name === 'aside')
    .map((aside) => `<div class="aside ${aside.attributes.role}">${inlineToHtml(aside.children)}</div>`);
  const boxes = children.filter(({ name }) => name === 'box');
  const isLeftOut = (box: MarkupElement): boolean => box.attributes.place === 'left-out';
  const cell = (some: readonly MarkupElement[]): string => `<td>${some.map(boxToHtml).join('')}</td>`;
  return `<tr><th scope="row">${escapeText(row.attributes.label ?? '')}${asides.join('')}</th>${cell(
    boxes.filter((box) => !isLeftOut(box)),
  )}${cell(boxes.filter(isLeftOut))}</tr>`;
}

function boxToHtml(box: MarkupElement): string {
  const { kind = 'text', label = '', unit = '', expected = '', tip = '' } = box.attributes;
  const words = (text: string, role: string): string =>
    text === '' ? '' : `<span class="${role}">${escapeText(text)}</span>`;
  const choices = elementsOf(box).map(
    (choice) => `<span class="choice">○ ${inlineToHtml(choice.children)}</span>`,
  );
  const frame = choices.length > 0 ? choices.join(' ') : `<span class="frame">${words(unit, 'unit')}</span>`;
  return `<div class="box ${kind}" title="${escapeText(tip)}">${words(label, 'label')}${frame}${words(expected, 'source')}</div>`;
}
