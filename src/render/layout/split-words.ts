/** Splits spans into words: stretches that are not broken unless they are wider than their column. */
import type { Measure } from '../font/typeface.js';
import type { VerdictWord } from '../vocabulary.js';
import type { TextStyle } from './style-sheet.js';
import type { Span } from './styled.js';

/** Text of one style on one line, from the left edge of the line [points]. */
export interface Run {
  readonly kind: 'text';
  readonly x: number;
  readonly width: number;
  readonly text: string;
  readonly style: TextStyle;
  readonly rise: number;
  readonly link?: string;
}

/** The shape of a verdict, before its word. */
export interface MarkRun {
  readonly kind: 'mark';
  readonly x: number;
  readonly width: number;
  readonly verdict: VerdictWord;
  readonly style: TextStyle;
}

export type WordPiece = Run | MarkRun;

/** A stretch that is not broken, unless it is wider than the column. */
export interface Word {
  readonly pieces: WordPiece[];
  width: number;
  /** Blank before it when it does not start a line. */
  readonly blank?: Run;
  readonly startsLine: boolean;
}

/** Width of the shape of a verdict, with the gap behind it, against the size of the text. */
const MARK_WIDTH = 0.82;
const MARK_GAP = 0.3;

/** A place inside a word where it may be broken: after a hyphen or a stroke between longer parts. */
const SOFT_BREAK = /(?<=[\p{L}\p{N}]{2}[-–—/_])(?=[\p{L}\p{N}]{2})|(?<=[,;:@])(?=\p{L}{3})/u;

/** Words without any of these signs need no closer look. */
const MAY_BREAK = /.[-–—/_,;:@]./u;

/** Words of spans already split: a table asks for the same cell several times. */
const known = new WeakMap<Measure, WeakMap<readonly Span[], readonly Word[]>>();

/** Words of spans, with the blanks between them. */
export function wordsOf(spans: readonly Span[], measure: Measure): readonly Word[] {
  let cells = known.get(measure);
  if (!cells) {
    cells = new WeakMap();
    known.set(measure, cells);
  }
  let words = cells.get(spans);
  if (!words) {
    words = splitSpans(spans, measure);
    cells.set(spans, words);
  }
  return words;
}

/** Splits spans into words with their blanks. */
function splitSpans(spans: readonly Span[], measure: Measure): readonly Word[] {
  const words: Word[] = [];
  let blank: Run | undefined;
  let open = false;
  let startsLine = true;
  const add = (piece: WordPiece): void => {
    const last = words.at(-1);
    if (open && last) {
      last.pieces.push(piece);
      last.width += piece.width;
    } else {
      words.push({
        pieces: [piece],
        width: piece.width,
        startsLine,
        ...(blank && !startsLine ? { blank } : {}),
      });
    }
    blank = undefined;
    open = true;
    startsLine = false;
  };
  const addText = (span: Extract<Span, { kind: 'text' }>): void => {
    const run = (text: string): Run => ({
      ...span,
      x: 0,
      text,
      width: measure(text, span.style.face, span.style.size),
    });
    span.text.split(' ').forEach((part, i) => {
      if (i > 0) {
        blank = run(' ');
        open = false;
      }
      if (part === '') return;
      for (const fragment of MAY_BREAK.test(part) ? part.split(SOFT_BREAK) : [part]) {
        add(run(fragment));
        open = false;
      }
      open = true;
    });
  };
  for (const span of spans) {
    if (span.kind === 'text') addText(span);
    else if (span.kind === 'break') {
      // A break on an empty line still makes a line.
      if (startsLine) words.push({ pieces: [], width: 0, startsLine: true });
      open = false;
      startsLine = true;
      blank = undefined;
    } else {
      const { style, verdict } = span;
      add({ kind: 'mark', x: 0, width: (MARK_WIDTH + MARK_GAP) * style.size, verdict, style });
      addText({ kind: 'text', text: span.word, style, rise: 0 });
    }
  }
  return words;
}
