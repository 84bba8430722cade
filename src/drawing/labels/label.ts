/** A label: rows of text in a small plate, with a place it belongs to. */
import type { Ink, Shape, Xy } from '../drawing.js';
import { arrowHead } from '../isometric/part-symbols.js';
import { line } from '../isometric/tube.js';
import { type Box, distance, offset } from '../plane.js';
import { textWidth } from './text-width.js';

/** One row of a label; an arrow stands before the text. */
export interface LabelRow {
  readonly text: string;
  readonly size: number;
  readonly weight: 'regular' | 'bold';
  readonly ink: Ink;
  readonly arrow?: 'down' | 'up' | 'across';
}

export interface Label {
  /** What it belongs to, for the list of labels left out. */
  readonly name: string;
  readonly rows: readonly LabelRow[];
  /** Fewer rows, for when there is no room. */
  readonly short?: readonly LabelRow[];
  /** Place it points at. */
  readonly anchor: Xy;
  /** What stands at the anchor reaches this far [1/72 in]. */
  readonly reach: number;
  /** Higher is placed earlier and left out later. */
  readonly priority: number;
  /** Framed plates belong to supports and nozzles; names stand free. */
  readonly framed: boolean;
}

/** A label with its place. */
export interface PlacedLabel {
  readonly label: Label;
  readonly rows: readonly LabelRow[];
  readonly box: Box;
}

const PAD_X = 2.6;
const PAD_Y = 1.8;
const ROW_GAP = 1.25;
const ARROW_ROOM = 8;

const rowHeight = (row: LabelRow): number => row.size * ROW_GAP;

/**
 * Width and height of the plate of some rows.
 *
 * @param rows - rows of text
 * @returns size on paper [1/72 in]
 */
export function labelSize(rows: readonly LabelRow[]): { readonly width: number; readonly height: number } {
  const widths = rows.map(
    (row) => textWidth(row.text, row.size, row.weight) + (row.arrow === undefined ? 0 : ARROW_ROOM),
  );
  return {
    width: Math.max(...widths) + 2 * PAD_X,
    height: rows.reduce((sum, row) => sum + rowHeight(row), 0) + 2 * PAD_Y - 0.8,
  };
}

/**
 * Shapes of a placed label: leader, plate, arrow and text.
 *
 * @param placed - label with its box
 * @returns leader apart, so that all leaders can be painted under all plates
 */
export function labelShapes(placed: PlacedLabel): {
  readonly leader: readonly Shape[];
  readonly plate: readonly Shape[];
} {
  const { label, rows, box } = placed;
  const corners: readonly Xy[] = [
    [box.left, box.top],
    [box.right, box.top],
    [box.right, box.bottom],
    [box.left, box.bottom],
  ];
  const ink = rows.some((row) => row.ink === 'accent') ? 'accent' : 'black';
  const plate: Shape[] = [line(corners, label.framed ? 'fine' : 'none', 'white', true, ink)];
  let top = box.top + PAD_Y;
  for (const row of rows) {
    const base = top + row.size * 0.86;
    const left = box.left + PAD_X;
    if (row.arrow !== undefined)
      plate.push(...arrowShapes([left + 2.6, base - row.size * 0.33], row.arrow, row.ink));
    plate.push({
      kind: 'text',
      at: [left + (row.arrow === undefined ? 0 : ARROW_ROOM), base],
      text: row.text,
      size: row.size,
      anchor: 'start',
      weight: row.weight,
      ink: row.ink,
    });
    top += rowHeight(row);
  }
  return { leader: leaderShapes(placed), plate };
}

function arrowShapes(middle: Xy, arrow: 'down' | 'up' | 'across', ink: Ink): readonly Shape[] {
  const half = 3.4;
  const way: Xy = arrow === 'down' ? [0, 1] : arrow === 'up' ? [0, -1] : [1, 0];
  const [tail, tip] = [offset(middle, way, -half), offset(middle, way, half)];
  const shaft = line([tail, tip], 'medium', 'none', false, ink);
  return [
    shaft,
    arrowHead(tail, tip, 3.2, ink),
    ...(arrow === 'across' ? [arrowHead(tip, tail, 3.2, ink)] : []),
  ];
}

/** Place on the edge of a box that is nearest to a place outside it. @param box - box @param to - place @returns place on the edge */
export function nearestOnBox(box: Box, to: Xy): Xy {
  return [Math.min(box.right, Math.max(box.left, to[0])), Math.min(box.bottom, Math.max(box.top, to[1]))];
}

/** A line from the plate to the edge of the thing, where they are apart. */
function leaderShapes(placed: PlacedLabel): readonly Shape[] {
  const { anchor, reach } = placed.label;
  const start = nearestOnBox(placed.box, anchor);
  const gap = distance(start, anchor);
  if (gap < reach + 3) return [];
  const end = offset(
    anchor,
    [(start[0] - anchor[0]) / gap, (start[1] - anchor[1]) / gap],
    placed.label.framed ? 0 : Math.min(reach * 0.6, gap * 0.5),
  );
  return [
    line([start, end], 'fine'),
    { kind: 'circle', centre: end, radius: 0.8, stroke: 'none', fill: 'dark', ink: 'black' },
  ];
}
