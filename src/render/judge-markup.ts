/** What can only be judged on the whole document: ids once, links that lead somewhere, rows that fill their columns. */
import type { IssueDataBeside, TailsOf } from '../issues/issue.js';
import type { TemplateSpot } from '../issues/sentences/render.js';
import type { MarkupElement } from './markup.js';

/** Faults of markup, without their common beginning. */
export type MarkupFault = TailsOf<'render.markup'>;

/** What a fault has to be told with, beside its place. */
export type MarkupFaultData<Fault extends MarkupFault> = IssueDataBeside<
  `render.markup.${Fault}`,
  TemplateSpot
>;

type Complain = <Fault extends MarkupFault>(fault: Fault, line: number, data: MarkupFaultData<Fault>) => void;

/** Kinds of a table column. */
export type ColumnKind = 'left' | 'right' | 'centre' | 'decimal';

export interface Column {
  readonly kind: ColumnKind;
  /** Weight by which spare width is shared. */
  readonly share: number;
}

/** Child elements of an element, words left out. */
export const elementsOf = (element: MarkupElement): readonly MarkupElement[] =>
  element.children.filter((child): child is MarkupElement => child.kind === 'element');

/** Reads `left:3 decimal:1` into columns. */
export function readColumns(text: string): readonly Column[] {
  return text
    .trim()
    .split(/\s+/)
    .map((word) => {
      const [kind, share] = word.split(':');
      return { kind: kind as ColumnKind, share: share === undefined ? 1 : Math.max(0.1, Number(share)) };
    });
}

/** Whether the only cell of a row with this role runs over the whole table. */
export const runsOver = (role: string | undefined): boolean => role === 'group' || role === 'remark';

/** Number of columns a row fills. */
const filled = (row: MarkupElement): number =>
  elementsOf(row).reduce((sum, cell) => sum + Number(cell.attributes.span ?? 1), 0);

/**
 * Judges the whole document.
 *
 * @param root - the root element
 * @param complain - called once a fault with code, line and data
 */
export function judgeDocument(root: MarkupElement, complain: Complain): void {
  const ids = new Set<string>();
  const boxes: MarkupElement[] = [];
  const links: { readonly to: string; readonly line: number }[] = [];
  const visit = (element: MarkupElement): void => {
    const { id, to } = element.attributes;
    if (id !== undefined && element.name !== 'ref') {
      if (ids.has(id)) complain('id-twice', element.line, { id });
      ids.add(id);
    }
    if (to !== undefined) links.push({ to, line: element.line });
    if (element.name === 'table') judgeTable(element, complain);
    if (element.name === 'box') boxes.push(element);
    for (const child of elementsOf(element)) visit(child);
  };
  visit(root);
  judgeBoxes(boxes, complain);
  for (const { to, line } of links)
    if (!ids.has(to)) complain('link-leads-nowhere', line, { to, available: [...ids].slice(0, 40) });
}

/** A box is a field or a group of fields, not both; who chooses needs something to choose from. */
function judgeBoxes(boxes: readonly MarkupElement[], complain: Complain): void {
  const names = new Set(boxes.map((box) => box.attributes.id ?? ''));
  for (const box of boxes) {
    const words = (box.attributes.id ?? '').split('.');
    const group = words.map((_, i) => words.slice(0, i).join('.')).find((name) => names.has(name));
    if (group !== undefined) complain('box-in-box', box.line, { id: box.attributes.id ?? '', group });
    const choices = elementsOf(box).length;
    const isChoice = box.attributes.kind === 'choice';
    if (isChoice ? choices < 2 : choices > 0)
      complain('choices-do-not-fit', box.line, { id: box.attributes.id ?? '', found: choices });
  }
}

function judgeTable(table: MarkupElement, complain: Complain): void {
  if (table.attributes.columns === undefined) return;
  const columns = readColumns(table.attributes.columns).length;
  const rows = elementsOf(table).flatMap((child) => (child.name === 'head' ? elementsOf(child) : [child]));
  const firstRow = elementsOf(table).findIndex((child) => child.name === 'row');
  elementsOf(table).forEach((child, i) => {
    if (child.name === 'head' && i > firstRow && firstRow >= 0) complain('head-after-rows', child.line, {});
  });
  for (const row of rows) {
    // A group row or a remark of one cell runs over the whole table.
    if (runsOver(row.attributes.role) && elementsOf(row).length === 1) continue;
    if (filled(row) !== columns)
      complain('row-does-not-fit', row.line, { found: filled(row), wanted: columns });
  }
}
