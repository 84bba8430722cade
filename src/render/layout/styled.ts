/** What the style step hands to the measure step: blocks with every text in its style. */
import type { FormField } from '../form/field.js';
import type { Column } from '../judge-markup.js';
import type { VerdictWord } from '../vocabulary.js';
import type { TextStyle } from './style-sheet.js';

/** A stretch of inline content in one style. */
export type Span =
  | {
      readonly kind: 'text';
      readonly text: string;
      readonly style: TextStyle;
      /** Height above the baseline [points]. */
      readonly rise: number;
      /** Id of the block it leads to. */
      readonly link?: string;
    }
  | { readonly kind: 'break' }
  | {
      readonly kind: 'mark';
      readonly verdict: VerdictWord;
      /** The word behind the shape. */
      readonly word: string;
      readonly style: TextStyle;
    };

export interface StyledCell {
  readonly spans: readonly Span[];
  readonly columns: number;
  /** Id it leads to. */
  readonly to?: string;
}

export type RowRole = 'plain' | 'total' | 'group' | 'exceeds' | 'remark';

export interface StyledRow {
  readonly id?: string;
  readonly role: RowRole;
  readonly cells: readonly StyledCell[];
}

export interface StyledTable {
  readonly kind: 'table';
  readonly id?: string;
  readonly caption: readonly Span[];
  readonly columns: readonly Column[];
  readonly head: readonly StyledRow[];
  readonly rows: readonly StyledRow[];
}

export interface StyledFigure {
  readonly kind: 'figure';
  readonly drawing: string;
  readonly caption: readonly Span[];
  readonly half: boolean;
  readonly line: number;
}

export type AsideRole = 'expected' | 'limit' | 'source';

/** A box to fill in with the words around it. */
export interface StyledBox {
  readonly field: FormField;
  readonly label: readonly Span[];
  readonly unit: readonly Span[];
  readonly expected: readonly Span[];
  readonly choices: readonly (readonly Span[])[];
}

export interface StyledReading {
  /** Never beside others. */
  readonly alone: boolean;
  readonly label: readonly Span[];
  readonly asides: readonly { readonly role: AsideRole; readonly spans: readonly Span[] }[];
  readonly boxes: readonly StyledBox[];
  /** Boxes for why it was not read. */
  readonly leftOut: readonly StyledBox[];
}

/** Lines to fill in, under three column heads. */
export interface StyledReadings {
  readonly kind: 'readings';
  readonly heads: readonly (readonly Span[])[];
  readonly rows: readonly StyledReading[];
  /** Most rows that stand beside each other; 1 for a table under its heads. */
  readonly abreast: number;
}

export type StepRole = 'formula' | 'numbers' | 'result' | 'where' | 'source';
export type NoteKind = 'caution' | 'information' | 'assumption';

export type StyledBlock =
  | {
      readonly kind: 'section';
      readonly id: string;
      readonly title: string;
      readonly level: 1 | 2;
      readonly newPage: boolean;
      /** Id of the section that leads here from the start of the document. */
      readonly back?: string;
      readonly blocks: readonly StyledBlock[];
    }
  | {
      readonly kind: 'paragraph';
      readonly role: 'body' | 'lead' | 'small' | 'verdict' | 'caution';
      readonly spans: readonly Span[];
    }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly (readonly StyledBlock[])[] }
  | {
      readonly kind: 'note';
      readonly note: NoteKind;
      readonly title: readonly Span[];
      readonly blocks: readonly StyledBlock[];
    }
  | StyledTable
  | StyledFigure
  | {
      readonly kind: 'calculation';
      readonly id: string;
      readonly title: readonly Span[];
      readonly steps: readonly { readonly role: StepRole; readonly spans: readonly Span[] }[];
    }
  | {
      readonly kind: 'facts';
      readonly facts: readonly { readonly label: readonly Span[]; readonly value: readonly Span[] }[];
    }
  | { readonly kind: 'signatures'; readonly labels: readonly (readonly Span[])[] }
  | StyledReadings
  | { readonly kind: 'keep'; readonly blocks: readonly StyledBlock[] }
  | { readonly kind: 'columns'; readonly count: number; readonly blocks: readonly StyledBlock[] }
  | { readonly kind: 'beside'; readonly sides: readonly StyledSide[] }
  | { readonly kind: 'contents'; readonly title: readonly Span[]; readonly entries: readonly ContentsEntry[] }
  | { readonly kind: 'page-break' };

/** Blocks that stand beside others. */
export interface StyledSide {
  readonly share: number;
  readonly blocks: readonly StyledBlock[];
}

export interface ContentsEntry {
  readonly id: string;
  readonly title: readonly Span[];
  readonly level: 1 | 2;
}

/** Who writes the document, above its title. */
export interface StyledLetterhead {
  readonly name: readonly Span[];
  readonly lines: readonly (readonly Span[])[];
  readonly hasLogo: boolean;
}

export interface StyledDocument {
  readonly letterhead?: StyledLetterhead;
  readonly title: readonly Span[];
  readonly blocks: readonly StyledBlock[];
}
