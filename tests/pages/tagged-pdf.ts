/** Reads the tagged structure of a PDF back and finds what is wrong with it; each fault a line of words. */
import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRawStream,
  PDFRef,
  PDFString,
} from 'pdf-lib';

export interface Element {
  readonly ref: PDFRef;
  readonly dict: PDFDict;
  readonly role: string;
  readonly parent: Element | undefined;
  readonly children: Element[];
  /** Marked content, as page and number. */
  readonly contents: string[];
  /** Annotations. */
  readonly objects: PDFRef[];
}

export interface TaggedPdf {
  readonly pdf: PDFDocument;
  readonly elements: readonly Element[];
  readonly get: (from: PDFDict, ...path: readonly string[]) => PDFObject | undefined;
  readonly words: (object: PDFObject | undefined) => string;
}

/** Opens a PDF and walks its structure. */
export async function openTagged(bytes: Uint8Array): Promise<TaggedPdf> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
  const { context } = pdf;
  const get: TaggedPdf['get'] = (from, ...path) => {
    let at: PDFObject | undefined = from;
    for (const key of path) {
      const dict: PDFObject | undefined = context.lookup(at);
      if (!(dict instanceof PDFDict)) return undefined;
      at = dict.get(PDFName.of(key));
    }
    return context.lookup(at);
  };
  const elements: Element[] = [];
  const visit = (ref: PDFRef, parent: Element | undefined): void => {
    const dict = context.lookup(ref, PDFDict);
    const role = String(dict.get(PDFName.of('S'))).slice(1);
    const element: Element = { ref, dict, role, parent, children: [], contents: [], objects: [] };
    elements.push(element);
    parent?.children.push(element);
    const home = String(dict.get(PDFName.of('Pg')));
    for (const kid of listOf(context.lookup(dict.get(PDFName.of('K'))), dict.get(PDFName.of('K')))) {
      if (kid instanceof PDFNumber) element.contents.push(`${home} ${kid.asNumber()}`);
      else if (kid instanceof PDFDict) {
        const page = String(kid.get(PDFName.of('Pg')));
        const number = kid.get(PDFName.of('MCID'));
        if (number) element.contents.push(`${page} ${number}`);
        else element.objects.push(kid.get(PDFName.of('Obj')) as PDFRef);
      } else if (kid instanceof PDFRef) visit(kid, element);
    }
  };
  const root = get(pdf.catalog, 'StructTreeRoot') as PDFDict;
  for (const ref of listOf(get(root, 'K'), root.get(PDFName.of('K')))) visit(ref as PDFRef, undefined);
  const words: TaggedPdf['words'] = (object) =>
    object instanceof PDFHexString || object instanceof PDFString ? object.decodeText() : '';
  return { pdf, elements, get, words };
}

/** A list, or the one thing that stands in its place. */
const listOf = (found: PDFObject | undefined, raw: PDFObject | undefined): readonly PDFObject[] =>
  found instanceof PDFArray ? found.asArray() : raw ? [raw] : [];

/** Text of the content of a page. */
export function contentOf(pdf: PDFDocument, page: number): string {
  const found = pdf.context.lookup(pdf.getPage(page).node.get(PDFName.of('Contents')));
  const streams = found instanceof PDFArray ? found.asArray().map((one) => pdf.context.lookup(one)) : [found];
  return streams
    .map((one) => (one instanceof PDFRawStream ? decodePDFRawStream(one).decode() : new Uint8Array()))
    .map((bytes) => new TextDecoder('latin1').decode(bytes))
    .join('\n');
}

/** Each marked content belongs to the tree once, under the element that the page and the parent tree name. */
export function contentFaults({ pdf, elements, get }: TaggedPdf): readonly string[] {
  const faults: string[] = [];
  const owners = new Map<string, Element>();
  for (const element of elements)
    for (const content of element.contents) {
      if (owners.has(content)) faults.push(`${content} stands under two elements`);
      owners.set(content, element);
    }
  const root = get(pdf.catalog, 'StructTreeRoot') as PDFDict;
  const tree = parentTree(get(root, 'ParentTree', 'Nums') as PDFArray);
  let marked = 0;
  pdf.getPages().forEach((page, i) => {
    const keys = pdf.context.lookup(tree.get(numberOf(page.node.get(PDFName.of('StructParents')))));
    const list = keys instanceof PDFArray ? keys.asArray() : [];
    const found = [...contentOf(pdf, i).matchAll(/\/(\w+) <<\/MCID (\d+)>> BDC/g)];
    if (found.length !== list.length) faults.push(`page ${i + 1} has a parent tree of another length`);
    for (const [, role = '', number = ''] of found) {
      marked += 1;
      const owner = owners.get(`${page.ref} ${number}`);
      if (!owner) faults.push(`page ${i + 1}, content ${number} belongs to no element`);
      else if (owner.role !== role)
        faults.push(`page ${i + 1}, content ${number} is ${role} and ${owner.role}`);
      if (owner && list[Number(number)] !== owner.ref)
        faults.push(`page ${i + 1}, content ${number} has another element in the parent tree`);
    }
    faults.push(...unmarked(contentOf(pdf, i)).map((line) => `page ${i + 1}: ${line} is not marked`));
    faults.push(...annotationFaults(page.node.Annots()?.asArray() ?? [], tree));
  });
  if (owners.size !== marked) faults.push(`${owners.size - marked} contents of elements are on no page`);
  return faults;

  function annotationFaults(
    annotations: readonly PDFObject[],
    keys: ReadonlyMap<number, PDFObject>,
  ): string[] {
    return annotations.flatMap((ref) => {
      const dict = pdf.context.lookup(ref, PDFDict);
      // Bit 2: hidden. What nobody sees needs no place among what is read.
      if ((numberOf(dict.get(PDFName.of('F'))) & 2) === 2) return [];
      const key = dict.get(PDFName.of('StructParent'));
      const holders = elements.filter((element) => element.objects.includes(ref as PDFRef));
      if (holders.length !== 1) return [`annotation ${ref} stands under ${holders.length} elements`];
      return keys.get(numberOf(key)) === holders[0]?.ref ? [] : [`annotation ${ref} has another key`];
    });
  }
}

const numberOf = (object: PDFObject | undefined): number =>
  object instanceof PDFNumber ? object.asNumber() : Number.NaN;

function parentTree(nums: PDFArray): ReadonlyMap<number, PDFObject> {
  const tree = new Map<number, PDFObject>();
  for (let i = 0; i + 1 < nums.size(); i += 2) tree.set(numberOf(nums.get(i)), nums.get(i + 1));
  return tree;
}

/** Lines that paint outside of marked content, and marks that do not close. */
function unmarked(content: string): readonly string[] {
  const faults: string[] = [];
  let depth = 0;
  for (const line of content.trim().split('\n')) {
    if (/ (BDC|BMC)$/.test(line)) depth += 1;
    else if (line === 'EMC') depth -= 1;
    else if (depth < 1 && /(Tj ET| re f| Do|^[fBS])$/.test(line)) faults.push(line);
  }
  return depth === 0 ? faults : [...faults, 'the end'];
}

/** What elements of each kind must have. */
export function elementFaults(tagged: TaggedPdf): readonly string[] {
  const { elements, get, words, pdf } = tagged;
  const faults: string[] = [];
  const attribute = ({ dict }: Element, owner: string, key: string): PDFObject | undefined => {
    const found = pdf.context.lookup(dict.get(PDFName.of('A')));
    const all = found instanceof PDFArray ? found.asArray().map((one) => pdf.context.lookup(one)) : [found];
    for (const one of all)
      if (one instanceof PDFDict && String(one.get(PDFName.of('O'))) === `/${owner}`)
        return one.get(PDFName.of(key));
    return undefined;
  };
  const columnsOf = (row: Element): number =>
    row.children.reduce((sum, cell) => sum + (numberOf(attribute(cell, 'Table', 'ColSpan')) || 1), 0);
  const need = (element: Element, what: string, isThere: boolean): void => {
    if (!isThere) faults.push(`${element.role} ${element.ref} has no ${what}`);
  };
  for (const element of elements) {
    if (element.parent && get(element.dict, 'P') !== element.parent.dict)
      faults.push(`${element.ref}: wrong parent`);
    const roles = element.children.map(({ role }) => role);
    const only = (...allowed: readonly string[]): boolean => roles.every((role) => allowed.includes(role));
    switch (element.role) {
      case 'TH':
        need(element, 'scope', /^\/(Row|Column)$/.test(String(attribute(element, 'Table', 'Scope'))));
        break;
      case 'Figure':
        need(element, 'words for those who cannot see it', words(get(element.dict, 'Alt')).length > 10);
        need(element, 'box', attribute(element, 'Layout', 'BBox') instanceof PDFArray);
        break;
      case 'Table': {
        const rows = element.children
          .flatMap((one) => (one.role === 'TR' ? [one] : one.children))
          .filter((one) => one.role === 'TR');
        need(element, 'rows of one width', new Set(rows.map(columnsOf)).size === 1);
        need(element, 'rows only', only('Caption', 'THead', 'TBody', 'TR'));
        break;
      }
      case 'TR':
        need(element, 'cells only', only('TH', 'TD'));
        break;
      case 'L':
        need(element, 'entries only', only('LI') && roles.length > 0);
        need(element, 'numbering', attribute(element, 'List', 'ListNumbering') !== undefined);
        break;
      case 'LI':
        need(element, 'label and body', roles.join() === 'Lbl,LBody');
        break;
      case 'Link':
        need(element, 'place to press', element.objects.length > 0 && element.contents.length > 0);
        break;
      case 'Note':
        need(element, 'name', words(get(element.dict, 'ID')) !== '');
        break;
    }
  }
  return faults;
}

/** Elements of a role. */
export const ofRole = ({ elements }: TaggedPdf, role: string): readonly Element[] =>
  elements.filter((element) => element.role === role);
