/** What an elevation shows: which side, how much of the room, at what scale. */
import type { Installation } from '../../input/installation.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Layout } from '../../model/layout/layout.js';
import { withdrawalOf } from '../../model/room/service-spaces.js';
import { add, dot, scale, subtract } from '../../model/vector.js';
import type { Xy } from '../drawing.js';
import { levelView, type Projection, project } from '../isometric/projection.js';
import { type PumpCylinder, pumpCylinders } from '../isometric/pump-shapes.js';
import type { Box } from '../plane.js';
import { levelAcross } from '../space.js';

export interface ElevationFrame {
  readonly projection: Projection;
  readonly cylinders: readonly PumpCylinder[];
  /** Part of the paper for the picture; labels may use the frame round it. */
  readonly window: Box;
  readonly frame: Box;
  /** Elevations drawn [m]; an assumed one is only where the line is drawn, never a measure. */
  readonly floor: { readonly at: number; readonly given: boolean };
  readonly ceiling: { readonly at: number; readonly given: boolean };
  readonly motorTop: number;
  /** What stands over the motor, lowest first: underside [m]. */
  readonly overhead: readonly { readonly name: string; readonly at: number }[];
}

/** A thing of the room as seen from the side. */
export interface SeenObject {
  readonly name: string;
  readonly kind: string;
  readonly box: Box;
  /** True where its plan reaches over the motor. */
  readonly overMotor: boolean;
}

/** Clear edge, and the line of words at the foot [1/72 in]. */
const EDGE = 3;
const FOOT = 22;
const SIDES = 60;

/**
 * Chooses side and scale: the ports run across the paper, discharge to the right; floor to ceiling fit in height.
 *
 * @param installation - pump, room [m]
 * @param layout - nozzles [m]
 * @param width - width of the picture [1/72 in]
 * @param height - height of the picture [1/72 in]
 * @returns the frame of the elevation
 */
export function elevationFrame(
  installation: Installation,
  layout: Layout,
  width: number,
  height: number,
): ElevationFrame {
  const { pump, room } = installation;
  const cylinders = pumpCylinders(installation, layout);
  const lowest = (cylinders[0] as PumpCylinder).low[2];
  const motorTop = pump.position[2] + pump.outline.motorTop.value;
  const overhead = lowestOver(installation, motorTop);
  const needed = motorTop + (withdrawalOf(installation)?.height ?? 0.8 * pump.outline.motorTop.value);
  const highest = Math.max(needed, ...overhead.map((o) => o.at)) + 0.15;
  const floor =
    room.floor === undefined
      ? { at: lowest - 0.35, given: false }
      : { at: Math.min(room.floor, lowest), given: true };
  const ceiling =
    room.ceiling === undefined
      ? { at: highest + 0.15, given: false }
      : { at: Math.max(room.ceiling, motorTop), given: true };
  const frame = { left: EDGE, top: EDGE, right: width - EDGE, bottom: height - FOOT };
  const window = {
    left: EDGE + Math.min(SIDES, width * 0.12),
    top: EDGE + 14,
    right: width - EDGE - Math.min(SIDES, width * 0.12),
    bottom: height - FOOT - 12,
  };
  const reach = Math.abs(
    dot(subtract(layout.nozzles.discharge.at, layout.nozzles.suction.at), layout.nozzles.discharge.axis),
  );
  const across = Math.max(3 * reach, 1.6 * pump.outline.casingDiameter.value, 1.5);
  const paperScale = Math.min(
    (window.bottom - window.top) / (ceiling.at - floor.at),
    (window.right - window.left) / across,
  );
  const towards = scale(levelAcross(layout.nozzles.discharge.axis), -1);
  const flat: Projection = { view: levelView(towards), scale: paperScale, origin: [0, 0] };
  const shaft = project(flat, pump.position);
  const top = project(flat, [pump.position[0], pump.position[1], ceiling.at]);
  const tall = (ceiling.at - floor.at) * paperScale;
  const spare = window.bottom - window.top - tall;
  const origin: Xy = [(window.left + window.right) / 2 - shaft[0], window.top + spare / 2 - top[1]];
  const drawn = { ...window, top: window.top + spare / 2, bottom: window.bottom - spare / 2 };
  return {
    projection: { ...flat, origin },
    cylinders,
    window: drawn,
    frame,
    floor,
    ceiling,
    motorTop,
    overhead,
  };
}

/** Ceiling and objects over the motor, lowest first. */
function lowestOver(installation: Installation, motorTop: number): ElevationFrame['overhead'] {
  const { pump, room } = installation;
  const ceiling = room.ceiling === undefined ? [] : [{ name: 'ceiling', at: room.ceiling }];
  const objects = room.objects
    .filter((o) => isOverMotor(installation, o.low, o.high) && o.high[2] > pump.position[2])
    .map((o) => ({ name: o.name, at: o.low[2] }));
  return [...objects, ...ceiling].filter((o) => o.at > motorTop - 5).sort((a, b) => a.at - b.at);
}

/** Whether a box reaches over the motor in plan. @param installation - pump [m] @param low - lowest corner [m] @param high - highest corner [m] @returns true when it does */
export function isOverMotor(installation: Installation, low: Vec3, high: Vec3): boolean {
  const { position, outline } = installation.pump;
  const beside = (axis: 0 | 1) => Math.max(low[axis] - position[axis], position[axis] - high[axis], 0);
  return Math.hypot(beside(0), beside(1)) < outline.motorDiameter.value / 2;
}

/**
 * Things of the room near enough to the pump to matter from this side.
 *
 * @param installation - room and pump [m]
 * @param elevation - frame of the elevation
 * @returns boxes on paper, not yet cut to the window
 */
export function seenObjects(installation: Installation, elevation: ElevationFrame): readonly SeenObject[] {
  const near = 1.5;
  return installation.room.objects.flatMap((object): readonly SeenObject[] => {
    const corners = [0, 1, 2, 3, 4, 5, 6, 7].map(
      (bits): Vec3 => [
        bits & 1 ? object.high[0] : object.low[0],
        bits & 2 ? object.high[1] : object.low[1],
        bits & 4 ? object.high[2] : object.low[2],
      ],
    );
    const depths = corners.map((c) =>
      dot(subtract(c, installation.pump.position), elevation.projection.view.towards),
    );
    const overMotor = isOverMotor(installation, object.low, object.high);
    if (!overMotor && (Math.min(...depths) > near || Math.max(...depths) < -near)) return [];
    const places = corners.map((c) => project(elevation.projection, c));
    const box = {
      left: Math.min(...places.map((p) => p[0])),
      right: Math.max(...places.map((p) => p[0])),
      top: Math.min(...places.map((p) => p[1])),
      bottom: Math.max(...places.map((p) => p[1])),
    };
    return [{ name: object.name, kind: object.kind, box, overMotor }];
  });
}

/** Place over the middle of the pump at an elevation. @param installation - pump [m] @param at - elevation [m] @returns place [m] */
export function overPump(installation: Installation, at: number): Vec3 {
  return add(installation.pump.position, [0, 0, at - installation.pump.position[2]]);
}
