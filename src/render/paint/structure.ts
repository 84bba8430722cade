/**
 * Builds the tagged structure while pages are painted: elements appear in the order in which they are first named.
 * What was measured hangs its elements on one another; here they become dictionaries, each content once under its own.
 */
import {
  PDFArray,
  type PDFContext,
  type PDFDict,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  type PDFRef,
  PDFString,
} from 'pdf-lib';
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
  /** Makes an element though nothing may be painted for it: an empty cell is a cell. */
  readonly addElement: (tag: Tag) => void;
  /** Notes marked content of a page under its element. */
  readonly addContent: (tag: Tag, page: PDFRef, number: number) => void;
  /** Notes an annotation, of a link or a form field, under its element. @returns its key in the parent tree */
  readonly addObject: (tag: Tag, page: PDFRef, object: PDFRef) => number;
  /** Box of a figure on its page. */
  readonly setBox: (tag: Tag, box: Box) => void;
  /** Writes the tree; `pages` lists, for each page in order, the elements of its marked content. */
  readonly write: (pages: readonly (readonly Tag[])[]) => PDFRef;
}

/** Roles of our own by the standard role that comes nearest. */
const ROLE_MAP = { Title: 'P' };

/** Elements that must be found by a name of their own. */
const NAMED: ReadonlySet<string> = new Set(['Note']);

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
    // Parents come first, so that the order of the tree is the order in which its leaves are named.
    const parent = tag.parent && elementOf(tag.parent);
    const element: Element = { tag, ref: context.nextRef(), kids: [] };
    elements.set(tag, element);
    if (parent) parent.kids.push({ kind: 'element', ref: element.ref });
    else top.push(element.ref);
    return element;
  };

  const listOf = (objects: readonly PDFObject[]): PDFArray => {
    const list = PDFArray.withContext(context);
    for (const object of objects) list.push(object);
    return list;
  };

  const dictOf = (element: Element): PDFDict => {
    const { tag, kids } = element;
    const home = kids.find((kid) => kid.kind === 'content');
    const dict = context.obj({
      Type: 'StructElem',
      S: tag.role,
      P: tag.parent ? elementOf(tag.parent).ref : root,
    });
    if (home?.kind === 'content') dict.set(PDFName.of('Pg'), home.page);
    const written = kids.map((kid): PDFObject => {
      if (kid.kind === 'element') return kid.ref;
      if (kid.kind === 'object') return context.obj({ Type: 'OBJR', Pg: kid.page, Obj: kid.ref });
      if (home?.kind === 'content' && kid.page === home.page) return PDFNumber.of(kid.number);
      return context.obj({ Type: 'MCR', Pg: kid.page, MCID: kid.number });
    });
    const [only] = written;
    if (only && written.length === 1) dict.set(PDFName.of('K'), only);
    else if (written.length > 1) dict.set(PDFName.of('K'), listOf(written));
    if (tag.alt !== undefined) dict.set(PDFName.of('Alt'), PDFHexString.fromText(tag.alt));
    const attributes = attributesOf(element);
    const [attribute] = attributes;
    if (attribute) dict.set(PDFName.of('A'), attributes.length === 1 ? attribute : listOf(attributes));
    return dict;
  };

  /** Attributes by owner; numbers and names only. */
  const attributesOf = ({ tag, box }: Element): readonly PDFDict[] => {
    const span = tag.columns ?? 1;
    return [
      ...(box ? [context.obj({ O: 'Layout', Placement: 'Block', BBox: [...box] })] : []),
      ...(tag.scope || span > 1
        ? [
            context.obj({
              O: 'Table',
              ...(tag.scope ? { Scope: tag.scope } : {}),
              ...(span > 1 ? { ColSpan: span } : {}),
            }),
          ]
        : []),
      ...(tag.numbering ? [context.obj({ O: 'List', ListNumbering: tag.numbering })] : []),
    ];
  };

  /** Gives elements that need it a name and lists the names. @returns the tree of names, if there are any */
  const nameElements = (dicts: readonly (readonly [Element, PDFDict])[]): PDFRef | undefined => {
    const names = dicts
      .filter(([{ tag }]) => NAMED.has(tag.role))
      .map(([element, dict], i) => {
        const name = PDFString.of(`${element.tag.role.toLowerCase()}-${String(i + 1).padStart(5, '0')}`);
        dict.set(PDFName.of('ID'), name);
        return [name, element.ref] as const;
      });
    const [first] = names[0] ?? [];
    const [last] = names.at(-1) ?? [];
    if (!first || !last) return undefined;
    // The root of such a tree may hold names or branches; one branch with its limits suits every reader.
    const leaf = context.register(context.obj({ Limits: [first, last], Names: names.flat() }));
    return context.register(context.obj({ Kids: [leaf] }));
  };

  return {
    addElement: (tag) => {
      elementOf(tag);
    },
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
      const dicts = [...elements.values()].map((element) => [element, dictOf(element)] as const);
      const names = nameElements(dicts);
      for (const [element, dict] of dicts) context.assign(element.ref, dict);
      context.assign(
        root,
        context.obj({
          Type: 'StructTreeRoot',
          K: top,
          ParentTree: context.register(context.obj({ Nums: nums })),
          ParentTreeNextKey: pageCount + objects.length,
          RoleMap: ROLE_MAP,
          ...(names ? { IDTree: names } : {}),
        }),
      );
      return root;
    },
  };
}
