/** Builds the tagged structure while pages are painted: elements appear in the order in which they are first used. */
import { type PDFContext, PDFHexString, PDFName, PDFNumber, type PDFRef } from 'pdf-lib';
import type { Tag } from '../layout/piece.js';

type Box = readonly [number, number, number, number];

interface Element {
  readonly tag: Tag;
  readonly ref: PDFRef;
  readonly kids: Kid[];
  box?: Box;
}

type Kid =
  | { readonly kind: 'element'; readonly ref: PDFRef }
  | { readonly kind: 'content'; readonly page: PDFRef; readonly number: number }
  | { readonly kind: 'object'; readonly page: PDFRef; readonly ref: PDFRef };

export interface Structure {
  /** Notes marked content of a page under its element. */
  readonly addContent: (tag: Tag, page: PDFRef, number: number) => void;
  /** Notes an annotation under its element. @returns key of the annotation in the parent tree */
  readonly addObject: (tag: Tag, page: PDFRef, object: PDFRef) => number;
  /** Box of a figure on its page. */
  readonly setBox: (tag: Tag, box: Box) => void;
  /** Writes the tree; `pages` lists, for each page in order, the elements of its marked content. */
  readonly write: (pages: readonly (readonly Tag[])[]) => PDFRef;
}

/**
 * Starts a structure tree.
 *
 * @param context - the PDF's objects
 * @param pageCount - number of pages: parent-tree keys of annotations follow those of the pages
 * @returns the growing tree
 */
export function openStructure(context: PDFContext, pageCount: number): Structure {
  const elements = new Map<Tag, Element>();
  const objects: Element[] = [];
  const root = context.nextRef();
  const top: PDFRef[] = [];

  const elementOf = (tag: Tag): Element => {
    const known = elements.get(tag);
    if (known) return known;
    const element: Element = { tag, ref: context.nextRef(), kids: [] };
    elements.set(tag, element);
    if (tag.parent) elementOf(tag.parent).kids.push({ kind: 'element', ref: element.ref });
    else top.push(element.ref);
    return element;
  };

  const dictOf = (element: Element) => {
    const { tag, kids } = element;
    const dict = context.obj({
      Type: 'StructElem',
      S: tag.role,
      P: tag.parent ? elementOf(tag.parent).ref : root,
    });
    const page = kids.find((kid) => kid.kind === 'content');
    if (page?.kind === 'content') dict.set(PDFName.of('Pg'), page.page);
    const home = page?.kind === 'content' ? page.page : undefined;
    dict.set(
      PDFName.of('K'),
      context.obj(
        kids.map((kid) => {
          if (kid.kind === 'element') return kid.ref;
          if (kid.kind === 'object') return context.obj({ Type: 'OBJR', Pg: kid.page, Obj: kid.ref });
          if (kid.page === home) return PDFNumber.of(kid.number);
          return context.obj({ Type: 'MCR', Pg: kid.page, MCID: kid.number });
        }),
      ),
    );
    if (tag.alt !== undefined) dict.set(PDFName.of('Alt'), PDFHexString.fromText(tag.alt));
    if (element.box)
      dict.set(PDFName.of('A'), context.obj({ O: 'Layout', Placement: 'Block', BBox: [...element.box] }));
    if (tag.scope || (tag.columns ?? 1) > 1)
      dict.set(
        PDFName.of('A'),
        context.obj({
          O: 'Table',
          ...(tag.scope ? { Scope: tag.scope } : {}),
          ...((tag.columns ?? 1) > 1 ? { ColSpan: tag.columns ?? 1 } : {}),
        }),
      );
    return dict;
  };

  return {
    addContent: (tag, page, number) => {
      elementOf(tag).kids.push({ kind: 'content', page, number });
    },
    addObject: (tag, page, ref) => {
      const element = elementOf(tag);
      element.kids.push({ kind: 'object', page, ref });
      objects.push(element);
      return pageCount + objects.length - 1;
    },
    setBox: (tag, box) => {
      elementOf(tag).box = box;
    },
    write: (pages) => {
      const nums: (PDFNumber | PDFRef)[] = [];
      pages.forEach((tags, i) => {
        nums.push(PDFNumber.of(i), context.register(context.obj(tags.map((tag) => elementOf(tag).ref))));
      });
      objects.forEach((element, i) => {
        nums.push(PDFNumber.of(pageCount + i), element.ref);
      });
      for (const element of elements.values()) context.assign(element.ref, dictOf(element));
      context.assign(
        root,
        context.obj({
          Type: 'StructTreeRoot',
          K: top,
          ParentTree: context.register(context.obj({ Nums: nums })),
          ParentTreeNextKey: pageCount + objects.length,
          RoleMap: { Title: 'P' },
        }),
      );
      return root;
    },
  };
}
