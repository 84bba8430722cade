/** Measure step for text: spans become lines no wider than their column. */
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

export interface Line {
  readonly runs: readonly (Run | MarkRun)[];
  readonly width: number;
}

type Piece = Run | MarkRun;

/** A stretch that is not broken, unless it is wider than the column. */
interface Word {
  readonly pieces: Piece[];
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

const placed = (piece: Piece, x: number): Piece => ({ ...piece, x });

/** Splits spans into words with their blanks. */
function wordsOf(spans: readonly Span[], measure: Measure): readonly Word[] {
  const words: Word[] = [];
  let blank: Run | undefined;
  let open = false;
  let startsLine = true;
  const add = (piece: Piece): void => {
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
    for (const part of span.text.split(/( )/)) {
      if (part === ' ') {
        blank = run(' ');
        open = false;
      } else if (part !== '') {
        part.split(SOFT_BREAK).forEach((fragment, i) => {
          if (i > 0) open = false;
          add(run(fragment));
        });
      }
    }
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

/** Splits a word wider than the column at signs, so that nothing sticks out. */
function splitWord(word: Word, width: number, measure: Measure): readonly Word[] {
  const parts: Word[] = [];
  let pieces: Piece[] = [];
  let sum = 0;
  const close = (): void => {
    if (pieces.length === 0) return;
    const first = parts.length === 0;
    parts.push({
      pieces,
      width: sum,
      startsLine: first ? word.startsLine : false,
      ...(first && word.blank ? { blank: word.blank } : {}),
    });
    pieces = [];
    sum = 0;
  };
  for (const piece of word.pieces) {
    if (piece.kind === 'mark' || sum + piece.width <= width) {
      if (sum + piece.width > width) close();
      pieces.push(piece);
      sum += piece.width;
      continue;
    }
    let text = '';
    let textWidth = 0;
    const flush = (): void => {
      if (text !== '') pieces.push({ ...piece, text, width: textWidth });
      text = '';
      textWidth = 0;
    };
    for (const sign of piece.text) {
      const advance = measure(sign, piece.style.face, piece.style.size);
      if (sum + advance > width && sum > 0) {
        flush();
        close();
      }
      text += sign;
      textWidth += advance;
      sum += advance;
    }
    flush();
  }
  close();
  return parts;
}

/** Width of the widest stretch that is not broken, and of the whole text on one line [points]. */
export function textExtents(
  spans: readonly Span[],
  measure: Measure,
): { readonly narrowest: number; readonly natural: number } {
  let narrowest = 0;
  let natural = 0;
  let line = 0;
  for (const word of wordsOf(spans, measure)) {
    narrowest = Math.max(narrowest, word.width);
    line = word.startsLine ? word.width : line + (word.blank?.width ?? 0) + word.width;
    natural = Math.max(natural, line);
  }
  return { narrowest, natural };
}

/**
 * Breaks text into lines.
 *
 * @param spans - styled text
 * @param width - width of the column [points]
 * @param measure - width of a text
 * @returns lines, each no wider than the column unless a single sign is
 */
export function breakLines(spans: readonly Span[], width: number, measure: Measure): readonly Line[] {
  const lines: Line[] = [];
  let pieces: Piece[] = [];
  let x = 0;
  const close = (atBlank: boolean): void => {
    lines.push({ runs: joinRuns(pieces, atBlank), width: x });
    pieces = [];
    x = 0;
  };
  const append = (word: Word): void => {
    const blank = x > 0 ? word.blank : undefined;
    if (blank) {
      pieces.push(placed(blank, x));
      x += blank.width;
    }
    for (const piece of word.pieces) {
      pieces.push(placed(piece, x));
      x += piece.width;
    }
  };
  let isFirst = true;
  for (const whole of wordsOf(spans, measure)) {
    // A hair of tolerance: sums of advances differ in their last digits.
    const parts = whole.width > width + 0.001 ? splitWord(whole, width, measure) : [whole];
    for (const word of parts.length > 0 ? parts : [whole]) {
      const needed = x + (word.blank?.width ?? 0) + word.width;
      if (!isFirst && (word.startsLine || (x > 0 && needed > width + 0.001)))
        close(!word.startsLine && word.blank !== undefined);
      append(word);
      isFirst = false;
    }
  }
  if (!isFirst) close(false);
  return lines;
}

/** Joins neighbours of one style into one run, so that a line is few pieces; keeps a blank at a broken line's end. */
function joinRuns(pieces: readonly Piece[], blankAtEnd: boolean): readonly Piece[] {
  const joined: Piece[] = [];
  for (const piece of pieces) {
    const last = joined.at(-1);
    const same =
      piece.kind === 'text' &&
      last?.kind === 'text' &&
      last.style === piece.style &&
      last.rise === piece.rise &&
      last.link === piece.link;
    if (same)
      joined[joined.length - 1] = { ...last, text: last.text + piece.text, width: last.width + piece.width };
    else joined.push(piece);
  }
  const last = joined.at(-1);
  // The blank takes no width of the line: it only keeps two lines apart when text is taken out.
  if (blankAtEnd && last?.kind === 'text') joined[joined.length - 1] = { ...last, text: `${last.text} ` };
  return joined;
}
