/** Paints the frame of a box onto the page: paper shows it, and so does a program that shows no forms. */
import type { FormField } from '../form/field.js';
import type { Item, Tag } from '../layout/piece.js';
import { INKS } from '../layout/style-sheet.js';
import type { PathStep } from '../shapes.js';
import type { Canvas } from './canvas.js';

/** A place to fill in. Page coordinates from the top left [points]. */
export interface BoxArea {
  readonly tag: Tag;
  readonly field: FormField;
  /** Which button of a choice, from 0. */
  readonly choice?: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

type BoxItem = Extract<Item, { kind: 'box' }>;

/** Half the side of the printed square or circle of a button [points]. */
export const BUTTON_RADIUS = 6;
/** Weight of the frame [points]. */
const WEIGHT = 0.6;
/** A quarter circle by a curve. */
const ROUND = 0.5523;

const isButton = (field: FormField): boolean =>
  field.kind === 'tick' || (field.kind === 'choice' && !field.isList);

/**
 * The part of a box that is filled in: inside its frame, without the unit.
 *
 * @param item - the box
 * @param x - left edge on the page [points]
 * @param y - top on the page [points]
 * @returns field and area
 */
export function fillableArea(item: BoxItem, x: number, y: number): Omit<BoxArea, 'tag'> {
  const { field, choice, width, height, taken } = item;
  const inset = isButton(field) ? 0 : WEIGHT;
  return {
    field,
    ...(choice === undefined ? {} : { choice }),
    x: x + inset,
    y: y + inset,
    width: width - taken - 2 * inset,
    height: height - 2 * inset,
  };
}

/**
 * Paints the frame of a box: a rectangle to write in, a square to tick, a circle to choose.
 *
 * @param canvas - page
 * @param item - the box
 * @param x - left edge on the page [points]
 * @param y - top on the page [points]
 */
export function paintFrame(canvas: Canvas, item: BoxItem, x: number, y: number): void {
  const { field, width, height } = item;
  const [cx, cy] = [x + width / 2, y + height / 2];
  const rectangle = (left: number, top: number, right: number, foot: number): readonly PathStep[] => [
    ['M', left, top],
    ['L', right, top],
    ['L', right, foot],
    ['L', left, foot],
    ['Z'],
  ];
  const r = BUTTON_RADIUS;
  const half = WEIGHT / 2;
  const steps = !isButton(field)
    ? rectangle(x + half, y + half, x + width - half, y + height - half)
    : field.kind === 'tick'
      ? rectangle(cx - r, cy - r, cx + r, cy + r)
      : circle(cx, cy, r);
  canvas.path(steps, { fill: INKS.white, stroke: INKS.grey, width: WEIGHT });
  // A line to sign on.
  if (field.kind === 'signature') canvas.fill(x + 6, y + height - 9, width - 12, 0.4, INKS.hairline);
}

function circle(cx: number, cy: number, r: number): readonly PathStep[] {
  const k = ROUND * r;
  return [
    ['M', cx + r, cy],
    ['C', cx + r, cy + k, cx + k, cy + r, cx, cy + r],
    ['C', cx - k, cy + r, cx - r, cy + k, cx - r, cy],
    ['C', cx - r, cy - k, cx - k, cy - r, cx, cy - r],
    ['C', cx + k, cy - r, cx + r, cy - k, cx + r, cy],
    ['Z'],
  ];
}
