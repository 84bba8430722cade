/** Dimensions on paper: a fine line with a slanted tick at both ends, witness lines, and its words as a label. */
import type { Ink, Shape, Xy } from '../drawing.js';
import { NOTE_SIZE } from '../isometric/load-labels.js';
import { line } from '../isometric/tube.js';
import type { Label } from '../labels/label.js';
import { type Capsule, distance, heading, offset } from '../plane.js';

/** A measured distance. */
export interface Dimension {
  readonly name: string;
  /** Ends of the line [1/72 in]. */
  readonly from: Xy;
  readonly to: Xy;
  /** Places that are measured, where the line stands off them [1/72 in]. */
  readonly witness?: readonly [Xy, Xy];
  readonly words: string;
  readonly ink: Ink;
}

/** Half of a tick [1/72 in]. */
const TICK = 3;

/**
 * Line, ticks and witness lines of a dimension.
 *
 * @param dimension - ends on paper
 * @returns shapes; nothing where both ends are one
 */
export function dimensionShapes({ from, to, witness, ink }: Dimension): readonly Shape[] {
  if (distance(from, to) < 0.5) return [];
  const [x, y] = heading(from, to);
  const slant: Xy = [(x - y) * Math.SQRT1_2, (x + y) * Math.SQRT1_2];
  const tick = (at: Xy): Shape =>
    line([offset(at, slant, -TICK), offset(at, slant, TICK)], 'medium', 'none', false, ink);
  const drawn = (at: Xy, measured: Xy | undefined): readonly Shape[] =>
    measured === undefined || distance(at, measured) < 2
      ? []
      : [line([measured, offset(at, heading(measured, at), TICK)], 'dotted', 'none', false, 'grey')];
  return [
    ...drawn(from, witness?.[0]),
    ...drawn(to, witness?.[1]),
    line([from, to], 'fine', 'none', false, ink),
    tick(from),
    tick(to),
  ];
}

/**
 * The words of a dimension, at its middle.
 *
 * @param dimension - ends on paper and words
 * @returns label
 */
export function dimensionLabel({ name, from, to, words, ink }: Dimension): Label {
  return {
    name,
    rows: [{ text: words, size: NOTE_SIZE, weight: ink === 'accent' ? 'bold' : 'regular', ink }],
    anchor: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2],
    reach: 3,
    priority: 8,
    framed: false,
  };
}

/** The line of a dimension, for labels to keep clear of. @param dimension - ends on paper @returns stroke */
export function dimensionStroke({ from, to }: Dimension): Capsule {
  return { from, to, radius: 2 };
}
