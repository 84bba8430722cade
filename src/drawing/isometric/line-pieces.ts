/** Every stroke of the line as a piece of the picture: pipe, bends, reducers, flanges, valves and the like. */
import type { Installation, Part } from '../../input/installation.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Layout, Stroke } from '../../model/layout/layout.js';
import { add, dot, subtract } from '../../model/vector.js';
import type { Shape, Xy } from '../drawing.js';
import { distance, heading, offset } from '../plane.js';
import { along, apart, arcPoints, directionOf } from '../space.js';
import { gasketEnd } from './gasket-end.js';
import { barDirection, groovedPieces, looseEndPieces } from './line-ends.js';
import type { Piece } from './paint-order.js';
import { connectorShapes, flangeBar, type PartPlace, valveShapes, valveSymbol } from './part-symbols.js';
import { type Projection, paperDirection, project } from './projection.js';
import type { DrawnStroke, ShortenedLine } from './shortened-line.js';
import { closedStart, DIFFUSER_BODY } from './stroke-axis.js';
import { breakMark, line, tubeShapes } from './tube.js';

/** Number of pieces a bend is drawn in. */
const ARC_STEPS = 14;

/**
 * Pieces of the line.
 *
 * @param drawn - the line, long runs shortened [m]
 * @param installation - for the kinds of valve and the sense of flow
 * @param layout - for joints without length
 * @param projection - view and scale
 * @returns pieces
 */
export function linePieces(
  drawn: ShortenedLine,
  installation: Installation,
  layout: Layout,
  projection: Projection,
): readonly Piece[] {
  const parts = partsByName(installation);
  const outward = new Map(installation.lines.map((l) => [l.name, l.from === 'discharge']));
  const pieces = drawn.strokes.map((stroke): Piece => {
    const radius = (stroke.stroke.diameter / 2) * projection.scale;
    const points =
      stroke.centre === undefined
        ? branchTrimmed(stroke, drawn)
        : arcPoints({ ...stroke, centre: stroke.centre }, ARC_STEPS);
    const segments = points.slice(1).map((to, i) => ({ from: points[i] as Vec3, to }));
    const part = parts.get(stroke.stroke.name);
    const shapes = strokeShapes(
      stroke,
      points.map((p) => project(projection, p)),
      radius,
      part,
      outward.get(stroke.stroke.line) ?? true,
      projection,
      drawn,
    );
    return {
      segments: stroke.centre === undefined ? segments : coarse(segments),
      radius,
      rank: rankOf(stroke.stroke, layout),
      shapes,
    };
  });
  return [
    ...pieces,
    ...groovedPieces(layout, drawn, projection),
    ...looseEndPieces(drawn, layout, projection),
  ];
}

/** A branch starts at the surface of the run it leaves; the corner of a diffuser is closed. */
function branchTrimmed(branch: DrawnStroke, all: ShortenedLine): readonly [Vec3, Vec3] {
  const closed = closedStart(branch.stroke, strokesOf(all));
  if (closed !== branch.stroke.from)
    return [add(branch.from, subtract(closed, branch.stroke.from)), branch.to];
  const way = directionOf(subtract(branch.to, branch.from));
  const meeting = all.strokes.filter(
    (s) =>
      s !== branch &&
      s.centre === undefined &&
      (apart(s.from, branch.from) < 1e-3 || apart(s.to, branch.from) < 1e-3),
  );
  const across = meeting.filter((s) => Math.abs(dot(directionOf(subtract(s.to, s.from)), way)) < 0.5);
  if (across.length < 2) return [branch.from, branch.to];
  const run = Math.max(...across.map((s) => s.stroke.diameter / 2));
  return [along(branch.from, way, Math.min(run * 0.95, apart(branch.from, branch.to) * 0.9)), branch.to];
}

/** Of parts that touch: pipe under what stands in it, flanges on top; a diffuser's second leg over its first. */
function rankOf(stroke: Stroke, layout: Layout): number {
  if (stroke.kind === 'arc' || stroke.role === 'pipe' || stroke.role === 'reducer') return 1;
  if (stroke.role === 'flange') return 3;
  return closedStart(stroke, layout.strokes) === stroke.from ? 2 : 2.5;
}

/** Fewer segments are enough to order a bend. */
function coarse(segments: readonly { readonly from: Vec3; readonly to: Vec3 }[]): Piece['segments'] {
  const third = Math.ceil(segments.length / 3);
  return [0, 1, 2].flatMap((i) => {
    const group = segments.slice(i * third, (i + 1) * third);
    const [first, last] = [group[0], group.at(-1)];
    return first === undefined || last === undefined ? [] : [{ from: first.from, to: last.to }];
  });
}

function strokeShapes(
  drawn: DrawnStroke,
  points: readonly Xy[],
  radius: number,
  part: Part | undefined,
  outward: boolean,
  projection: Projection,
  all: ShortenedLine,
): readonly Shape[] {
  const { stroke } = drawn;
  const [from, to] = [points[0] as Xy, points.at(-1) as Xy];
  if (stroke.kind === 'arc') return tubeShapes({ points, start: radius, end: radius });
  const bar = barDirection(projection, drawn.axis);
  const cuts = {
    ...(meetsBend(drawn.from, all) ? {} : { startCut: bar }),
    ...(meetsBend(drawn.to, all) ? {} : { endCut: bar }),
  };
  const tube = (start: number, end = start) => tubeShapes({ points: [from, to], start, end, ...cuts });
  const place: PartPlace = { from, to, bar, radius };
  switch (stroke.role) {
    case 'valve':
      return valveShapes(valveSymbol(part?.kind === 'valve' ? part.valve : stroke.name), place, outward);
    case 'flange': {
      const face = gasketEnd(drawn.stroke, strokesOf(all)) === 'to' ? to : from;
      return [
        ...(distance(from, to) > 0.5 ? tube(radius) : []),
        flangeBar(face, paperDirection(projection.view, drawn.axis), place.bar, Math.max(3, radius * 1.75)),
      ];
    }
    case 'connector':
      return connectorShapes(place);
    case 'diffuser':
      return [...tube(radius * DIFFUSER_BODY), ...diffuserEnds(place, drawn, all)];
    case 'reducer': {
      const ends = neighbourRadii(drawn, all, projection.scale);
      return tube(ends[0] ?? radius, ends[1] ?? radius);
    }
    case 'pipe':
    case 'pump': {
      const middle: Xy = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
      return [...tube(radius), ...(drawn.shortened ? breakMark(middle, heading(from, to), radius) : [])];
    }
  }
}

/** Whether a bend meets the line at a place: there a pipe ends square. */
function meetsBend(at: Vec3, all: ShortenedLine): boolean {
  return all.strokes.some(
    (s) => s.centre !== undefined && (apart(s.from, at) < 1e-3 || apart(s.to, at) < 1e-3),
  );
}

/** Ends of a diffuser's wider body; not where its second leg covers the first. */
function diffuserEnds(place: PartPlace, drawn: DrawnStroke, all: ShortenedLine): readonly Shape[] {
  const half = place.radius * 1.3;
  const corner = strokesOf(all).some(
    (s) => s !== drawn.stroke && closedStart(s, [s, drawn.stroke]) !== s.from,
  );
  return (corner ? [place.from] : [place.from, place.to]).map((p) =>
    line([offset(p, place.bar, half), offset(p, place.bar, -half)], 'medium'),
  );
}

const strokesOf = (all: ShortenedLine) => all.strokes.map((s) => s.stroke);

/** Half widths of what meets a stroke's two ends [1/72 in]. */
function neighbourRadii(
  drawn: DrawnStroke,
  all: ShortenedLine,
  scale: number,
): readonly (number | undefined)[] {
  return [drawn.from, drawn.to].map((end) => {
    const meeting = all.strokes.find(
      (s) => s !== drawn && (apart(s.from, end) < 1e-3 || apart(s.to, end) < 1e-3),
    );
    return meeting === undefined ? undefined : (meeting.stroke.diameter / 2) * scale;
  });
}

/** All parts of an installation by name, branches too. */
function partsByName(installation: Installation): ReadonlyMap<string, Part> {
  const found = new Map<string, Part>();
  const walk = (parts: readonly Part[]): void => {
    for (const part of parts) {
      found.set(part.name, part);
      if (part.kind === 'tee') walk(part.side.walk);
    }
  };
  for (const run of installation.lines) walk(run.walk);
  return found;
}
