import type { Vec3 } from '../../model/conventions.js';
import type { Frame, FrameJoint } from '../../model/frame/frame.js';

/** A frame cut at the face of a nozzle. */
export interface OpenedJoint {
  /** The frame with the cut; `joint` may be added to it to close the cut rigidly. */
  readonly frame: Frame;
  /** Point of the pump at the face, and the point of the line that stands in the same place. */
  readonly near: string;
  readonly far: string;
  /** Holds both rigidly in all six freedoms; a misfit of it is that of the faces. */
  readonly joint: FrameJoint;
}

/**
 * Cuts a frame at a point of a body: the body keeps the point, everything else that meets there gets one of its own in
 * the same place.
 *
 * @param frame - the frame
 * @param cut - name of the body, its point, and the axis across which it is cut [-]
 * @returns the cut frame, or undefined where nothing but the body is at the point
 * @source statics
 */
export function openedJoint(
  frame: Frame,
  cut: { readonly body: string; readonly point: string; readonly axis: Vec3 },
): OpenedJoint | undefined {
  const { body, point: near, axis } = cut;
  const at = frame.points[near];
  const far = `${near}, line side`;
  let found = false;
  const moved = (point: string): string => {
    if (point !== near) return point;
    found = true;
    return far;
  };
  const ends = <End extends { readonly from: string; readonly to: string }>(item: End): End => ({
    ...item,
    from: moved(item.from),
    to: moved(item.to),
  });
  const members = frame.members.map(ends);
  const joints = frame.joints.map(ends);
  const bodies = frame.bodies.map((other) =>
    other.name === body ? other : { ...other, points: other.points.map(moved) },
  );
  if (!found || at === undefined) return undefined;
  const supports = frame.supports.map((support) => ({ ...support, point: moved(support.point) }));
  const rigid = Number.POSITIVE_INFINITY;
  return {
    frame: { ...frame, points: { ...frame.points, [far]: at }, members, joints, bodies, supports },
    near,
    far,
    joint: {
      name: `${near}, faces`,
      from: near,
      to: far,
      axis,
      axial: rigid,
      lateral: rigid,
      torsion: rigid,
      bending: rigid,
      thrustArea: 0,
      mass: 0,
    },
  };
}
