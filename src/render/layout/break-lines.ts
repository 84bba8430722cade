/** Measure step for text: spans become lines no wider than their column. */
import type { Measure } from '../font/typeface.js';
import { type MarkRun, type Run, type Word, type WordPiece, wordsOf } from './split-words.js';
import type { Span } from './styled.js';

export interface Line {
  readonly runs: readonly (Run | MarkRun)[];
  readonly width: number;
}

const placed = (piece: WordPiece, x: number): WordPiece => ({ ...piece, x });

/** Splits a word wider than the column at signs, so that nothing sticks out. */
function splitWord(word: Word, width: number, measure: Measure): readonly Word[] {
  const parts: Word[] = [];
  let pieces: WordPiece[] = [];
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

/** Widths a text asks of its column [points]. */
export interface TextExtents {
  /** Widest number that must not be broken. */
  readonly firm: number;
  /** Widest stretch that is not broken if it can be helped. */
  readonly narrowest: number;
  /** The whole text on one line. */
  readonly natural: number;
}

/** A number, with the few signs of a unit or a note at most; longer ones are names. */
const NUMBER_WORD = /^[±+\-−(<>≤≥≈~]*\d[\d.,]{0,12}\S{0,3}$/u;

/** Widths a text asks of its column. */
export function textExtents(spans: readonly Span[], measure: Measure): TextExtents {
  let firm = 0;
  let narrowest = 0;
  let natural = 0;
  let line = 0;
  for (const word of wordsOf(spans, measure)) {
    const text = word.pieces.map((piece) => (piece.kind === 'text' ? piece.text : ' ')).join('');
    if (NUMBER_WORD.test(text)) firm = Math.max(firm, word.width);
    narrowest = Math.max(narrowest, word.width);
    line = word.startsLine ? word.width : line + (word.blank?.width ?? 0) + word.width;
    natural = Math.max(natural, line);
  }
  return { firm, narrowest, natural };
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
  let pieces: WordPiece[] = [];
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
function joinRuns(pieces: readonly WordPiece[], blankAtEnd: boolean): readonly WordPiece[] {
  const joined: WordPiece[] = [];
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
