/** Pipe on paper: two outlines and a white body, or one heavy line where it is too thin for two. */
import type { Shape, Xy } from '../drawing.js';
import { distance, heading, offset, segmentDistance } from '../plane.js';

/** Pipe thinner than this on paper is a single heavy line [1/72 in]. */
export const SINGLE_LINE_BELOW = 2.4;
/** White kept clear beside a pipe that passes in front of something [1/72 in]. */
const HALO = 1.3;

/** Closed or open line of the common kind. @param points - places [-] @param stroke - line @param fill - filling @param closed - whether it closes @param ink - ink @returns shape */
export function line(
  points: readonly Xy[],
  stroke: Extract<Shape, { kind: 'path' }>['stroke'],
  fill: Extract<Shape, { kind: 'path' }>['fill'] = 'none',
  closed = fill !== 'none',
  ink: Shape['ink'] = 'black',
): Shape {
  return { kind: 'path', points, closed, stroke, fill, ink };
}

/** A tube along a line on paper. */
export interface TubePath {
  readonly points: readonly Xy[];
  /** Half widths at both ends [1/72 in]. */
  readonly start: number;
  readonly end: number;
  readonly fill?: 'white' | 'light';
  /** Direction along which a straight tube is cut at an end; square where not said. */
  readonly startCut?: Xy;
  readonly endCut?: Xy;
}

/**
 * Outline and body of a tube. The outline of a tube seen from far away runs at its half width beside the centre
 * line; where the line turns sharply towards the reader the part inside the tube itself is left out.
 *
 * @param tube - centre line and half widths
 * @returns shapes, body first
 */
export function tubeShapes(tube: TubePath): readonly Shape[] {
  const { points, start, end, fill = 'white' } = tube;
  const first = points[0] as Xy;
  const last = points.at(-1) as Xy;
  if (Math.max(start, end) * 2 < SINGLE_LINE_BELOW)
    return [...halo(first, last, points.length, 1), line(points, 'heavy')];
  if (distance(first, last) < 0.3 && points.length === 2)
    return [
      { kind: 'circle', centre: first, radius: Math.max(start, end), stroke: 'medium', fill, ink: 'black' },
    ];
  const radius = (i: number) => start + ((end - start) * i) / (points.length - 1);
  const edge = (i: number, sign: number): Xy => {
    const cut = points.length > 2 ? undefined : i === 0 ? tube.startCut : tube.endCut;
    return offset(points[i] as Xy, cutDirection(normalAt(points, i), cut), sign * radius(i));
  };
  const left = points.map((_, i) => edge(i, 1));
  const right = points.map((_, i) => edge(i, -1));
  const body = points
    .slice(1)
    .map((_, i) =>
      line([left[i] as Xy, left[i + 1] as Xy, right[i + 1] as Xy, right[i] as Xy], 'none', fill),
    );
  const knees: Shape[] = points.slice(1, -1).map((centre, i) => ({
    kind: 'circle',
    centre,
    radius: radius(i + 1),
    stroke: 'none',
    fill,
    ink: 'black',
  }));
  const outlines = [left, right].flatMap((side) => outsideOf(side, points, Math.min(start, end)));
  return [
    ...halo(first, last, points.length, Math.max(start, end)),
    ...body,
    ...knees,
    ...outlines.map((side) => line(side, 'medium')),
  ];
}

/** From the axis to the outline along a cut, for unit half width. */
function cutDirection(normal: Xy, cut: Xy | undefined): Xy {
  if (cut === undefined) return normal;
  const share = cut[0] * normal[0] + cut[1] * normal[1];
  return Math.abs(share) < 0.7 ? normal : [cut[0] / share, cut[1] / share];
}

/** White strip that cuts what is behind a straight pipe, short of its ends so that neighbours stay whole. */
function halo(from: Xy, to: Xy, count: number, radius: number): readonly Shape[] {
  const keep = Math.max(3, 1.6 * radius);
  if (count > 2 || distance(from, to) < 3 * keep) return [];
  const way = heading(from, to);
  const side: Xy = [-way[1], way[0]];
  const [a, b] = [offset(from, way, keep), offset(to, way, -keep)];
  const half = radius + HALO;
  return [
    line(
      [offset(a, side, half), offset(b, side, half), offset(b, side, -half), offset(a, side, -half)],
      'none',
      'white',
    ),
  ];
}

/** Unit normal of a polyline at its i-th point; at the ends of a curve that of the parabola through three points. */
function normalAt(points: readonly Xy[], i: number): Xy {
  const last = points.length - 1;
  const curved = (a: number, b: number, c: number): Xy => {
    const [p, q, r] = [points[a], points[b], points[c]] as [Xy, Xy, Xy];
    return [4 * q[0] - 3 * p[0] - r[0], 4 * q[1] - 3 * p[1] - r[1]];
  };
  const end =
    last > 1 && (i === 0 || i === last)
      ? i === 0
        ? curved(0, 1, 2)
        : curved(last, last - 1, last - 2)
      : undefined;
  const way =
    end === undefined
      ? heading(points[Math.max(0, i - 1)] as Xy, points[Math.min(last, i + 1)] as Xy)
      : heading([0, 0], end);
  const sign = i === last && last > 1 ? -1 : 1;
  return [-way[1] * sign, way[0] * sign];
}

/** Runs of an outline that do not lie inside the tube. */
function outsideOf(side: readonly Xy[], centre: readonly Xy[], radius: number): readonly (readonly Xy[])[] {
  if (centre.length === 2) return [side];
  const runs: Xy[][] = [[]];
  for (const p of side) {
    const inside = centre
      .slice(1)
      .some((c, i) => segmentDistance(p, centre[i] as Xy, c) < radius * 0.97 - 0.05);
    if (inside) runs.push([]);
    else runs.at(-1)?.push(p);
  }
  return runs.filter((run) => run.length > 1);
}

/**
 * Break mark across a pipe: a gap between two slanted strokes.
 *
 * @param at - middle of the gap [-]
 * @param way - direction of the pipe on paper [-]
 * @param radius - half width of the pipe [1/72 in]
 * @returns shapes
 */
export function breakMark(at: Xy, way: Xy, radius: number): readonly Shape[] {
  const side: Xy = [-way[1], way[0]];
  const reach = radius + 2.6;
  const stroke = (shift: number): readonly Xy[] => {
    const middle = offset(at, way, shift);
    return [offset(offset(middle, side, reach), way, 1.6), offset(offset(middle, side, -reach), way, -1.6)];
  };
  const [one, two] = [stroke(-1.7), stroke(1.7)];
  return [line([...one, two[1] as Xy, two[0] as Xy], 'none', 'white'), line(one, 'fine'), line(two, 'fine')];
}

/**
 * Wavy end of a pipe that is not drawn further.
 *
 * @param at - end of the pipe [-]
 * @param way - direction of the pipe there, outwards [-]
 * @param radius - half width of the pipe [1/72 in]
 * @returns shapes
 */
export function tornEnd(at: Xy, way: Xy, radius: number): readonly Shape[] {
  const side: Xy = [-way[1], way[0]];
  const reach = Math.max(radius, 1.2) + 1.6;
  const wave = Array.from({ length: 13 }, (_, i): Xy => {
    const t = i / 12;
    return offset(
      offset(at, side, reach * (2 * t - 1)),
      way,
      Math.sin(2 * Math.PI * t) * Math.min(2.2, reach * 0.5),
    );
  });
  return [line(wave, 'medium')];
}
