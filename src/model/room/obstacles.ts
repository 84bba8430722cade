/** Everything that may stand in the way: the room, the lines' own pipes, flanges and valves, and what holds them. */
import type { ConvexSolid, NamedSolid, Solid } from '../../geometry/index.js';
import {
  type Box,
  boundingBox,
  cross,
  directionOf,
  dot,
  lengthOf,
  minus,
  plus,
  times,
} from '../../geometry/index.js';
import type { Installation, Part } from '../../input/installation.js';
import type { Vec3 } from '../conventions.js';
import type { Layout, PlacedSupport, Stroke } from '../layout/layout.js';
import { flangeDisc } from './pump-solids.js';

/** Something that may stand in the way. */
export interface Obstacle extends NamedSolid {
  readonly kind: 'ceiling' | 'floor' | 'object' | 'line' | 'support';
  /** Parts of the lines it belongs to, for a space that belongs to one of them. */
  readonly parts: readonly string[];
  /** Smallest box round it [m]. */
  readonly box: Box;
}

/** How far floor and ceiling reach past everything, and how thick they are [m]. */
const BEYOND = 20;
const SLAB = 1;
/** Angle of one straight piece of an arc [rad]. */
const CHORD = Math.PI / 12;
/** Radius of a rod or stand whose size is not known: half an inch [m]. */
const ROD = 0.0127;
/** Distance of the rods of a trapeze from the pipe [m]. */
const BESIDE = 0.05;

/**
 * Everything that may stand in the way.
 *
 * @param installation - room and lines [m]
 * @param layout - strokes, joints and supports [m]
 * @returns solids by name [m]
 */
export function obstaclesOf(installation: Installation, layout: Layout): readonly Obstacle[] {
  return [
    ...roomObstacles(installation),
    ...lineObstacles(installation, layout),
    ...supportObstacles(installation, layout),
  ];
}

function obstacle(
  kind: Obstacle['kind'],
  name: string,
  solid: Solid,
  parts: readonly string[] = [],
): Obstacle {
  return { kind, name, solid, parts, box: boundingBox(solid) };
}

function roomObstacles({ room, pump }: Installation): readonly Obstacle[] {
  const [east, north] = pump.position;
  const slab = (low: number): Solid => ({
    kind: 'box',
    low: [east - BEYOND, north - BEYOND, low],
    high: [east + BEYOND, north + BEYOND, low + SLAB],
  });
  return [
    ...(room.ceiling === undefined ? [] : [obstacle('ceiling', 'ceiling', slab(room.ceiling))]),
    ...(room.floor === undefined ? [] : [obstacle('floor', 'floor', slab(room.floor - SLAB))]),
    ...room.objects.map(({ name, low, high, run }) =>
      obstacle(
        'object',
        name,
        run === undefined
          ? { kind: 'box', low, high }
          : { kind: 'run', path: run.points, radius: run.diameter / 2 },
      ),
    ),
  ];
}

function lineObstacles(installation: Installation, layout: Layout): readonly Obstacle[] {
  const parts = new Map(
    installation.lines.flatMap(({ walk }) => partsOf(walk)).map((part) => [part.name, part]),
  );
  const flanges = flangeDiscs(layout);
  const pipes = layout.strokes
    .filter((stroke) => stroke.line !== 'pump')
    .flatMap((stroke): readonly Obstacle[] => {
      const part = parts.get(stroke.name);
      const body = part?.kind === 'valve' ? widestBeside(flanges, stroke.name) : 0;
      const radius = Math.max(stroke.diameter / 2, body) + (part?.covering?.thickness ?? 0);
      const pieces = piecesOf(stroke, radius);
      const named = part?.kind === 'straight' ? `${stroke.line}, ${stroke.name}` : stroke.name;
      return pieces.length === 0 ? [] : [obstacle('line', named, { kind: 'group', pieces }, [stroke.name])];
    });
  return [...pipes, ...flanges];
}

/** Flanges at both sides of every joint, but for the half that is the pump's own. */
function flangeDiscs(layout: Layout): readonly Obstacle[] {
  const ports = new Set([layout.nozzles.suction.point, layout.nozzles.discharge.point]);
  return layout.flangeJoints.flatMap((joint) => {
    const diameter = Math.max(0, ...joint.sides.map((side) => side.dimensions?.outsideDiameter ?? 0));
    if (diameter === 0) return [];
    const nozzle = [layout.nozzles.suction, layout.nozzles.discharge].find(
      ({ point }) => point === joint.point,
    );
    const backs =
      ports.has(joint.point) && nozzle !== undefined ? [nozzle.axis] : [joint.axis, times(joint.axis, -1)];
    const pieces = backs.map((back) => flangeDisc(joint.at, back, diameter));
    const owners = joint.sides.map(({ owner }) => owner);
    return [obstacle('line', `flanges ${joint.name}`, { kind: 'group', pieces }, owners)];
  });
}

/** A valve is as wide as the flanges at its ends; nothing else of its body is known. */
function widestBeside(flanges: readonly Obstacle[], name: string): number {
  const own = flanges.filter(({ parts }) => parts.includes(name));
  return Math.max(
    0,
    ...own.flatMap(({ solid }) =>
      solid.kind === 'group'
        ? solid.pieces.map((piece) => (piece.kind === 'cylinder' ? piece.radius : 0))
        : [],
    ),
  );
}

function piecesOf(stroke: Stroke, radius: number): readonly ConvexSolid[] {
  if (stroke.kind === 'straight') {
    if (lengthOf(minus(stroke.to, stroke.from)) < 1e-6) return [];
    return [{ kind: 'cylinder', from: stroke.from, to: stroke.to, radius }];
  }
  const points = arcPoints(stroke.from, stroke.to, stroke.centre);
  return points.slice(1).map((to, index) => ({ kind: 'capsule', from: points[index] ?? to, to, radius }));
}

/** Points along an arc, ends included. */
function arcPoints(from: Vec3, to: Vec3, centre: Vec3): readonly Vec3[] {
  const first = minus(from, centre);
  const last = minus(to, centre);
  const radius = lengthOf(first);
  const axis = cross(first, last);
  const angle = Math.atan2(lengthOf(axis), dot(first, last));
  if (!(lengthOf(axis) > 0)) return [from, to];
  const across = directionOf(cross(axis, first));
  const count = Math.max(1, Math.ceil(angle / CHORD));
  return Array.from({ length: count + 1 }, (_, index): Vec3 => {
    const turn = (angle * index) / count;
    return plus(centre, plus(times(first, Math.cos(turn)), times(across, radius * Math.sin(turn))));
  });
}

function supportObstacles(installation: Installation, layout: Layout): readonly Obstacle[] {
  return layout.supports.flatMap((support): readonly Obstacle[] => {
    const pieces = supportPieces(support, installation);
    return pieces.length === 0
      ? []
      : [obstacle('support', `${wordOf(support)} ${support.mark}`, { kind: 'group', pieces })];
  });
}

function wordOf({ kind }: PlacedSupport): string {
  return kind === 'stand' ? 'stand' : 'rods of';
}

/** Rods up to the structure and legs of stands down to the floor, as thin capsules. */
function supportPieces(
  { kind, at, part, section, along }: PlacedSupport,
  { room }: Installation,
): readonly ConvexSolid[] {
  const pipe = (section?.outsideDiameter ?? 0) / 2;
  if (kind === 'stand') {
    if (room.floor === undefined || !(at[2] - pipe > room.floor)) return [];
    return [
      { kind: 'capsule', from: [at[0], at[1], at[2] - pipe], to: [at[0], at[1], room.floor], radius: ROD },
    ];
  }
  const rods = part?.rods;
  if (rods === undefined || (kind !== 'hanger' && kind !== 'spring-hanger')) return [];
  const length = rods.length ?? (room.ceiling === undefined ? 0 : room.ceiling - at[2]);
  if (!(length > pipe)) return [];
  const level = cross(along, [0, 0, 1]);
  const across: Vec3 = lengthOf(level) > 1e-6 ? directionOf(level) : [1, 0, 0];
  const offsets = rods.count > 1 ? [-1, 1].map((side) => side * (pipe + BESIDE)) : [0];
  return offsets.map((off) => {
    const foot = plus(at, times(across, off));
    const start = rods.count > 1 ? 0 : pipe;
    return { kind: 'capsule', from: plus(foot, [0, 0, start]), to: plus(foot, [0, 0, length]), radius: ROD };
  });
}

function partsOf(walk: readonly Part[]): readonly Part[] {
  return walk.flatMap((part) => (part.kind === 'tee' ? [part, ...partsOf(part.side.walk)] : [part]));
}
