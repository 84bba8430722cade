/** Paint step: pages with their places become a PDF. */
import { PDFDocument, PDFName, type PDFRef, PDFStreamWriter } from 'pdf-lib';
import { embedFace, type UsedFace, useFace } from '../font/embed-face.js';
import { FACES, type Face, type Typeface } from '../font/typeface.js';
import { locateAnchors } from '../layout/paginate.js';
import type { Page } from '../layout/placed-piece.js';
import type { Frame } from '../layout/style-sheet.js';
import type { Logo } from '../logo/logo-shape.js';
import { FONT_NAMES, openCanvas } from './canvas.js';
import { writeOutputIntent } from './colour-profile.js';
import { openForm } from './form.js';
import { ABOVE_TARGET, hundredths, type LinkTarget, openLinks } from './links.js';
import { type About, type Attachment, writeAttachments, writeMetadata } from './metadata.js';
import { type Bookmark, writeOutline } from './outline.js';
import type { BoxArea } from './paint-box.js';
import { LOGO_IMAGE } from './paint-logo.js';
import { paintPage, type Running } from './paint-page.js';
import { openStructure } from './structure.js';

const OBJECTS_PER_STREAM = 1000;

export interface PaintOptions {
  readonly frame: Frame;
  readonly head: Running;
  readonly foot: Running;
  readonly about: About;
  readonly attachments: readonly Attachment[];
  /** What a form says of itself in fields nobody sees or fills in, by name. */
  readonly stated?: Readonly<Record<string, string>>;
  readonly logo?: Logo;
}

/**
 * Paints pages.
 *
 * @param pages - pieces at their places
 * @param typeface - faces and their measure
 * @param options - frame, running words, what the document says of itself, attachments
 * @returns the file; the same input gives the same bytes
 */
export async function paintDocument(
  pages: readonly Page[],
  typeface: Typeface,
  options: PaintOptions,
): Promise<Uint8Array> {
  const { frame } = options;
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const { context } = pdf;
  const faces: Record<Face, UsedFace> = {
    regular: useFace(typeface.faces.regular),
    bold: useFace(typeface.faces.bold),
    italic: useFace(typeface.faces.italic),
  };
  const fontRefs: Record<Face, PDFRef> = {
    regular: context.nextRef(),
    bold: context.nextRef(),
    italic: context.nextRef(),
  };
  const structure = openStructure(context, pages.length);
  const places = locateAnchors(pages);
  const sheets = pages.map(() => pdf.addPage([frame.pageWidth, frame.pageHeight]));
  const form = openForm(context);
  const links = openLinks(context);
  const titles = titlesOf(pages);

  const tagLists = pages.map((page, i) => {
    const sheet = sheets[i];
    if (!sheet) return [];
    const canvas = openCanvas(
      frame.pageHeight,
      (text, face) => faces[face].encode(text),
      (tag, number) => structure.addContent(tag, sheet.ref, number),
    );
    const place = { frame, number: i + 1, count: pages.length, head: options.head, foot: options.foot };
    paintPage(canvas, page, place, typeface.measure, {
      element: structure.addElement,
      links,
      figure: (tag, x, y, width, height) =>
        structure.setBox(tag, boxFrom(x, frame.pageHeight - y - height, width, height)),
      box: addBox,
      pageNumber: (id) => String((places.get(id)?.page ?? 0) + 1),
    });
    const { content, tags } = canvas.finish();
    sheet.node.set(PDFName.Contents, context.register(context.flateStream(content)));
    links.write(sheet, targetOf, structure);
    return tags;

    /** Fields take their place in the structure behind the words painted before them. */
    function addBox(area: BoxArea): void {
      if (!sheet) return;
      const ref = context.nextRef();
      const key = structure.addObject(area.tag, sheet.ref, ref);
      form.add(area, { ref, key, page: sheet.ref, pageHeight: frame.pageHeight });
      sheet.node.addAnnot(ref);
    }
  });

  const first = sheets[0];
  const stated = first ? form.write(pdf.catalog, options.stated ?? {}, first.ref) : [];
  for (const ref of stated) first?.node.addAnnot(ref);
  const logoRef = await embedLogo(pdf, options.logo);
  finishPages();
  writeCatalog(pdf, structure.write(tagLists), bookmarksOf());
  const used = FACES.filter((face) => faces[face].used.size > 0);
  for (const face of used) embedFace(context, face, typeface.faces[face], faces[face].used, fontRefs[face]);
  await writeAttachments(pdf, options.attachments, options.about.date);
  writeMetadata(pdf, options.about);
  writeOutputIntent(pdf);
  await pdf.flush();
  // The elements of the structure are many and alike: the more of them in one stream, the smaller they are.
  return PDFStreamWriter.forContext(
    context,
    Number.POSITIVE_INFINITY,
    true,
    OBJECTS_PER_STREAM,
  ).serializeToBuffer();

  function targetOf(id: string): LinkTarget | undefined {
    const place = places.get(id);
    const page = place && sheets[place.page];
    if (!place || !page) return undefined;
    const title = titles.get(id);
    const top = frame.pageHeight - frame.top - place.y + ABOVE_TARGET;
    return { page, number: place.page + 1, top, ...(title === undefined ? {} : { title }) };
  }

  function finishPages(): void {
    const fonts = Object.fromEntries(
      FACES.filter((face) => faces[face].used.size > 0).map((face) => [FONT_NAMES[face], fontRefs[face]]),
    );
    const images = logoRef ? { XObject: { [LOGO_IMAGE]: logoRef } } : {};
    const resources = context.register(context.obj({ Font: fonts, ...images }));
    sheets.forEach((sheet, i) => {
      sheet.node.set(PDFName.of('Resources'), resources);
      sheet.node.set(PDFName.of('StructParents'), context.obj(i));
      sheet.node.set(PDFName.of('Tabs'), PDFName.of('S'));
    });
  }

  function bookmarksOf(): readonly Bookmark[] {
    return pages.flatMap((page, i) =>
      page.flatMap(({ piece, y }) => {
        const sheet = sheets[i];
        if (!piece.bookmark || !sheet) return [];
        return [{ ...piece.bookmark, page: sheet.ref, top: frame.pageHeight - frame.top - y + ABOVE_TARGET }];
      }),
    );
  }
}

const boxFrom = (x: number, y: number, width: number, height: number) =>
  [hundredths(x), hundredths(y), hundredths(x + width), hundredths(y + height)] as const;

/** Titles of what links lead to, where it has one. */
const titlesOf = (pages: readonly Page[]): ReadonlyMap<string, string> =>
  new Map(
    pages.flatMap((page) =>
      page.flatMap(({ piece }) =>
        (piece.anchors ?? []).flatMap((id) => (piece.bookmark ? [[id, piece.bookmark.title] as const] : [])),
      ),
    ),
  );

/** The image of a logo of pixels; a logo of vectors needs none. The file was looked through before. */
async function embedLogo(pdf: PDFDocument, logo: Logo | undefined): Promise<PDFRef | undefined> {
  if (!logo || logo.kind === 'vector') return undefined;
  const image = await (logo.kind === 'png' ? pdf.embedPng(logo.bytes) : pdf.embedJpg(logo.bytes));
  return image.ref;
}

function writeCatalog(pdf: PDFDocument, tree: PDFRef, bookmarks: readonly Bookmark[]): void {
  const { context, catalog } = pdf;
  catalog.set(PDFName.of('StructTreeRoot'), tree);
  catalog.set(PDFName.of('MarkInfo'), context.obj({ Marked: true }));
  catalog.set(PDFName.of('PageLabels'), context.obj({ Nums: [0, { S: 'D' }] }));
  const outline = writeOutline(context, bookmarks);
  if (!outline) return;
  catalog.set(PDFName.of('Outlines'), outline);
  catalog.set(PDFName.of('PageMode'), PDFName.of('UseOutlines'));
}
