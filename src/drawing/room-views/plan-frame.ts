/** What a plan shows: how much of the room, at what scale. */
import { boundingBox } from '../../geometry/index.js';
import type { Installation } from '../../input/installation.js';
import type { ServiceVolume } from '../../model/room/service-spaces.js';
import type { Projection, View } from '../isometric/projection.js';
import type { Box } from '../plane.js';

export interface PlanFrame {
  readonly projection: Projection;
  /** Part of the paper for the picture; labels may use the frame round it. */
  readonly window: Box;
  readonly frame: Box;
}

/** From above: east to the right, north up. */
const ABOVE: View = { corner: 'above', towards: [0, 0, 1], right: [1, 0, 0], up: [0, 1, 0] };

/** Clear edge, and the line of words at the foot [1/72 in]. */
const EDGE = 3;
const FOOT = 22;
/** Least shown on every side of the pump, and how far off a way out is still shown [m]. */
const LEAST = 2;
const FARTHEST = 5;
/** Shown past what is shown [m]. */
const MARGIN = 0.35;

/**
 * Chooses part and scale: the pump with its spaces, the walls near it, the way out where it is near.
 *
 * @param installation - pump and room [m]
 * @param volumes - spaces [m]
 * @param width - width of the picture [1/72 in]
 * @param height - height of the picture [1/72 in]
 * @returns the frame of the plan
 */
export function planFrame(
  installation: Installation,
  volumes: readonly ServiceVolume[],
  width: number,
  height: number,
): PlanFrame {
  const { position } = installation.pump;
  const boxes = volumes.map(({ solid }) => boundingBox(solid));
  const way = installation.room.wayOut;
  const isNear = (at: readonly number[]): boolean =>
    Math.abs((at[0] ?? 0) - position[0]) < FARTHEST && Math.abs((at[1] ?? 0) - position[1]) < FARTHEST;
  const spots = [
    ...boxes.flatMap(({ low, high }) => [low, high]),
    ...(way !== undefined && isNear(way.at) ? [way.at] : []),
    // The near face of a wall, so that distances to it can be shown.
    ...installation.room.objects
      .filter(({ kind }) => kind === 'wall')
      .map(({ low, high }) =>
        ([0, 1] as const).map((axis) => Math.min(Math.max(position[axis], low[axis]), high[axis])),
      )
      .filter(isNear),
  ];
  const reach = (axis: 0 | 1, sign: 1 | -1): number =>
    MARGIN + Math.max(LEAST, ...spots.map((at) => sign * ((at[axis] ?? 0) - position[axis])));
  const [east, west, north, south] = [reach(0, 1), reach(0, -1), reach(1, 1), reach(1, -1)];
  const frame = { left: EDGE, top: EDGE, right: width - EDGE, bottom: height - FOOT };
  const room = { wide: frame.right - frame.left, tall: frame.bottom - frame.top - 4 };
  const scale = Math.min(room.wide / (east + west), room.tall / (north + south));
  const middle = [(frame.left + frame.right) / 2, (frame.top + frame.bottom) / 2] as const;
  // What is left over across the paper shows more of the room.
  const centre = [position[0] + (east - west) / 2, position[1] + (north - south) / 2] as const;
  return {
    projection: {
      view: ABOVE,
      scale,
      origin: [middle[0] - centre[0] * scale, middle[1] + centre[1] * scale],
    },
    window: { left: frame.left, right: frame.right, top: frame.top, bottom: frame.bottom - 4 },
    frame,
  };
}
