/** What stands in a line without length, and where a line stops. */
import type { Vec3 } from '../../model/conventions.js';
import type { Layout } from '../../model/layout/layout.js';
import { between, subtract } from '../../model/vector.js';
import type { Xy } from '../drawing.js';
import { apart, directionOf } from '../space.js';
import type { Piece } from './paint-order.js';
import { groovedShapes } from './part-symbols.js';
import { type Projection, paperDirection, project } from './projection.js';
import type { ShortenedLine } from './shortened-line.js';
import { tornEnd } from './tube.js';

/** Direction on paper of strokes across a pipe: upright across level pipe, level across a riser. @param projection - view @param way - direction of the pipe [-] @returns direction on paper [-] */
export function barDirection(projection: Projection, way: Vec3): Xy {
  return Math.abs(way[2]) > 0.7 ? paperDirection(projection.view, [1, 0, 0]) : [0, -1];
}

/** Joints without length: a band across the pipe. @param layout - joints [m] @param drawn - the line as drawn [m] @param projection - view and scale @returns pieces */
export function groovedPieces(
  layout: Layout,
  drawn: ShortenedLine,
  projection: Projection,
): readonly Piece[] {
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

/** Ends of pipe that nothing holds are drawn torn. @param drawn - the line as drawn [m] @param layout - supports and nozzles [m] @param projection - view and scale @returns pieces */
export function looseEndPieces(
  drawn: ShortenedLine,
  layout: Layout,
  projection: Projection,
): readonly Piece[] {
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
