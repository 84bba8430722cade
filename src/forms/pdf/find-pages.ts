/** On which page each widget stands. */
import { LIMITS } from './limits.js';
import type { OpenPdf } from './open-pdf.js';
import { isKind, type PdfGroup, type PdfValue } from './value.js';

/** Pages of a PDF as far as its form needs them. */
export interface FoundPages {
  readonly count: number;
  /** Number of the page, from 1, by the group of the page and of everything noted on it. */
  readonly pageOf: ReadonlyMap<PdfGroup, number>;
  /** Widgets noted on pages, in order. */
  readonly widgets: readonly PdfGroup[];
}

/** Goes through the pages; one that leads back to itself is passed over. */
export function findPages({ catalog, resolve }: OpenPdf): FoundPages {
  const pageOf = new Map<PdfGroup, number>();
  const widgets: PdfGroup[] = [];
  const seen = new Set<PdfGroup>();
  let count = 0;
  const listOf = (value: PdfValue | undefined): readonly PdfValue[] => {
    const found = resolve(value);
    return isKind(found, 'list') ? found.items : [];
  };
  const visit = (value: PdfValue | undefined, depth: number): void => {
    const node = resolve(value);
    if (!isKind(node, 'group') || seen.has(node) || depth > LIMITS.depth || count >= LIMITS.pages) return;
    seen.add(node);
    const kids = listOf(node.entries.get('Kids'));
    if (node.entries.has('Kids')) {
      for (const kid of kids) visit(kid, depth + 1);
      return;
    }
    count += 1;
    pageOf.set(node, count);
    for (const note of listOf(node.entries.get('Annots'))) {
      const widget = resolve(note);
      if (!isKind(widget, 'group') || pageOf.has(widget)) continue;
      pageOf.set(widget, count);
      const kind = resolve(widget.entries.get('Subtype'));
      if (isKind(kind, 'name') && kind.name === 'Widget') widgets.push(widget);
    }
  };
  visit(catalog.entries.get('Pages'), 0);
  return { count, pageOf, widgets };
}
