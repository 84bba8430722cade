/** Finds the fields of a form: whole names, what is handed down from groups, and their widgets with pages. */
import { EngineError } from '../../issues/issue.js';
import { type FoundPages, findPages } from './find-pages.js';
import { LIMITS } from './limits.js';
import type { OpenPdf } from './open-pdf.js';
import { pdfText } from './pdf-text.js';
import { isKind, type PdfGroup, type PdfValue } from './value.js';

/** A field that can be filled in. */
export interface PdfField {
  /** Words of the group names and its own, separated by dots. */
  readonly name: string;
  /** Name that the field gives for what it holds, where it does: it outlives the loss of the groups. */
  readonly givenName: string | undefined;
  /** `Tx`, `Btn`, `Ch` or `Sig`; undefined where neither the field nor its groups say. */
  readonly type: string | undefined;
  /** Its entry of a key, or that of the nearest group that has one. */
  readonly entry: (key: string) => PdfValue | undefined;
  /** The places where it shows; itself where it has no others. */
  readonly widgets: readonly PdfGroup[];
  /** Page of its first widget, from 1. */
  readonly page: number | undefined;
}

/** Keys that a group hands down: ISO 32000-1, table 220, and the choices of a field split by a viewer. */
const HANDED_DOWN: ReadonlySet<string> = new Set(['FT', 'V', 'Ff', 'MaxLen', 'Opt', 'RV']);

const EMPTY: PdfGroup = { kind: 'group', entries: new Map() };

/**
 * Finds all fields, those that a viewer took out of the list of the form included.
 *
 * @param pdf - open PDF
 * @returns fields in the order of the form
 * @throws EngineError `fieldwork.form.too-much` for more fields than any sheet has
 */
export function findFields(pdf: OpenPdf): readonly PdfField[] {
  const { resolve, catalog } = pdf;
  const pages = findPages(pdf);
  const fields: PdfField[] = [];
  const seen = new Set<PdfGroup>();
  const groupsIn = (value: PdfValue | undefined): readonly PdfGroup[] => {
    const list = resolve(value);
    return isKind(list, 'list') ? list.items.map(resolve).filter((one) => isKind(one, 'group')) : [];
  };
  const nameOf = (node: PdfGroup, key = 'T'): string | undefined => {
    const title = resolve(node.entries.get(key));
    return isKind(title, 'text') ? pdfText(title.bytes) : undefined;
  };

  const visit = (node: PdfGroup, above: readonly PdfGroup[]): void => {
    if (seen.has(node) || above.length > LIMITS.depth) return;
    seen.add(node);
    if (seen.size > LIMITS.fields)
      throw new EngineError('fieldwork.form.too-much', { what: 'fields', limit: LIMITS.fields });
    const kids = groupsIn(node.entries.get('Kids'));
    const line = [...above, node];
    const named = kids.filter((kid) => nameOf(kid) !== undefined);
    const unnamed = kids.filter((kid) => nameOf(kid) === undefined);
    for (const kid of named) visit(kid, line);
    for (const kid of unnamed) seen.add(kid);
    if (kids.length > 0 && unnamed.length === 0) return;
    fields.push(fieldOf(line, unnamed.length > 0 ? unnamed : [node], pages));
  };

  const fieldOf = (
    line: readonly PdfGroup[],
    widgets: readonly PdfGroup[],
    { pageOf }: FoundPages,
  ): PdfField => {
    const entry = (key: string): PdfValue | undefined => {
      const nearest = [...line].reverse();
      for (const node of HANDED_DOWN.has(key) ? nearest : nearest.slice(0, 1)) {
        const value = resolve(node.entries.get(key));
        if (value !== undefined && value !== null) return value;
      }
      return undefined;
    };
    const type = entry('FT') ?? resolve(widgets[0]?.entries.get('FT'));
    const places = widgets.map((widget) => {
      const page = resolve(widget.entries.get('P'));
      return pageOf.get(widget) ?? (isKind(page, 'group') ? pageOf.get(page) : undefined);
    });
    return {
      name: line
        .map((node) => nameOf(node))
        .filter((word) => word !== undefined)
        .join('.'),
      givenName: nameOf(line.at(-1) ?? EMPTY, 'TM'),
      type: isKind(type, 'name') ? type.name : undefined,
      entry,
      widgets,
      page: places.find((page) => page !== undefined),
    };
  };

  const form = resolve(catalog.entries.get('AcroForm'));
  if (isKind(form, 'group')) for (const root of groupsIn(form.entries.get('Fields'))) visit(root, []);
  // Programs that put files together leave widgets behind that no list of fields leads to.
  for (const widget of pages.widgets) {
    if (seen.has(widget)) continue;
    const line = lineTo(widget, resolve);
    const [top = widget] = line;
    const parent = line.at(-2);
    if (parent === undefined || groupsIn(parent.entries.get('Kids')).includes(widget)) visit(top, []);
    else if (nameOf(widget) !== undefined) fields.push(fieldOf(line, [widget], pages));
  }
  return fields;
}

/** The groups above a widget, topmost first, and the widget itself. */
function lineTo(widget: PdfGroup, resolve: OpenPdf['resolve']): readonly PdfGroup[] {
  const line = [widget];
  while (line.length < LIMITS.depth) {
    const parent = resolve(line[0]?.entries.get('Parent'));
    if (!isKind(parent, 'group') || line.includes(parent)) break;
    line.unshift(parent);
  }
  return line;
}
