/**
 * Support loads by hand: every part's weight is shared between the two supports beside it, by its distance from
 * each along the pipe. Ignores that the pipe runs on over its supports, so it is a check of order, not of digits.
 */

import type { Subject } from '../../analysis/subject.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { inCondition } from '../../model/conditions/condition-roles.js';
import { STANDARD_GRAVITY, type Vec3 } from '../../model/conventions.js';
import type { PlacedSpan, PlacedSupport, Stroke, WeightRow } from '../../model/layout/layout.js';

/** A part between two supports and the share of it that one support takes. */
export interface TributaryPart {
  readonly part: string;
  /** Weight when filled [N]. */
  readonly weight: number;
  /** Share on the support [-]. */
  readonly share: number;
}

export interface TributaryLoad {
  readonly mark: string;
  /** Spans before and after [m]. */
  readonly before: number;
  readonly after: number;
  readonly parts: readonly TributaryPart[];
  /** Sum of shares [N]. */
  readonly byHand: number;
  /** Load of the solved frame, filled [N]. */
  readonly solved: number;
}

/** A span counts as level from this share of its length on [-]. */
const LEVEL = 0.95;

/**
 * Hand-checked loads of the supports that stand between two level spans without the pump.
 *
 * @param subject - layout and solved conditions
 * @returns one entry per support where the check is meaningful
 */
export function tributaryLoads(subject: Subject): readonly TributaryLoad[] {
  const { layout, response } = subject;
  const filled = inCondition(response.conditions, 'filled');
  if (filled === undefined) return [];
  return layout.supports.flatMap((support) => {
    const before = meaningful(layout.spans, support, 'to');
    const after = meaningful(layout.spans, support, 'from');
    const solved = supportLoadIn(filled, support.mark)?.downward;
    if (before === undefined || after === undefined || solved === undefined) return [];
    const parts = layout.weights
      .filter((row) => row.line === support.line)
      .flatMap((row) => shareOf(row, subject, support, before, after));
    return [
      {
        mark: support.mark,
        before: before.length,
        after: after.length,
        parts,
        byHand: parts.reduce((sum, part) => sum + part.weight * part.share, 0),
        solved,
      },
    ];
  });
}

function meaningful(
  spans: readonly PlacedSpan[],
  support: PlacedSupport,
  end: 'from' | 'to',
): PlacedSpan | undefined {
  return spans.find(
    (span) =>
      span[end] === support.mark &&
      span.line === support.line &&
      !span.pump &&
      span.level >= LEVEL * span.length,
  );
}

function shareOf(
  row: WeightRow,
  subject: Subject,
  support: PlacedSupport,
  before: PlacedSpan,
  after: PlacedSpan,
): readonly TributaryPart[] {
  const station = stationOf(row.at, support.line, subject.layout.strokes);
  if (station === undefined) return [];
  const distance = station - support.station;
  const span = distance < 0 ? before.length : after.length;
  const share = 1 - Math.abs(distance) / span;
  if (share <= 0) return [];
  return [{ part: row.part, weight: (row.dry + row.contents + row.covering) * STANDARD_GRAVITY, share }];
}

/** Two ends this near are one place [m]. */
const SAME_PLACE = 1e-6;

/**
 * Distance along a line of the place nearest to a point. Side legs are no part of the line: what hangs there hangs on
 * their tee.
 *
 * @param at - point [m]
 * @param line - line name
 * @param strokes - pieces of all lines in walking order
 * @returns station [m], or undefined where there is no such line
 */
export function stationOf(at: Vec3, line: string, strokes: readonly Stroke[]): number | undefined {
  let station = 0;
  let nearest = Number.POSITIVE_INFINITY;
  let found: number | undefined;
  for (const stroke of mainStrokes(strokes.filter((piece) => piece.line === line))) {
    const length = strokeLength(stroke);
    const share = projection(at, stroke.from, stroke.to);
    const foot = stroke.from.map((from, axis) => from + share * ((stroke.to[axis] ?? 0) - from));
    const distance = Math.hypot(...foot.map((part, axis) => (at[axis] ?? 0) - part));
    if (distance < nearest) {
      nearest = distance;
      found = station + share * length;
    }
    station += length;
  }
  return found;
}

/** Pieces that follow each other end to end; a side leg starts at its tee's centre and is left out. */
function mainStrokes(strokes: readonly Stroke[]): readonly Stroke[] {
  let end: Vec3 | undefined;
  return strokes.filter((stroke) => {
    const follows =
      end === undefined ||
      Math.hypot(...stroke.from.map((part, axis) => part - (end?.[axis] ?? 0))) < SAME_PLACE;
    if (follows) end = stroke.to;
    return follows;
  });
}

function projection(at: Vec3, from: Vec3, to: Vec3): number {
  const along = [0, 1, 2].map((axis) => (to[axis] ?? 0) - (from[axis] ?? 0));
  const square = along.reduce((sum, part) => sum + part * part, 0);
  if (square === 0) return 0;
  const dot = along.reduce((sum, part, axis) => sum + part * ((at[axis] ?? 0) - (from[axis] ?? 0)), 0);
  return Math.min(1, Math.max(0, dot / square));
}

/**
 * Length of a piece of the line, along the arc for a bend.
 *
 * @param stroke - piece
 * @returns length [m]
 */
export function strokeLength(stroke: Stroke): number {
  const chord = Math.hypot(...[0, 1, 2].map((axis) => (stroke.to[axis] ?? 0) - (stroke.from[axis] ?? 0)));
  if (stroke.kind === 'straight') return chord;
  const radius = Math.hypot(
    ...[0, 1, 2].map((axis) => (stroke.from[axis] ?? 0) - (stroke.centre[axis] ?? 0)),
  );
  return radius === 0 ? chord : 2 * radius * Math.asin(Math.min(1, chord / (2 * radius)));
}
