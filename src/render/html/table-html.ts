/** Tables as HTML, numbers of a decimal column lined up by blanks as wide as digits. */
import { type ColumnKind, elementsOf, readColumns, runsOver } from '../judge-markup.js';
import type { MarkupElement } from '../markup.js';
import { escapeText } from '../svg.js';
import { inlineToHtml } from './inline-html.js';

/** As wide as a digit, and as wide as a decimal point. */
const FIGURE_SPACE = '\u2007';
const POINT_SPACE = '\u2008';

/** A table of as many columns as this may be wider than a narrow window. */
const MANY_COLUMNS = 6;

/** Plain number: whole part, then point and decimals. */
const PLAIN_NUMBER = /^[±+\-−<>≤≥≈~ ]*\d[\d,]*(?:\.(\d+))?$/u;

/** A table with caption, heads and rows. */
export function tableToHtml(table: MarkupElement): string {
  const kinds = readColumns(table.attributes.columns ?? 'left').map((column) => column.kind);
  const heads = elementsOf(table)
    .filter((child) => child.name === 'head')
    .flatMap(elementsOf);
  const rows = elementsOf(table).filter((child) => child.name === 'row');
  const decimals = longestDecimals(rows, kinds);
  const { id, caption } = table.attributes;
  return [
    `<div class="scroll"${reachable(kinds.length, caption)}><table${id === undefined ? '' : ` id="${escapeText(id)}"`}>`,
    ...(caption ? [`<caption>${escapeText(caption)}</caption>`] : []),
    ...(heads.length > 0
      ? ['<thead>', ...heads.map((row) => rowToHtml(row, kinds, decimals, true)), '</thead>']
      : []),
    '<tbody>',
    ...rows.map((row) => rowToHtml(row, kinds, decimals, false)),
    '</tbody></table></div>',
  ].join('\n');
}

/** A table of many columns moves sideways on a narrow screen, by keyboard too. */
const reachable = (columns: number, caption: string | undefined): string =>
  columns < MANY_COLUMNS
    ? ''
    : ` tabindex="0" role="group" aria-label="${escapeText(caption ? plainWords(caption) : 'Table')}, moves sideways"`;

const plainWords = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** The words of a cell when it holds nothing but words. */
const wordsOf = (cell: MarkupElement): string =>
  cell.children.every((child) => child.kind === 'text')
    ? cell.children
        .map((child) => (child.kind === 'text' ? child.text : ''))
        .join('')
        .trim()
    : '';

/** Cells of a row with the number of their first column. */
function placed(
  row: MarkupElement,
  columns: number,
): readonly { readonly cell: MarkupElement; readonly first: number; readonly span: number }[] {
  let first = 0;
  const cells = elementsOf(row);
  return cells.map((cell) => {
    const span =
      runsOver(row.attributes.role) && cells.length === 1 ? columns : Number(cell.attributes.span ?? 1);
    const at = { cell, first, span };
    first += span;
    return at;
  });
}

function longestDecimals(rows: readonly MarkupElement[], kinds: readonly ColumnKind[]): readonly number[] {
  const longest = kinds.map(() => 0);
  for (const row of rows)
    for (const { cell, first } of placed(row, kinds.length))
      longest[first] = Math.max(longest[first] ?? 0, PLAIN_NUMBER.exec(wordsOf(cell))?.[1]?.length ?? 0);
  return longest;
}

function rowToHtml(
  row: MarkupElement,
  kinds: readonly ColumnKind[],
  decimals: readonly number[],
  isHead: boolean,
): string {
  const { role, id } = row.attributes;
  const cells = placed(row, kinds.length).map(({ cell, first, span }) => {
    const kind = span > 1 ? (isHead ? 'centre' : 'left') : (kinds[first] ?? 'left');
    const link = cell.attributes.to;
    const words =
      inlineToHtml(cell.children) +
      (isHead || kind !== 'decimal' ? '' : padding(wordsOf(cell), decimals[first] ?? 0));
    const inside = link === undefined ? words : `<a href="#${escapeText(link)}">${words}</a>`;
    const scope = scopeOf(row, cell, { first, span, columns: kinds.length, isHead, firstKind: kinds[0] });
    const tag = scope ? 'th' : 'td';
    const look = kind === 'left' ? '' : ` class="${kind}"`;
    return `<${tag}${scope ? ` scope="${scope}"` : ''}${span > 1 ? ` colspan="${span}"` : ''}${look}>${inside}</${tag}>`;
  });
  return `<tr${id === undefined ? '' : ` id="${escapeText(id)}"`}${role === undefined ? '' : ` class="${role}"`}>${cells.join('')}</tr>`;
}

interface CellPlace {
  readonly first: number;
  readonly span: number;
  readonly columns: number;
  readonly isHead: boolean;
  readonly firstKind: ColumnKind | undefined;
}

/** What a cell heads: its columns, its row, or, for the row that names a group, the rows below; often nothing. */
function scopeOf(row: MarkupElement, cell: MarkupElement, place: CellPlace): string | undefined {
  const { first, span, columns, isHead, firstKind } = place;
  if (cell.children.length === 0) return undefined;
  if (isHead) return span > 1 ? 'colgroup' : 'col';
  if (row.attributes.role === 'group')
    return first === 0 ? (span === columns ? 'rowgroup' : 'row') : undefined;
  return first === 0 && firstKind === 'left' && span < columns ? 'row' : undefined;
}

/** Blanks behind a number with fewer decimals than the longest of its column. */
function padding(words: string, longest: number): string {
  const match = PLAIN_NUMBER.exec(words);
  if (longest === 0 || (!match && words !== '–')) return '';
  const own = match?.[1]?.length ?? 0;
  return (own === 0 ? POINT_SPACE : '') + FIGURE_SPACE.repeat(longest - own);
}
