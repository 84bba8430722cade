/** What the picture of the lift shows: from the casing to the anchor or the structure. */
import type { Access } from '../../checks/room/access-subject.js';
import { boundingBox, sweepUp } from '../../geometry/index.js';
import type { Installation } from '../../input/installation.js';
import type { Layout } from '../../model/layout/layout.js';
import { scale } from '../../model/vector.js';
import { levelView, type Projection, project } from '../isometric/projection.js';
import type { Box } from '../plane.js';
import { levelAcross } from '../space.js';

export interface LiftFrame {
  readonly projection: Projection;
  /** Part of the paper for the picture; labels may use the frame round it. */
  readonly window: Box;
  readonly frame: Box;
  /** How far the motor is shown raised [m]. */
  readonly raised: number;
  /** Names of the things of the room that are shown. */
  readonly seen: ReadonlySet<string>;
}

/** Clear edge, and the line of words at the foot [1/72 in]. */
const EDGE = 3;
const FOOT = 22;
/** Shown above and below what matters, and on either side of the shaft at least [m]. */
const MARGIN = 0.25;
const BESIDE = 0.9;
/** Part of its own height the motor is shown raised by where no height is given [-]. */
const SHOWN = 0.5;

/**
 * Chooses part and scale: ports across the paper, discharge to the right, from the casing up to the structure.
 *
 * @param installation - room [m]
 * @param layout - nozzles [m]
 * @param access - pump, lift and obstacles [m]
 * @param width - width of the picture [1/72 in]
 * @param height - height of the picture [1/72 in]
 * @returns the frame of the picture
 */
export function liftFrame(
  installation: Installation,
  layout: Layout,
  access: Access,
  width: number,
  height: number,
): LiftFrame {
  const { position } = installation.pump;
  const { pump, lift, obstacles } = access;
  const raised = access.withdrawal ?? SHOWN * (pump.motor.to[2] - pump.motor.from[2]);
  const top = Math.max(
    pump.motor.to[2] + raised + MARGIN,
    lift === undefined ? 0 : Math.max(lift.anchor[2], pump.eyes + raised + (lift.gear ?? 0)),
    installation.room.ceiling ?? 0,
  );
  const low = pump.casing.from[2] - MARGIN / 2;
  const high = Math.min(top, pump.motor.to[2] + raised + 6) + MARGIN;
  const frame = { left: EDGE, top: EDGE, right: width - EDGE, bottom: height - FOOT };
  const paper = Math.min(
    (frame.bottom - frame.top) / (high - low),
    (frame.right - frame.left) / (2 * BESIDE + 2 * pump.casing.radius),
  );
  const towards = scale(levelAcross(layout.nozzles.discharge.axis), -1);
  const flat: Projection = { view: levelView(towards), scale: paper, origin: [0, 0] };
  const foot = project(flat, [position[0], position[1], low]);
  const projection: Projection = {
    ...flat,
    origin: [(frame.left + frame.right) / 2 - foot[0], frame.bottom - foot[1]],
  };
  const half = (BESIDE + pump.casing.radius) * paper;
  const middle = (frame.left + frame.right) / 2;
  const way = boundingBox(sweepUp(pump.motorWithBox, raised + (lift?.gear ?? 0)));
  const seen = obstacles
    .filter(({ kind }) => kind === 'ceiling' || kind === 'object')
    .filter(({ box }) =>
      ([0, 1] as const).every(
        (axis) => box.low[axis] < way.high[axis] + MARGIN && box.high[axis] > way.low[axis] - MARGIN,
      ),
    );
  return {
    projection,
    window: { left: middle - half, right: middle + half, top: frame.top, bottom: frame.bottom },
    frame,
    raised,
    seen: new Set(seen.map(({ name }) => name)),
  };
}
