/** Bookmarks: the tree a reader shows beside the pages, sections open to be chosen, what is below them folded. */
import { type PDFContext, PDFHexString, PDFName, type PDFRef } from 'pdf-lib';

export interface Bookmark {
  readonly title: string;
  readonly level: 1 | 2;
  readonly page: PDFRef;
  /** Height on the page, from its foot [points]. */
  readonly top: number;
}

interface Entry {
  readonly bookmark: Bookmark;
  readonly ref: PDFRef;
  readonly children: Entry[];
}

/**
 * Writes the outline tree.
 *
 * @param context - the PDF's objects
 * @param bookmarks - in order of pages
 * @returns the root of the tree, or nothing when there are no bookmarks
 */
export function writeOutline(context: PDFContext, bookmarks: readonly Bookmark[]): PDFRef | undefined {
  if (bookmarks.length === 0) return undefined;
  const top: Entry[] = [];
  for (const bookmark of bookmarks) {
    const entry: Entry = { bookmark, ref: context.nextRef(), children: [] };
    const parent = bookmark.level === 2 ? top.at(-1) : undefined;
    (parent?.children ?? top).push(entry);
  }
  const root = context.nextRef();
  writeLevel(context, top, root);
  context.assign(root, context.obj({ Type: 'Outlines', ...ends(top), Count: top.length }));
  return root;
}

const ends = (entries: readonly Entry[]): { First: PDFRef; Last: PDFRef } | Record<string, never> => {
  const first = entries[0];
  const last = entries.at(-1);
  return first && last ? { First: first.ref, Last: last.ref } : {};
};

function writeLevel(context: PDFContext, entries: readonly Entry[], parent: PDFRef): void {
  entries.forEach((entry, i) => {
    const { bookmark, children } = entry;
    const dict = context.obj({
      Title: PDFHexString.fromText(bookmark.title),
      Parent: parent,
      Dest: [bookmark.page, 'XYZ', null, Math.round(bookmark.top), null],
      ...ends(children),
    });
    const before = entries[i - 1];
    const after = entries[i + 1];
    if (before) dict.set(PDFName.of('Prev'), before.ref);
    if (after) dict.set(PDFName.of('Next'), after.ref);
    // Below zero: so many would show if the reader opened it.
    if (children.length > 0) dict.set(PDFName.of('Count'), context.obj(-children.length));
    context.assign(entry.ref, dict);
    writeLevel(context, children, entry.ref);
  });
}
