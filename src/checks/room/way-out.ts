import {
  type Box,
  boundingBox,
  type ConvexSolid,
  type FreeRoute,
  freeRoute,
  type NamedSolid,
  type PlanPoint,
  piecesOf,
} from '../../geometry/index.js';
import type { Installation } from '../../input/installation.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Obstacle } from '../../model/room/obstacles.js';
import { OVER_FLOOR } from '../../model/room/service-spaces.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { type Access, type AccessSubject, accessOf, clashOf, near } from './access-subject.js';

const CODE: Citation = { source: 'imc', clause: '306.2, passage of 36 in (2009)', confidence: 'read' };
const SIZE: Citation = {
  source: 'statics',
  clause: 'diagonal of the motor on its side',
  confidence: 'computed',
};

/** Width of a passage [m]: 36 in. */
const PASSAGE = 0.9144;
/** How far past the outermost things of the room a way is looked for [m]. */
const BEYOND = 0.5;
/** How far round pump and opening a way is looked for first [m]. */
const AROUND = 1.5;
/** Where the way begins, in half widths from the casing [-]: a little more than one. */
const START = 1.05;

/** The way of the motor out of the room. */
export interface MotorWay {
  readonly route: FreeRoute;
  /** Width asked for: of the passage, or the diagonal of the motor where that is larger [m]. */
  readonly width: number;
  readonly diagonal: number;
}

/**
 * There is a way from the pump to the opening, wide enough for a passage and for the motor on its side to be turned.
 *
 * Why: a motor that comes out of the pump and not out of the room is taken to pieces in it.
 */
export const wayOut = defineCheck({
  id: 'way-out',
  title: 'Removal path',
  trade: 'Rigger, and coordination of trades',
  section: 'access',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [CODE, SIZE],
  exceeds: 'checks.way-out.exceeds',
  noPlace: 'checks.way-out.no-place',
  places: ({ installation }) => [installation.pump.mark],
  at: () => 'motor',
  demands: (_mark, subject): readonly Demand[] => {
    const { room } = subject.installation;
    if (room.wayOut === undefined || room.floor === undefined)
      return [{ kind: 'cannot-tell', code: 'checks.way-out.unknown' }];
    if (!room.objects.some(({ kind }) => kind === 'wall'))
      return [{ kind: 'cannot-tell', code: 'checks.access.no-walls' }];
    const way = motorWay(subject);
    if (way === undefined) return [{ kind: 'cannot-tell', code: 'checks.way-out.unknown' }];
    const { route, width, diagonal } = way;
    const basis = diagonal > PASSAGE ? SIZE : CODE;
    const { narrowest } = route;
    const between = narrowest.between.join(' and ');
    const passes = route.route !== undefined;
    // A way that was checked from end to end is as wide as asked, whatever the grid says of its narrowest place.
    const found = passes ? Math.max(width, finite(narrowest.width, width)) : Math.min(narrowest.width, width);
    const data = { obstacle: between, short: Math.max(0, width - found) };
    const door: Demand = {
      kind: 'compared',
      sense: 'at least',
      label: 'opening',
      demand: room.wayOut.width.value,
      limit: width,
      basis,
      advice: 'checks.way-out.opening',
      remark: 'checks.way-out.free',
      data: { obstacle: 'opening', short: Math.max(0, width - room.wayOut.width.value) },
    };
    if (!passes && !(narrowest.width > 0))
      return [
        door,
        { kind: 'compared', sense: 'at least', label: 'way', demand: 0, limit: width, basis, data },
      ];
    if (!passes && found >= width)
      return [door, { kind: 'cannot-tell', label: 'way', code: 'checks.way-out.tight', basis, data }];
    return [
      door,
      {
        kind: 'compared',
        sense: 'at least',
        label: 'way',
        demand: found,
        limit: width,
        basis,
        remark: 'checks.way-out.free',
        data,
      },
    ];
  },
});

function finite(value: number, otherwise: number): number {
  return Number.isFinite(value) ? value : otherwise;
}

/**
 * The way of the motor from beside the pump to the opening.
 *
 * @param subject - pump and room
 * @returns the way and the width asked for; nothing where floor or opening are not given [m]
 */
export function motorWay(subject: AccessSubject): MotorWay | undefined {
  const before = ways.get(subject.installation);
  if (before !== undefined) return before;
  const way = findWay(subject);
  if (way !== undefined) ways.set(subject.installation, way);
  return way;
}

/** Ways found so far: checks and drawings ask for the same. */
const ways = new WeakMap<Installation, MotorWay>();

function findWay(subject: AccessSubject): MotorWay | undefined {
  const { room } = subject.installation;
  if (room.wayOut === undefined || room.floor === undefined || room.headHeight === undefined)
    return undefined;
  const access = accessOf(subject);
  const { motor } = access.pump;
  const diagonal = Math.hypot(2 * motor.radius, motor.to[2] - motor.from[2]);
  const width = Math.max(PASSAGE, diagonal);
  const whole = roomBox(subject, room.floor, room.headHeight.value);
  const onFloor = near(whole, access.obstacles, 0).filter(
    ({ kind }) => kind !== 'floor' && kind !== 'ceiling',
  );
  const solids = [...plainest(onFloor).map(boxed), ...pumpOnFloor(access)];
  const start = startOf(subject, onFloor, width, whole);
  const goal = room.wayOut.at;
  // Most ways stay near the line from pump to opening; only where they do not is the whole room searched.
  const close = freeRoute(start, goal, solids, width, within(whole, [start, goal]));
  const route = close.route === undefined ? freeRoute(start, goal, solids, width, whole) : close;
  return { route, width, diagonal };
}

/** Beside the casing, on the side nearest to the opening of those where the motor can be set down. */
function startOf(
  { installation }: AccessSubject,
  obstacles: readonly Obstacle[],
  width: number,
  { low, high }: Box,
): PlanPoint {
  const { position, outline, ports } = installation.pump;
  const beside = outline.casingDiameter.value / 2 + START * (width / 2);
  const [x, y] = ports.discharge.facing;
  const [east, north] = installation.room.wayOut?.at ?? [0, 0];
  const towards = ([a, b]: PlanPoint): number => a * (east - position[0]) + b * (north - position[1]);
  const sides = [[y, -x] as const, [-y, x] as const, [x, y] as const, [-x, -y] as const].sort(
    (a, b) => towards(b) - towards(a),
  );
  const places = sides.map(([a, b]): PlanPoint => [position[0] + beside * a, position[1] + beside * b]);
  const free = places.find(
    ([a, b]) =>
      clashOf(
        { kind: 'cylinder', from: [a, b, low[2]], to: [a, b, high[2]], radius: width / 2 },
        obstacles,
      ) === undefined,
  );
  return free ?? places[0] ?? [position[0], position[1]];
}

/** Part of a room round some points. */
function within({ low, high }: Box, points: readonly PlanPoint[]): Box {
  const least = (axis: 0 | 1): number => Math.min(...points.map((point) => point[axis])) - AROUND;
  const most = (axis: 0 | 1): number => Math.max(...points.map((point) => point[axis])) + AROUND;
  return {
    kind: 'box',
    low: [Math.max(low[0], least(0)), Math.max(low[1], least(1)), low[2]],
    high: [Math.min(high[0], most(0)), Math.min(high[1], most(1)), high[2]],
  };
}

/** Leaves out what lies in plan within something else of the lines, such as a riser within its flanges. */
function plainest(obstacles: readonly Obstacle[]): readonly Obstacle[] {
  const covers = (one: Box, other: Box): boolean =>
    ([0, 1] as const).every((axis) => one.low[axis] <= other.low[axis] && one.high[axis] >= other.high[axis]);
  const isRound = ({ kind }: Obstacle): boolean => kind === 'line' || kind === 'support';
  return obstacles.filter(
    (each, index) =>
      !isRound(each) ||
      !obstacles.some(
        (other, at) =>
          at !== index &&
          isRound(other) &&
          covers(other.box, each.box) &&
          (at < index || !covers(each.box, other.box)),
      ),
  );
}

/** Pieces that do not stand upright as boxes, which is quick to measure to and can only make a way look narrower. */
function boxed({ name, solid, kind }: Obstacle): NamedSolid {
  if (kind === 'object') return { name, solid };
  const pieces = piecesOf(solid).map((piece): ConvexSolid => {
    const upright =
      (piece.kind === 'cylinder' || piece.kind === 'capsule') &&
      Math.hypot(piece.to[0] - piece.from[0], piece.to[1] - piece.from[1]) < 1e-9;
    if (!upright) return boundingBox(piece);
    const { from, to, radius } = piece;
    return { kind: 'cylinder', from, to: [from[0], from[1], to[2]], radius };
  });
  return { name, solid: { kind: 'group', pieces } };
}

/** The casing stays where it is; the motor is what is carried. */
function pumpOnFloor({ pump }: Access) {
  return pump.stages
    .filter(({ part }) => part === 'casing' || part === 'base')
    .map(({ part, ...solid }) => ({ name: `pump ${part}`, solid }));
}

function roomBox({ installation }: AccessSubject, floor: number, height: number): Box {
  const { room, pump } = installation;
  const points: readonly Vec3[] = [
    ...room.objects.flatMap(({ low, high }) => [low, high]),
    [...(room.wayOut?.at ?? [0, 0]), floor],
    pump.position,
  ];
  const reach = (axis: 0 | 1, choose: (...values: number[]) => number): number =>
    choose(...points.map((point) => point[axis]));
  return {
    kind: 'box',
    low: [reach(0, Math.min) - BEYOND, reach(1, Math.min) - BEYOND, floor + OVER_FLOOR],
    high: [reach(0, Math.max) + BEYOND, reach(1, Math.max) + BEYOND, floor + height],
  };
}
