/**
 * What is nearer is painted later. Two pieces that cross on paper are ordered by which is nearer where they cross;
 * pieces that touch in space by rank; the rest from far to near.
 */
import type { Vec3 } from '../../model/conventions.js';
import { between } from '../../model/vector.js';
import type { Shape, Xy } from '../drawing.js';
import { type Box, boxesOverlap, type Capsule, grown, nearestApproach, unionBox } from '../plane.js';
import { nearness, type Projection, project } from './projection.js';

/** A piece of the picture with its place in space. */
export interface Piece {
  readonly segments: readonly { readonly from: Vec3; readonly to: Vec3 }[];
  /** Half width on paper [1/72 in]. */
  readonly radius: number;
  /** Of pieces that touch, the higher is painted later. */
  readonly rank: number;
  readonly shapes: readonly Shape[];
  /** True for casing and motor, which nothing should hide. */
  readonly body?: boolean;
}

/** Pieces whose depth differs by less than this where they cross are taken to touch [m]. */
const TOUCHING = 0.02;
/** Clear room round a piece that still counts as crossing [1/72 in]. */
const CLEAR = 2;

/** A piece with what is asked of it again and again. */
export interface LaidPiece {
  readonly piece: Piece;
  readonly capsules: readonly Capsule[];
  readonly box: Box;
}

/**
 * Pieces with their strokes on paper.
 *
 * @param pieces - pieces of the picture
 * @param projection - view and scale
 * @returns the same pieces, laid on paper
 */
export function laidPieces(pieces: readonly Piece[], projection: Projection): readonly LaidPiece[] {
  return pieces.map((piece) => {
    const capsules = piece.segments.map(({ from, to }) => ({
      from: project(projection, from),
      to: project(projection, to),
      radius: piece.radius,
    }));
    const box = unionBox(capsules.flatMap(({ from, to }) => [boxOf(from), boxOf(to)]));
    return { piece, capsules, box: grown(box, piece.radius + CLEAR / 2) };
  });
}

const boxOf = ([x, y]: Xy): Box => ({ left: x, top: y, right: x, bottom: y });

/**
 * Which of two pieces is nearer to the reader where they cross on paper.
 *
 * @param a - first piece
 * @param b - second piece
 * @param projection - view and scale
 * @returns depth, positive where the second is nearer [m]; undefined where they do not cross
 */
export function depthBetween(a: LaidPiece, b: LaidPiece, projection: Projection): number | undefined {
  if (!boxesOverlap(a.box, b.box)) return undefined;
  let found: number | undefined;
  a.capsules.forEach((one, i) => {
    b.capsules.forEach((two, j) => {
      if (!mayTouch(one, two)) return;
      const near = nearestApproach(one, two);
      if (near.gap > one.radius + two.radius + CLEAR) return;
      const [s, t] = [a.piece.segments[i], b.piece.segments[j]];
      if (s === undefined || t === undefined) return;
      const first = nearness(projection.view, between(s.from, s.to, near.first));
      const depth = nearness(projection.view, between(t.from, t.to, near.second)) - first;
      if (found === undefined || Math.abs(depth) > Math.abs(found)) found = depth;
    });
  });
  return found;
}

/** Quick look at the boxes of two strokes. */
function mayTouch(a: Capsule, b: Capsule): boolean {
  const room = a.radius + b.radius + CLEAR;
  const clear = (axis: 0 | 1) =>
    Math.min(a.from[axis], a.to[axis]) > Math.max(b.from[axis], b.to[axis]) + room ||
    Math.min(b.from[axis], b.to[axis]) > Math.max(a.from[axis], a.to[axis]) + room;
  return !clear(0) && !clear(1);
}

/**
 * Pieces in the order of painting.
 *
 * @param laid - pieces of the picture
 * @param projection - view and scale
 * @returns the same pieces, far ones first
 */
export function paintOrder(laid: readonly LaidPiece[], projection: Projection): readonly LaidPiece[] {
  const middles = laid.map(({ piece }) => {
    const depths = piece.segments.flatMap(({ from, to }) => [
      nearness(projection.view, from),
      nearness(projection.view, to),
    ]);
    return depths.reduce((sum, d) => sum + d, 0) / Math.max(1, depths.length);
  });
  const before: Set<number>[] = laid.map(() => new Set());
  laid.forEach((a, i) => {
    for (let j = i + 1; j < laid.length; j++) {
      const b = laid[j] as LaidPiece;
      const depth = depthBetween(a, b, projection);
      if (depth === undefined) continue;
      const later = Math.abs(depth) > TOUCHING ? depth : b.piece.rank - a.piece.rank;
      if (later > 0) before[j]?.add(i);
      if (later < 0) before[i]?.add(j);
    }
  });
  return release(middles, before).map((i) => laid[i] as LaidPiece);
}

/** Farthest first among those with nothing left to wait for; a ring of waiting is broken at its farthest. */
function release(middles: readonly number[], before: readonly Set<number>[]): readonly number[] {
  const left = middles
    .map((_, i) => i)
    .sort((a, b) => (middles[a] as number) - (middles[b] as number) || a - b);
  const done: number[] = [];
  while (left.length > 0) {
    const free = left.findIndex((i) => before[i]?.size === 0);
    const [next] = left.splice(Math.max(0, free), 1) as [number];
    for (const waiting of before) waiting.delete(next);
    done.push(next);
  }
  return done;
}
