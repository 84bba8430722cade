/** Paint step: pages with their places become a PDF. */
import { PDFDocument, PDFHexString, PDFName, type PDFRef } from 'pdf-lib';
import { embedFace, type UsedFace, useFace } from '../font/embed-face.js';
import { FACES, type Face, type Typeface } from '../font/typeface.js';
import { locateAnchors } from '../layout/paginate.js';
import type { Page } from '../layout/placed-piece.js';
import type { Frame } from '../layout/style-sheet.js';
import { FONT_NAMES, openCanvas } from './canvas.js';
import { openForm } from './form.js';
import { type About, type Attachment, writeAttachments, writeMetadata } from './metadata.js';
import { type Bookmark, writeOutline } from './outline.js';
import type { BoxArea } from './paint-box.js';
import { type LinkArea, paintPage, type Running } from './paint-page.js';
import { openStructure } from './structure.js';

export interface PaintOptions {
  readonly frame: Frame;
  readonly head: Running;
  readonly foot: Running;
  readonly about: About;
  readonly attachments: readonly Attachment[];
  /** What a form says of itself in fields nobody sees or fills in, by name. */
  readonly stated?: Readonly<Record<string, string>>;
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
  const links: { readonly area: LinkArea; readonly page: number }[] = [];

  const tagLists = pages.map((page, i) => {
    const sheet = sheets[i];
    if (!sheet) return [];
    const canvas = openCanvas(frame.pageHeight, (text, face) => faces[face].encode(text));
    const boxes: BoxArea[] = [];
    const place = { frame, number: i + 1, count: pages.length, head: options.head, foot: options.foot };
    paintPage(canvas, page, place, typeface.measure, {
      link: (area) => links.push({ area, page: i }),
      figure: (tag, x, y, width, height) =>
        structure.setBox(
          tag,
          [x, frame.pageHeight - y - height, x + width, frame.pageHeight - y].map(hundredths) as [
            number,
            number,
            number,
            number,
          ],
        ),
      box: (area) => boxes.push(area),
      pageNumber: (id) => String((places.get(id)?.page ?? 0) + 1),
    });
    const { content, tags } = canvas.finish();
    sheet.node.set(PDFName.Contents, context.register(context.flateStream(content)));
    tags.forEach((tag, number) => {
      addBoxes(number);
      structure.addContent(tag, sheet.ref, number);
      for (const link of links) if (link.page === i && link.area.tag === tag) writeLink(link.area);
    });
    addBoxes(Number.POSITIVE_INFINITY);
    return tags;

    /** Fields take their place in the structure behind the words painted before them. */
    function addBoxes(before: number): void {
      while (sheet && (boxes[0]?.after ?? Number.POSITIVE_INFINITY) <= before) {
        const area = boxes.shift();
        if (!area) return;
        const ref = context.nextRef();
        const key = structure.addObject(area.tag, sheet.ref, ref);
        form.add(area, { ref, key, page: sheet.ref, pageHeight: frame.pageHeight });
        sheet.node.addAnnot(ref);
      }
    }

    function writeLink(area: LinkArea): void {
      const target = places.get(area.to);
      const targetSheet = target && sheets[target.page];
      if (!target || !targetSheet || !sheet) return;
      const ref = context.nextRef();
      const key = structure.addObject(area.tag, sheet.ref, ref);
      const top = frame.pageHeight - frame.top - target.y + 6;
      context.assign(
        ref,
        context.obj({
          Type: 'Annot',
          Subtype: 'Link',
          Rect: [
            area.x,
            frame.pageHeight - area.y - area.height,
            area.x + area.width,
            frame.pageHeight - area.y,
          ].map(hundredths),
          Border: [0, 0, 0],
          F: 4,
          Dest: [targetSheet.ref, 'XYZ', null, hundredths(top), null],
          Contents: PDFHexString.fromText(`page ${target.page + 1}`),
          StructParent: key,
        }),
      );
      sheet.node.addAnnot(ref);
    }
  });

  const first = sheets[0];
  const stated = first ? form.write(pdf.catalog, options.stated ?? {}, first.ref) : [];
  for (const ref of stated) first?.node.addAnnot(ref);
  finishPages();
  writeCatalog(pdf, structure.write(tagLists), bookmarksOf());
  const used = FACES.filter((face) => faces[face].used.size > 0);
  for (const face of used) embedFace(context, face, typeface.faces[face], faces[face].used, fontRefs[face]);
  await writeAttachments(pdf, options.attachments, options.about.date);
  writeMetadata(pdf, options.about);
  return pdf.save({ useObjectStreams: true, addDefaultPage: false, updateFieldAppearances: false });

  function finishPages(): void {
    const fonts = Object.fromEntries(
      FACES.filter((face) => faces[face].used.size > 0).map((face) => [FONT_NAMES[face], fontRefs[face]]),
    );
    const resources = context.register(context.obj({ Font: fonts }));
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
        return [{ ...piece.bookmark, page: sheet.ref, top: frame.pageHeight - frame.top - y + 6 }];
      }),
    );
  }
}

const hundredths = (value: number): number => Math.round(value * 100) / 100;

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
