/** The pump to its outline: casing, bracket and motor as upright cylinders, ports as tubes, and what it stands on. */
import type { Installation } from '../../input/installation.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Layout, PlacedNozzle } from '../../model/layout/layout.js';
import { pumpSolids } from '../../model/room/pump-solids.js';
import type { Shape, Xy } from '../drawing.js';
import { along, apart } from '../space.js';
import type { Piece } from './paint-order.js';
import { flangeBar } from './part-symbols.js';
import { type Projection, paperDirection, project } from './projection.js';
import { nearHalfRing } from './ring.js';
import { line, tubeShapes } from './tube.js';

/** Upright cylinder of the pump. */
export interface PumpCylinder {
  readonly part: 'base' | 'casing' | 'bracket' | 'motor';
  /** Axis, low and high end [m]. */
  readonly low: Vec3;
  readonly high: Vec3;
  /** [m] */
  readonly radius: number;
}

/**
 * The pump as a stack of cylinders.
 *
 * @param installation - pump and its outline [m]
 * @param layout - nozzles [m]
 * @returns cylinders from the floor up [m]
 */
export function pumpCylinders(installation: Installation, layout: Layout): readonly PumpCylinder[] {
  return pumpSolids(installation, layout).stages.map(({ part, from, to, radius }) => ({
    part,
    low: from,
    high: to,
    radius,
  }));
}

/**
 * Pieces of the pump for the paint order.
 *
 * @param installation - the pump [m]
 * @param layout - nozzles [m]
 * @param projection - view and scale
 * @returns pieces
 */
export function pumpPieces(
  installation: Installation,
  layout: Layout,
  projection: Projection,
): readonly Piece[] {
  const cylinders = pumpCylinders(installation, layout);
  const casing = cylinders.find((c) => c.part === 'casing') as PumpCylinder;
  const bodies = cylinders.map((c, i): Piece => {
    const shapes = cylinderShapes(c, projection);
    const standing = c.part === 'base' ? groundShapes(c, installation.pump.mount, projection) : [];
    return {
      segments: [{ from: c.low, to: c.high }],
      radius: c.radius * projection.scale,
      rank: i,
      shapes: [...standing, ...shapes],
      body: true,
    };
  });
  const ports = [layout.nozzles.suction, layout.nozzles.discharge].map((nozzle) =>
    portPiece(nozzle, casing, projection),
  );
  return [...bodies, ...ports];
}

function portPiece(nozzle: PlacedNozzle, casing: PumpCylinder, projection: Projection): Piece {
  const axis: Vec3 = [casing.low[0], casing.low[1], nozzle.at[2]];
  const length = apart(axis, nozzle.at);
  const from = along(nozzle.at, nozzle.axis, -Math.max(length - casing.radius * 0.97, length * 0.1));
  const [a, b] = [project(projection, from), project(projection, nozzle.at)];
  const radius = (nozzle.section.outsideDiameter / 2) * projection.scale;
  const way = paperDirection(projection.view, nozzle.axis);
  const bar: Xy = Math.abs(nozzle.axis[2]) > 0.7 ? paperDirection(projection.view, [1, 0, 0]) : [0, -1];
  const seam = nearHalfRing(nozzle.axis, projection.view).map(
    (p): Xy => [a[0] + p[0] * radius, a[1] + p[1] * radius],
  );
  const body = tubeShapes({ points: [a, b], start: radius, end: radius, fill: 'light', endCut: bar });
  const shapes = [
    line(seam, 'none', 'light', true),
    ...body,
    line(seam, 'fine'),
    flangeBar(b, way, bar, Math.max(3, radius * 1.75)),
  ];
  return { segments: [{ from, to: nozzle.at }], radius, rank: 2, shapes };
}

function ring(centre: Xy, radius: number, from: number, to: number): readonly Xy[] {
  // A level circle seen from a corner: its height on paper is 1/√3 of its width.
  return Array.from({ length: 33 }, (_, i): Xy => {
    const angle = from + ((to - from) * i) / 32;
    return [centre[0] + radius * Math.cos(angle), centre[1] + (radius * Math.sin(angle)) / Math.sqrt(3)];
  });
}

function cylinderShapes(cylinder: PumpCylinder, projection: Projection): readonly Shape[] {
  const low = project(projection, cylinder.low);
  const high = project(projection, cylinder.high);
  const radius = cylinder.radius * projection.scale;
  const fill = cylinder.part === 'casing' ? 'light' : 'white';
  const front = ring(low, radius, 0, Math.PI);
  const back = ring(high, radius, Math.PI, 2 * Math.PI);
  const shapes: Shape[] = [
    line([...front, ...back], 'medium', fill),
    line(ring(high, radius, 0, 2 * Math.PI), 'medium', fill, true),
  ];
  if (cylinder.part !== 'motor' || radius < 5) return shapes;
  const fins = [0.25, 0.5, 0.75].map((share) => {
    const x = low[0] - radius + 2 * radius * share;
    const drop = (radius * Math.sqrt(1 - (2 * share - 1) ** 2)) / Math.sqrt(3);
    return line(
      [
        [x, high[1] + drop + 3],
        [x, low[1] + drop - 3],
      ],
      'fine',
    );
  });
  return [...shapes, ...fins, line(ring(high, radius * 0.55, 0, 2 * Math.PI), 'fine', 'none', true)];
}

/** What the base stands on: a plate, bolts or coils by the mount. */
function groundShapes(base: PumpCylinder, mount: string, projection: Projection): readonly Shape[] {
  const foot = project(projection, base.low);
  const radius = base.radius * projection.scale * 1.35 + 4;
  const drop = radius / Math.sqrt(3);
  const plate = line(
    ring(foot, radius, 0, 2 * Math.PI),
    'medium',
    mount === 'bolted' ? 'mid' : 'white',
    true,
  );
  const under = Array.from({ length: 5 }, (_, i): Shape => {
    const x = foot[0] - radius * 0.6 + (radius * 1.2 * i) / 4;
    const y = foot[1] + drop * Math.sqrt(1 - ((x - foot[0]) / radius) ** 2);
    if (mount !== 'sprung')
      return line(
        [
          [x, y],
          [x - 2.6, y + 3.4],
        ],
        'fine',
      );
    return line(
      [
        [x, y],
        [x - 1.6, y + 1.5],
        [x + 1.6, y + 3],
        [x - 1.6, y + 4.5],
        [x, y + 6],
      ],
      'fine',
    );
  });
  return [...under, plate];
}
