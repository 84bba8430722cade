/** Links inside the document: places that lead to another, each part of the structure. */
import { type PDFContext, PDFHexString, type PDFPage } from 'pdf-lib';
import type { Tag } from '../layout/piece.js';
import type { Structure } from './structure.js';

/** Words that lead somewhere. Page coordinates from the top left [points]. */
export interface LinkArea {
  readonly tag: Tag;
  readonly to: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where a link leads. */
export interface LinkTarget {
  readonly page: PDFPage;
  /** From 1. */
  readonly number: number;
  /** Height on the page, from its foot [points]. */
  readonly top: number;
  /** Words that say what stands there, if it has a title. */
  readonly title?: string;
}

export interface Links {
  /** Element of words that lead somewhere: the same as that of the words before them when the link goes on. */
  readonly elementOf: (to: string, parent: Tag) => Tag;
  /** Words that lead nowhere end a link. */
  readonly end: () => void;
  readonly add: (area: LinkArea) => void;
  /** Writes the links of a page that is painted. */
  readonly write: (
    page: PDFPage,
    targetOf: (id: string) => LinkTarget | undefined,
    structure: Structure,
  ) => void;
}

/** Height above the words at which a page opens that a link leads to [points]. */
export const ABOVE_TARGET = 6;

/**
 * Starts gathering links.
 *
 * @param context - the PDF's objects
 * @returns the gatherer, for all pages in turn
 */
export function openLinks(context: PDFContext): Links {
  let current: { readonly to: string; readonly parent: Tag; readonly tag: Tag } | undefined;
  let areas: LinkArea[] = [];
  return {
    elementOf: (to, parent) => {
      if (current?.to !== to || current.parent !== parent)
        current = { to, parent, tag: { role: 'Link', parent } };
      return current.tag;
    },
    end: () => {
      current = undefined;
    },
    add: (area) => {
      const last = areas.at(-1);
      // Words of one link on one line are one place to press, a title and the number of its page too.
      if (last?.tag === area.tag && last.y === area.y)
        areas[areas.length - 1] = { ...last, width: area.x + area.width - last.x };
      else areas.push(area);
    },
    write: (page, targetOf, structure) => {
      for (const area of areas) {
        const target = targetOf(area.to);
        if (target) writeLink(context, page, area, target, structure);
      }
      areas = [];
    },
  };
}

function writeLink(
  context: PDFContext,
  page: PDFPage,
  area: LinkArea,
  target: LinkTarget,
  structure: Structure,
): void {
  const ref = context.nextRef();
  const height = page.getHeight();
  const place = `page ${target.number}`;
  context.assign(
    ref,
    context.obj({
      Type: 'Annot',
      Subtype: 'Link',
      Rect: [area.x, height - area.y - area.height, area.x + area.width, height - area.y].map(hundredths),
      Border: [0, 0, 0],
      F: 4,
      Dest: [target.page.ref, 'XYZ', null, hundredths(target.top), null],
      Contents: PDFHexString.fromText(target.title ? `${target.title}, ${place}` : place),
      StructParent: structure.addObject(area.tag, page.ref, ref),
    }),
  );
  page.node.addAnnot(ref);
}

/** A place on a page to a hundredth of a point. */
export const hundredths = (value: number): number => Math.round(value * 100) / 100;
