/** Pump and first pipes as seen from the side, cut off at the window. */
import type { Installation } from '../../input/installation.js';
import type { Layout, Stroke } from '../../model/layout/layout.js';
import { between, dot, subtract } from '../../model/vector.js';
import { clippedSegment, isInside } from '../clip.js';
import type { Shape, Xy } from '../drawing.js';
import { gasketEnd } from '../isometric/gasket-end.js';
import {
  connectorShapes,
  flangeBar,
  type PartPlace,
  valveShapes,
  valveSymbol,
} from '../isometric/part-symbols.js';
import { type Projection, paperDirection, project } from '../isometric/projection.js';
import { closedStart, DIFFUSER_BODY, strokeAxis } from '../isometric/stroke-axis.js';
import { line, tornEnd, tubeShapes } from '../isometric/tube.js';
import { type Box, type Capsule, grown, heading, offset } from '../plane.js';
import { apart, arcPoints } from '../space.js';
import type { ElevationFrame } from './elevation-frame.js';

/** Pipes further than this in front of the pump or behind it are left out [m]. */
const NEAR = 1.5;

/**
 * The first pipes, farthest first.
 *
 * @param installation - pump [m]
 * @param layout - strokes [m]
 * @param elevation - frame of the elevation
 * @returns shapes inside the window
 */
export function elevationPipes(
  installation: Installation,
  layout: Layout,
  elevation: ElevationFrame,
): readonly Shape[] {
  const { towards } = elevation.projection.view;
  const look: Look = {
    projection: elevation.projection,
    window: elevation.window,
    kinds: valveKinds(installation),
    suctionLine: suctionName(installation),
    strokes: layout.strokes,
  };
  /** Pipe first, then what stands in it, then the bars of its flanges. */
  const layer = (stroke: Stroke) =>
    stroke.kind === 'arc' || stroke.role === 'pipe' || stroke.role === 'reducer'
      ? 0
      : stroke.role === 'flange'
        ? 2
        : 1;
  const depth = (stroke: Stroke) =>
    dot(subtract(between(stroke.from, stroke.to, 0.5), installation.pump.position), towards);
  return layout.strokes
    .filter(
      (stroke) => !(stroke.kind === 'straight' && stroke.role === 'pump') && Math.abs(depth(stroke)) < NEAR,
    )
    .map((stroke, i) => ({ stroke, i, depth: depth(stroke) }))
    .sort((a, b) => Math.round((a.depth - b.depth) / 0.3) || layer(a.stroke) - layer(b.stroke) || a.i - b.i)
    .flatMap(({ stroke }) => strokeShapes(stroke, look));
}

/** What every stroke is drawn with. */
interface Look {
  readonly projection: Projection;
  readonly window: Box;
  readonly kinds: ReadonlyMap<string, string>;
  readonly suctionLine: string | undefined;
  readonly strokes: readonly Stroke[];
}

function strokeShapes(stroke: Stroke, look: Look): readonly Shape[] {
  const { projection, window, kinds, suctionLine } = look;
  const radius = (stroke.diameter / 2) * projection.scale;
  const inner = grown(window, -(radius * 2 + 6));
  const [from, to] = [project(projection, closedStart(stroke, look.strokes)), project(projection, stroke.to)];
  if (stroke.kind === 'arc') {
    const points = arcPoints(stroke, 14).map((p) => project(projection, p));
    return points.every((p) => isInside(p, inner)) ? tubeShapes({ points, start: radius, end: radius }) : [];
  }
  const flange = stroke.role === 'flange' && apart(stroke.from, stroke.to) < 1e-3;
  const cut =
    flange && isInside(from, inner)
      ? { from, to, cutFrom: false, cutTo: false }
      : clippedSegment(from, to, inner);
  if (cut === undefined) return [];
  const way = paperDirection(projection.view, strokeAxis(stroke, look.strokes));
  const place: PartPlace = { from, to, bar: [-way[1], way[0]], radius };
  const whole = !cut.cutFrom && !cut.cutTo;
  if (stroke.role === 'valve')
    return whole
      ? valveShapes(
          valveSymbol(kinds.get(stroke.name) ?? stroke.name),
          place,
          stroke.line !== suctionLine,
          Math.max(4, radius * 0.6),
        )
      : [];
  if (stroke.role === 'connector') return whole ? connectorShapes(place) : [];
  const torn: readonly Shape[] = [
    ...(cut.cutFrom ? tornEnd(cut.from, [-way[0], -way[1]] as Xy, radius) : []),
    ...(cut.cutTo ? tornEnd(cut.to, way, radius) : []),
  ];
  const wide = stroke.role === 'diffuser' ? radius * DIFFUSER_BODY : radius;
  const bars =
    stroke.role === 'flange' && whole
      ? [
          flangeBar(
            gasketEnd(stroke, look.strokes) === 'to' ? to : from,
            way,
            place.bar,
            Math.max(3, radius * 1.6),
          ),
        ]
      : [];
  const body = flange ? [] : tubeShapes({ points: [cut.from, cut.to], start: wide, end: wide });
  const side = (p: Xy): Shape => line([offset(p, place.bar, wide), offset(p, place.bar, -wide)], 'medium');
  const ends = stroke.role === 'diffuser' && whole ? [side(from), side(to)] : [];
  return [...body, ...ends, ...torn, ...bars];
}

/** Capsules of the pipes drawn, for labels to keep clear of. @param layout - strokes [m] @param elevation - frame of the elevation @returns strokes on paper */
export function elevationPipeObstacles(layout: Layout, elevation: ElevationFrame): readonly Capsule[] {
  const { towards } = elevation.projection.view;
  const middle = layout.nozzles.suction.at;
  return layout.strokes
    .filter((s) => Math.abs(dot(subtract(between(s.from, s.to, 0.5), middle), towards)) < NEAR)
    .flatMap((s) => {
      const radius = (s.diameter / 2) * elevation.projection.scale;
      const cut = clippedSegment(
        project(elevation.projection, s.from),
        project(elevation.projection, s.to),
        elevation.window,
      );
      return cut === undefined ? [] : [{ from: cut.from, to: cut.to, radius }];
    });
}

function valveKinds(installation: Installation): ReadonlyMap<string, string> {
  return new Map(
    installation.lines.flatMap((l) =>
      l.walk.flatMap((part) => (part.kind === 'valve' ? [[part.name, part.valve] as const] : [])),
    ),
  );
}

const suctionName = (installation: Installation) =>
  installation.lines.find((l) => l.from === 'suction')?.name;

/**
 * Pump, motor and ports from the side.
 *
 * @param layout - nozzles [m]
 * @param elevation - frame of the elevation
 * @returns shapes
 */
export function elevationPump(layout: Layout, elevation: ElevationFrame): readonly Shape[] {
  const { projection, cylinders } = elevation;
  const ports = [layout.nozzles.suction, layout.nozzles.discharge].flatMap((nozzle): readonly Shape[] => {
    const axis = project(projection, [cylinders[0]?.low[0] ?? 0, cylinders[0]?.low[1] ?? 0, nozzle.at[2]]);
    const face = project(projection, nozzle.at);
    const radius = (nozzle.section.outsideDiameter / 2) * projection.scale;
    const way = heading(axis, face);
    return [
      ...tubeShapes({ points: [axis, face], start: radius, end: radius, fill: 'light' }),
      flangeBar(face, way, [-way[1], way[0]], Math.max(3, radius * 1.6)),
    ];
  });
  const bodies = cylinders.map((c): Shape => {
    const [low, high] = [project(projection, c.low), project(projection, c.high)];
    const half = c.radius * projection.scale;
    return line(
      [
        [low[0] - half, low[1]],
        [low[0] + half, low[1]],
        [high[0] + half, high[1]],
        [high[0] - half, high[1]],
      ],
      'medium',
      c.part === 'casing' ? 'light' : 'white',
    );
  });
  return [...ports, ...bodies];
}
