/** Every stroke of the line as a piece of the picture: pipe, bends, reducers, flanges, valves and the like. */
import type { Installation, Part } from '../input/installation.js';
import type { Vec3 } from '../model/conventions.js';
import type { Layout } from '../model/layout.js';
import { between, dot, subtract } from '../model/vector.js';
import type { Shape, Xy } from './drawing.js';
import { gasketEnd } from './gasket-end.js';
import type { Piece } from './paint-order.js';
import {
  connectorShapes,
  flangeBar,
  groovedShapes,
  type PartPlace,
  valveShapes,
  valveSymbol,
} from './part-symbols.js';
import { distance, heading, offset } from './plane.js';
import { type Projection, paperDirection, project } from './projection.js';
import type { DrawnStroke, ShortenedLine } from './shortened-line.js';
import { along, apart, arcPoints, directionOf } from './space.js';
import { breakMark, line, tornEnd, tubeShapes } from './tube.js';

/** Number of pieces a bend is drawn in. */
const ARC_STEPS = 14;

/** Direction on paper of strokes across a pipe: upright across level pipe, level across a riser. */
export function barDirection(projection: Projection, way: Vec3): Xy {
  return Math.abs(way[2]) > 0.7 ? paperDirection(projection.view, [1, 0, 0]) : [0, -1];
}

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
    const role = stroke.stroke.kind === 'arc' ? 'pipe' : stroke.stroke.role;
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
      rank: role === 'pipe' || role === 'reducer' ? 1 : role === 'flange' ? 3 : 2,
      shapes,
    };
  });
  return [
    ...pieces,
    ...groovedPieces(layout, drawn, projection),
    ...looseEndPieces(drawn, layout, projection),
  ];
}

/** A branch starts at the surface of the run it leaves. */
function branchTrimmed(branch: DrawnStroke, all: ShortenedLine): readonly [Vec3, Vec3] {
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
  const bar = barDirection(projection, directionOf(subtract(drawn.to, drawn.from)));
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
        flangeBar(face, heading(from, to), place.bar, Math.max(3, radius * 1.75)),
      ];
    }
    case 'connector':
      return connectorShapes(place);
    case 'diffuser':
      return [...tube(radius * 1.18), ...diffuserEnds(place)];
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

/** Both ends of a diffuser's wider body. */
function diffuserEnds(place: PartPlace): readonly Shape[] {
  const half = place.radius * 1.3;
  return [place.from, place.to].map((p) =>
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

/** Joints without length: a band across the pipe. */
function groovedPieces(layout: Layout, drawn: ShortenedLine, projection: Projection): readonly Piece[] {
  return layout.frame.joints.flatMap((joint) => {
    const [a, b] = [layout.frame.points[joint.from], layout.frame.points[joint.to]];
    if (a === undefined || b === undefined || apart(a, b) > 2e-3) return [];
    const at = drawn.place(a);
    const touching = drawn.strokes.find((s) => apart(s.from, at) < 2e-3 || apart(s.to, at) < 2e-3);
    const radius = ((touching?.stroke.diameter ?? 0.1) / 2) * projection.scale;
    const p = project(projection, at);
    const shapes = groovedShapes(
      { from: p, to: p, bar: barDirection(projection, joint.axis), radius },
      paperDirection(projection.view, joint.axis),
    );
    return [{ segments: [{ from: at, to: at }], radius, rank: 2, shapes }];
  });
}

/** Ends of pipe that nothing holds: torn when the pipe goes on, closed by a line when it is blank. */
function looseEndPieces(drawn: ShortenedLine, layout: Layout, projection: Projection): readonly Piece[] {
  const nozzles = [layout.nozzles.suction.at, layout.nozzles.discharge.at];
  return drawn.strokes.flatMap((s) =>
    [
      { at: s.to, inside: s.from },
      { at: s.from, inside: s.to },
    ].flatMap(({ at, inside }) => {
      const taken = drawn.strokes.some(
        (o) => o !== s && (apart(o.from, at) < 1e-3 || apart(o.to, at) < 1e-3),
      );
      const held = layout.supports.some(
        (support) => support.kind === 'end' && apart(drawn.place(support.at), at) < 2e-3,
      );
      if (taken || held || nozzles.some((n) => apart(n, at) < 1e-3)) return [];
      const way = paperDirection(projection.view, directionOf(subtract(at, between(at, inside, 0.1))));
      const radius = (s.stroke.diameter / 2) * projection.scale;
      return [
        {
          segments: [{ from: at, to: at }],
          radius,
          rank: 2,
          shapes: tornEnd(project(projection, at), way, radius),
        },
      ];
    }),
  );
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
