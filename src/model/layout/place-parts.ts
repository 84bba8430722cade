import type { Line, Part, Pump } from '../../input/installation.js';
import { EngineError } from '../../issues/issue.js';
import type { Vec3 } from '../conventions.js';
import { add, cross, dot, norm, scale, subtract, UP, unit } from '../vector.js';
import { canShut, contentsGroup } from './contents-group.js';
import type { PointNames } from './point-names.js';

/** A point with a name and a place. */
export interface NamedPoint {
  readonly name: string;
  readonly at: Vec3;
}

/** One part of the input, put in its place in the plan. */
export interface PlacedPart {
  readonly part: Part;
  readonly line: string;
  readonly from: NamedPoint;
  readonly to: NamedPoint;
  readonly directionIn: Vec3;
  readonly directionOut: Vec3;
  /** Contents group: what stands between the pump and the first valve that shuts drains with the pump. */
  readonly group: string;
  /** Distance along the line from the pump's flange face at both ends [m]. */
  readonly start: number;
  readonly end: number;
  /** Centre of an arc, corner of a diffuser, crossing of a tee. */
  readonly centre?: NamedPoint;
  /** Middle of an arc, where a support under an elbow stands. */
  readonly middle?: NamedPoint;
  /** What hangs on the third leg of a tee, from the outlet of its branch. */
  readonly side?: {
    readonly outlet: NamedPoint;
    readonly line: string;
    readonly parts: readonly PlacedPart[];
  };
}

interface Pen {
  readonly point: NamedPoint;
  readonly direction: Vec3;
  readonly station: number;
  /** True once a valve that shuts has been passed. */
  readonly shut: boolean;
}

/**
 * Walks one line outward from its port and puts every part in place.
 *
 * @param line - parts in order, lengths in [m]
 * @param pump - where the ports are [m]
 * @param names - gives every point a name that occurs once
 * @returns placed parts in walking order; places in [m]
 * @throws EngineError `model.turn-impossible` for an elbow that does not turn or turns right back; data: `part`, angle [rad]
 * @source statics
 */
export function placeLine(line: Line, pump: Pump, names: PointNames): readonly PlacedPart[] {
  const port = pump.ports[line.from];
  const start: Pen = {
    point: { name: `pump ${line.from}`, at: add(pump.position, port.position) },
    direction: port.facing,
    station: 0,
    shut: false,
  };
  return placeWalk(line.walk, line.name, start, names);
}

function placeWalk(
  walk: readonly Part[],
  line: string,
  start: Pen,
  names: PointNames,
): readonly PlacedPart[] {
  const placed: PlacedPart[] = [];
  let pen = start;
  walk.forEach((part, index) => {
    const step = placePart(part, walk[index + 1], line, pen, names);
    placed.push(step);
    pen = {
      point: step.to,
      direction: step.directionOut,
      station: step.end,
      shut: pen.shut || canShut(part),
    };
  });
  return placed;
}

function placePart(
  part: Part,
  next: Part | undefined,
  line: string,
  pen: Pen,
  names: PointNames,
): PlacedPart {
  const straightOn = (length: number, offset: Vec3 = [0, 0, 0]): PlacedPart => {
    const at = add(add(pen.point.at, scale(pen.direction, length)), offset);
    const moved = length > 0 || norm(offset) > 0;
    return {
      part,
      line,
      from: pen.point,
      to: moved ? { name: names.after(part, next, line), at } : pen.point,
      directionIn: pen.direction,
      directionOut: pen.direction,
      group: contentsGroup(line, pen.shut || canShut(part)),
      start: pen.station,
      end: pen.station + length,
    };
  };

  switch (part.kind) {
    case 'straight':
      return straightOn(part.length);
    case 'flange':
    case 'valve':
      return straightOn(part.length.value);
    case 'flexible-connector':
      return straightOn(part.length);
    case 'grooved-joint': {
      // A joint needs two points even though they coincide: the pipe turns between them.
      const step = straightOn(0);
      return { ...step, to: { name: names.after(part, next, line), at: pen.point.at } };
    }
    case 'reducer':
      return straightOn(part.length.value, eccentricOffset(part, pen.direction));
    case 'elbow':
      return placeElbow(part, next, line, pen, names);
    case 'suction-diffuser': {
      const corner = add(pen.point.at, scale(pen.direction, part.pumpLeg.value));
      const at = add(corner, scale(part.turn, part.pipeLeg.value));
      const step = straightOn(0);
      return {
        ...step,
        to: { name: names.after(part, next, line), at },
        centre: { name: part.support?.mark ?? `${part.name} corner`, at: corner },
        directionOut: part.turn,
        end: pen.station + part.pumpLeg.value + part.pipeLeg.value,
      };
    }
    case 'tee':
      return placeTee(part, next, line, pen, names);
    default:
      return straightOn(0);
  }
}

function placeElbow(
  part: Extract<Part, { kind: 'elbow' }>,
  next: Part | undefined,
  line: string,
  pen: Pen,
  names: PointNames,
): PlacedPart {
  const angle = Math.acos(Math.max(-1, Math.min(1, dot(pen.direction, part.turn))));
  if (!(angle > 1e-6 && angle < Math.PI - 1e-3))
    throw new EngineError('model.turn-impossible', { part: part.name, angle });
  const radius = part.radius.value;
  // Towards the centre: the part of the new direction that is across the old one.
  const inward = unit(subtract(part.turn, scale(pen.direction, dot(pen.direction, part.turn))));
  const centre = add(pen.point.at, scale(inward, radius));
  const tangent = radius * Math.tan(angle / 2);
  const at = add(pen.point.at, scale(add(pen.direction, part.turn), tangent));
  const outward = unit(add(subtract(pen.point.at, centre), subtract(at, centre)));
  return {
    part,
    line,
    from: pen.point,
    to: { name: names.after(part, next, line), at },
    directionIn: pen.direction,
    directionOut: part.turn,
    group: contentsGroup(line, pen.shut),
    start: pen.station,
    end: pen.station + radius * angle,
    centre: { name: `${part.name} centre`, at: centre },
    middle: { name: part.support?.mark ?? `${part.name} middle`, at: add(centre, scale(outward, radius)) },
  };
}

function placeTee(
  part: Extract<Part, { kind: 'tee' }>,
  next: Part | undefined,
  line: string,
  pen: Pen,
  names: PointNames,
): PlacedPart {
  const byRun = part.enterBy === 'run';
  const lengthIn = byRun ? part.centreToRunEnd.value : part.centreToBranchEnd.value;
  const sideLength = byRun ? part.centreToBranchEnd.value : part.centreToRunEnd.value;
  const centre = add(pen.point.at, scale(pen.direction, lengthIn));
  const at = add(centre, scale(part.turn, part.centreToRunEnd.value));
  const end = pen.station + lengthIn + part.centreToRunEnd.value;
  const sideLine = `${line}, leg at ${part.name}`;
  const outlet: NamedPoint = {
    name: names.afterSide(part, part.side.walk[0], sideLine),
    at: add(centre, scale(part.side.direction, sideLength)),
  };
  const sideStart: Pen = {
    point: outlet,
    direction: part.side.direction,
    station: pen.station + lengthIn + sideLength,
    shut: pen.shut,
  };
  return {
    part,
    line,
    from: pen.point,
    to: { name: names.after(part, next, line), at },
    directionIn: pen.direction,
    directionOut: part.turn,
    group: contentsGroup(line, pen.shut),
    start: pen.station,
    end,
    centre: { name: part.name, at: centre },
    side: { outlet, line: sideLine, parts: placeWalk(part.side.walk, sideLine, sideStart, names) },
  };
}

/** How far the centre-line steps sideways in an eccentric reducer with its flat side up or down, on a sloping or level run. */
function eccentricOffset(part: Extract<Part, { kind: 'reducer' }>, direction: Vec3): Vec3 {
  if (part.shape !== 'eccentric' || part.flat === undefined) return [0, 0, 0];
  const across = cross(cross(direction, UP), direction);
  if (norm(across) < 1e-9) return [0, 0, 0];
  const step = (part.section.outsideDiameter - part.to.outsideDiameter) / 2;
  return scale(unit(across), part.flat === 'top' ? step : -step);
}
