/** What the measure step hands to the paginate step: pieces that are never split, with everything placed inside them. */
import type { Drawing } from '../../drawing/drawing.js';
import type { FormField } from '../form/field.js';
import type { Logo } from '../logo/logo-shape.js';
import type { VerdictWord } from '../vocabulary.js';
import type { InkName, TextStyle } from './style-sheet.js';

/** An element of the tagged structure. Children find their parent here; the order of painting is the order read. */
export interface Tag {
  readonly role: string;
  readonly parent: Tag | undefined;
  readonly alt?: string;
  /** Table head cells: what they head. */
  readonly scope?: 'Column' | 'Row';
  readonly columns?: number;
  /** Lists: what stands before an entry. */
  readonly numbering?: 'Decimal' | 'Disc';
}

/** Something painted. Places count from the top left of the piece [points], y down. Without a tag it is decoration. */
export type Item =
  | {
      readonly kind: 'text';
      readonly x: number;
      /** Baseline. */
      readonly y: number;
      readonly width: number;
      readonly text: string;
      readonly style: TextStyle;
      readonly link?: string;
      /** What stands for the text when it is read aloud or copied: a raised 6 is not a 6. */
      readonly spoken?: string;
      /** Leads somewhere without a line below to say so. */
      readonly quiet?: boolean;
      readonly tag?: Tag;
    }
  | {
      readonly kind: 'fill';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly ink: InkName;
    }
  | {
      readonly kind: 'mark';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly verdict: VerdictWord;
      readonly style: TextStyle;
    }
  | {
      readonly kind: 'drawing';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly scale: number;
      readonly drawing: Drawing;
      readonly tag: Tag;
    }
  | {
      /** A field to fill in, or one button of a choice. Its frame is printed, so that a pen finds it too. */
      readonly kind: 'box';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly field: FormField;
      /** Which button of a choice, from 0. */
      readonly choice?: number;
      /** Room at the right of the frame that is not to be filled in: the unit stands there. */
      readonly taken: number;
      readonly tag: Tag;
    }
  | {
      readonly kind: 'logo';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly logo: Logo;
      readonly tag: Tag;
    }
  | {
      /** Number of the page a section starts on, right-aligned at x. */
      readonly kind: 'page-number';
      readonly x: number;
      readonly y: number;
      readonly target: string;
      readonly style: TextStyle;
      readonly tag: Tag;
    };

/** How strongly a piece holds to the next: not, if there is room on one page, or nearly always. */
export type Hold = 'free' | 'weak' | 'strong';

/** Pieces to be painted again above a piece that starts a page: the head of its table. */
export interface Repeat {
  readonly table: Tag;
  readonly pieces: readonly Piece[];
}

/** Columns that pieces run down, one after the other: pieces of one flow carry the same object. */
export interface Flow {
  readonly count: number;
  /** From the left edge of one column to that of the next [points]. */
  readonly step: number;
}

export interface Piece {
  /** Gap above, dropped at the top of a page. */
  readonly before: number;
  readonly height: number;
  readonly hold: Hold;
  readonly items: readonly Item[];
  /** Ids that lead here. */
  readonly anchors?: readonly string[];
  readonly bookmark?: { readonly title: string; readonly level: 1 | 2 };
  /** The table it is a head of. */
  readonly headOf?: Tag;
  readonly repeat?: Repeat;
  /** Starts a page. */
  readonly newPage?: boolean;
  /** The columns it stands in; the whole width without. */
  readonly flow?: Flow;
}

/** Moves an item. */
export const moved = (item: Item, dx: number, dy: number): Item => ({
  ...item,
  x: item.x + dx,
  y: item.y + dy,
});

/** Gives every piece but the last a hold at least as strong as the one named. */
export function heldTogether(pieces: readonly Piece[], hold: 'weak' | 'strong'): readonly Piece[] {
  return pieces.map((piece, i) =>
    i === pieces.length - 1 || piece.hold === 'strong' ? piece : { ...piece, hold },
  );
}

/** A hair that adding up heights may be off [points]. */
export const HAIR = 0.01;

/** Height of pieces stacked, gaps between them included. */
export const stackHeight = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, piece, i) => sum + piece.height + (i > 0 ? piece.before : 0), 0);

/** Changes the gap above the first piece. */
export function withGap(pieces: readonly Piece[], before: number): readonly Piece[] {
  return pieces.map((piece, i) => (i === 0 ? { ...piece, before } : piece));
}

/** Pieces of a block that belong with what follows: the last of them, or where strongly all. */
export const heldToNext = (pieces: readonly Piece[], hold: 'weak' | 'strong'): readonly Piece[] =>
  pieces.map((piece, i) =>
    piece.hold === 'free' && (hold === 'strong' || i === pieces.length - 1) ? { ...piece, hold } : piece,
  );
