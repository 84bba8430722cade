/** How a support is put on, taken off or moved along a stretch of straight pipe in the file. */
import type { Path } from '../../input/pending-issue.js';
import type { Edit, Plain } from './edit.js';
import type { Stretch } from './stretches.js';
import { lengthText } from './written-length.js';

/** Lengths closer than this are the same [m]. */
const SAME = 1e-7;

/** A step of the stretch as it stands between edits. */
interface Piece {
  readonly start: number;
  readonly end: number;
  /** As written, where it is straight pipe. */
  readonly straight?: string;
}

/**
 * Puts a step on a stretch.
 *
 * @param stretch - the stretch
 * @param x - distance from its start [m]
 * @param step - what to put there
 * @param content - what the file holds
 * @returns edits in order
 */
export function putOn(stretch: Stretch, x: number, step: Plain, content: unknown): readonly Edit[] {
  return putAt(piecesOf(stretch, content), firstIndex(stretch), stretch.walk, x, step);
}

/**
 * Moves a step along a stretch; the pipe on its two sides gets shorter and longer.
 *
 * @param stretch - the stretch
 * @param place - place of the step among the items of the stretch
 * @param x - where it goes, from the start of the stretch [m]
 * @param content - what the file holds
 * @returns edits in order
 */
export function moveAlong(stretch: Stretch, place: number, x: number, content: unknown): readonly Edit[] {
  const pieces = piecesOf(stretch, content);
  const first = firstIndex(stretch);
  const { walk } = stretch;
  const [before, own, after] = [pieces[place - 1], pieces[place], pieces[place + 1]];
  const at = (index: number): Path => [...walk, first + index];
  if (own === undefined) return [];
  if (before?.straight !== undefined && after?.straight !== undefined) {
    if (x > before.start + SAME && x < after.end - SAME) {
      return [
        setStraight(at(place - 1), x - before.start, before.straight),
        setStraight(at(place + 1), after.end - x, after.straight),
      ];
    }
    const joined = { start: before.start, end: after.end, straight: before.straight };
    const rest = [...pieces.slice(0, place - 1), joined, ...pieces.slice(place + 2)];
    return [
      setStraight(at(place - 1), after.end - before.start, before.straight),
      { does: 'remove', path: at(place) },
      { does: 'remove', path: at(place) },
      ...putAt(rest, first, walk, x, stepOf(content, at(place))),
    ];
  }
  const rest = pieces.filter((_, index) => index !== place);
  return [{ does: 'remove', path: at(place) }, ...putAt(rest, first, walk, x, stepOf(content, at(place)))];
}

function putAt(pieces: readonly Piece[], first: number, walk: Path, x: number, step: Plain): readonly Edit[] {
  const at = (index: number): Path => [...walk, first + index];
  const inside = pieces.findIndex(
    ({ start, end, straight }) => straight !== undefined && x > start + SAME && x < end - SAME,
  );
  const piece = pieces[inside];
  if (piece?.straight === undefined) {
    const behind = pieces.findIndex(({ start }) => start > x - SAME);
    return [{ does: 'insert', path: at(behind === -1 ? pieces.length : behind), value: step }];
  }
  return [
    setStraight(at(inside), x - piece.start, piece.straight),
    { does: 'insert', path: at(inside + 1), value: step },
    {
      does: 'insert',
      path: at(inside + 2),
      value: { straight: lengthText(piece.end - x, piece.straight) },
    },
  ];
}

/**
 * Gives a piece of straight pipe another length.
 *
 * @param path - path of its step
 * @param length - new length [m]
 * @param like - length as written before
 * @returns the edit
 */
export function setStraight(path: Path, length: number, like: string): Edit {
  return { does: 'set', path: [...path, 'straight'], value: lengthText(length, like) };
}

function piecesOf(stretch: Stretch, content: unknown): readonly Piece[] {
  return stretch.items.map(({ index, start, end }) => {
    const straight = valueIn(content, [...stretch.walk, index, 'straight']);
    return { start, end, ...(straight !== undefined && { straight: String(straight) }) };
  });
}

function firstIndex({ items }: Stretch): number {
  return items[0]?.index ?? 0;
}

function stepOf(content: unknown, path: Path): Plain {
  return (valueIn(content, path) ?? null) as Plain;
}

/** Value at a path of plain data, or undefined. */
export function valueIn(content: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null
        ? (value as Readonly<Record<string, unknown>>)[step]
        : undefined,
    content,
  );
}
