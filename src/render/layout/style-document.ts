/** Style step: markup elements become blocks with every text in its style. */
import { backLinks } from '../back-links.js';
import { elementsOf, readColumns } from '../judge-markup.js';
import type { MarkupElement, MarkupNode } from '../markup.js';
import { isInline } from '../vocabulary.js';
import { noteTitle } from '../words.js';
import { plain, styleInline } from './style-inline.js';
import { styleReadings } from './style-readings.js';
import { STYLES, type TextStyle } from './style-sheet.js';
import type {
  ContentsEntry,
  NoteKind,
  RowRole,
  Span,
  StepRole,
  StyledBlock,
  StyledDocument,
  StyledLetterhead,
  StyledRow,
} from './styled.js';

/**
 * Gives every block and every text its style.
 *
 * @param root - the root element `review`
 * @returns title and blocks
 */
export function styleDocument(root: MarkupElement): StyledDocument {
  const contents = collectSections(root);
  const found: Found = { contents, back: backLinks(root) };
  const [letterhead] = elementsOf(root).filter(({ name }) => name === 'letterhead');
  const blocks = elementsOf(root)
    .filter(({ name }) => name !== 'letterhead')
    .map((element) => styleBlock(element, 1, found));
  return {
    ...(letterhead && { letterhead: styleLetterhead(letterhead) }),
    title: plain(root.attributes.title ?? '', STYLES.title),
    blocks,
  };
}

function styleLetterhead(element: MarkupElement): StyledLetterhead {
  return {
    name: plain(element.attributes.name ?? '', STYLES.letterheadName),
    lines: elementsOf(element).map((line) => styleInline(line.children, STYLES.letterheadLine)),
    hasLogo: element.attributes.logo !== 'none',
  };
}

/** What blocks must know of the whole document. */
interface Found {
  readonly contents: readonly ContentsEntry[];
  readonly back: ReadonlyMap<string, string>;
}

function collectSections(root: MarkupElement): readonly ContentsEntry[] {
  const entries: ContentsEntry[] = [];
  const visit = (element: MarkupElement, depth: 1 | 2): void => {
    for (const child of elementsOf(element)) {
      if (child.name !== 'section') continue;
      const level = levelOf(child, depth);
      const style: TextStyle = level === 1 ? { ...STYLES.body, face: 'bold' } : STYLES.body;
      entries.push({
        id: child.attributes.id ?? '',
        title: plain(child.attributes.title ?? '', style),
        level,
      });
      visit(child, 2);
    }
  };
  visit(root, 1);
  return entries;
}

const levelOf = (section: MarkupElement, depth: 1 | 2): 1 | 2 =>
  section.attributes.level === '2' ? 2 : section.attributes.level === '1' ? 1 : depth;

function styleBlock(element: MarkupElement, depth: 1 | 2, found: Found): StyledBlock {
  const at = element.attributes;
  const inside = (child: MarkupElement): StyledBlock => styleBlock(child, depth, found);
  switch (element.name) {
    case 'section': {
      const back = found.back.get(at.id ?? '');
      return {
        kind: 'section',
        id: at.id ?? '',
        title: at.title ?? '',
        level: levelOf(element, depth),
        newPage: at.page === 'new',
        ...(back === undefined ? {} : { back }),
        blocks: elementsOf(element).map((child) => styleBlock(child, 2, found)),
      };
    }
    case 'list':
      return {
        kind: 'list',
        ordered: at.ordered === 'yes',
        items: elementsOf(element).map((item) => mixed(item, STYLES.body, inside)),
      };
    case 'note': {
      const kind = at.kind as NoteKind;
      const ink = kind === 'caution' ? 'accent' : 'black';
      const title = plain(noteTitle(kind, at.title), { ...STYLES.noteTitle, ink });
      return { kind: 'note', note: kind, title, blocks: mixed(element, STYLES.body, inside) };
    }
    case 'table':
      return {
        kind: 'table',
        ...(at.id === undefined ? {} : { id: at.id }),
        caption: plain(at.caption ?? '', { ...STYLES.caption, face: 'bold', ink: 'black' }),
        columns: readColumns(at.columns ?? 'left'),
        head: elementsOf(element)
          .filter((child) => child.name === 'head')
          .flatMap(elementsOf)
          .map((row) => styleRow(row, true)),
        rows: elementsOf(element)
          .filter((child) => child.name === 'row')
          .map((row) => styleRow(row, false)),
      };
    case 'figure':
      return {
        kind: 'figure',
        drawing: at.drawing ?? '',
        caption: plain(at.caption ?? '', STYLES.caption),
        half: at.width === 'half',
        line: element.line,
      };
    case 'calculation':
      return {
        kind: 'calculation',
        id: at.id ?? '',
        title: plain(at.title ?? '', STYLES.calculationTitle),
        steps: elementsOf(element).map((step) => {
          const role = step.attributes.role as StepRole;
          return { role, spans: styleInline(step.children, STYLES[role]) };
        }),
      };
    case 'facts':
      return styleFacts(elementsOf(element), Number(at.columns ?? 1));
    case 'signatures':
      return {
        kind: 'signatures',
        labels: elementsOf(element).map((line) => plain(line.attributes.label ?? '', STYLES.signature)),
      };
    case 'readings':
      return styleReadings(element);
    case 'keep':
      return { kind: 'keep', blocks: elementsOf(element).map(inside) };
    case 'columns':
      return { kind: 'columns', count: Number(at.count ?? 2), blocks: elementsOf(element).map(inside) };
    case 'beside': {
      const shares = (at.shares ?? '').trim().split(/\s+/).map(Number);
      const sides = elementsOf(element).map((side, i) => ({
        share: Math.max(0.1, shares[i] || 1),
        blocks: mixed(side, STYLES.body, inside),
      }));
      return { kind: 'beside', sides };
    }
    case 'contents': {
      const entries = at.level === '1' ? found.contents.filter((entry) => entry.level === 1) : found.contents;
      return { kind: 'contents', title: plain(at.title ?? '', STYLES.heading2), entries };
    }
    case 'page-break':
      return { kind: 'page-break' };
    default: {
      const role = (at.role ?? 'body') as 'body' | 'lead' | 'small' | 'verdict' | 'caution';
      const spans = styleInline(element.children, STYLES[role]);
      return { kind: 'paragraph', role, spans: role === 'verdict' ? spans.map(capitalised) : spans };
    }
  }
}

/** Facts below each other, or in so many columns side by side, read down each. */
function styleFacts(elements: readonly MarkupElement[], abreast: number): StyledBlock {
  const facts = elements.map((fact) => ({
    label: plain(fact.attributes.label ?? '', STYLES.factLabel),
    value: styleInline(fact.children, STYLES.fact),
  }));
  const length = Math.ceil(facts.length / abreast);
  if (abreast === 1 || facts.length < abreast) return { kind: 'facts', facts };
  const sides = Array.from({ length: abreast }, (_, i) => facts.slice(i * length, (i + 1) * length))
    .filter((some) => some.length > 0)
    .map((some) => ({ share: 1, blocks: [{ kind: 'facts' as const, facts: some }] }));
  return { kind: 'beside', sides };
}

/** A verdict that starts its paragraph starts with a capital. */
function capitalised(span: Span, index: number): Span {
  if (index > 0 || span.kind !== 'mark') return span;
  return { ...span, word: span.word.charAt(0).toUpperCase() + span.word.slice(1) };
}

function styleRow(row: MarkupElement, isHead: boolean): StyledRow {
  const role = (row.attributes.role ?? 'plain') as RowRole;
  const bold = isHead || role === 'total' || role === 'group';
  const style: TextStyle = isHead ? STYLES.tableHead : { ...STYLES.cell, face: bold ? 'bold' : 'regular' };
  return {
    role,
    ...(row.attributes.id === undefined ? {} : { id: row.attributes.id }),
    cells: elementsOf(row).map((cell) => ({
      spans: styleInline(cell.children, style, cell.attributes.to),
      columns: Number(cell.attributes.span ?? 1),
      ...(cell.attributes.to === undefined ? {} : { to: cell.attributes.to }),
    })),
  };
}

/** Loose words beside blocks become paragraphs of their own. */
function mixed(
  element: MarkupElement,
  style: TextStyle,
  styleChild: (child: MarkupElement) => StyledBlock,
): readonly StyledBlock[] {
  const blocks: StyledBlock[] = [];
  let loose: MarkupNode[] = [];
  const gather = (): void => {
    const spans = styleInline(loose, style);
    if (spans.length > 0) blocks.push({ kind: 'paragraph', role: 'body', spans });
    loose = [];
  };
  for (const child of element.children) {
    if (child.kind === 'text' || isInline(child.name)) loose.push(child);
    else {
      gather();
      blocks.push(styleChild(child));
    }
  }
  gather();
  return blocks;
}
