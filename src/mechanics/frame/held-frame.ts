import type { Movement, Vec3 } from '../../model/conventions.js';
import type { Frame, FrameSupport, Restraint } from '../../model/frame/frame.js';
import { dot, UP } from '../../model/vector.js';

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

const rigid = (direction: Vec3, acts: Restraint['acts'], imposed: number): Restraint => ({
  direction,
  acts,
  stiffness: Number.POSITIVE_INFINITY,
  sense: 'both',
  preload: 0,
  gap: 0,
  imposed,
  friction: 0,
});

/**
 * A prop that keeps a point at the height it had: rigid, pushing up or holding down.
 *
 * @param name - name of the support [-]
 * @param point - point held [-]
 * @param had - movement it is kept at [m]
 * @returns a support in the vertical alone
 * @source statics
 */
export function propAt(name: string, point: string, had: Movement): FrameSupport {
  return { name, word: 'prop', point, restraints: [rigid(UP, 'translation', had.translation[2])] };
}

/**
 * A support that keeps a point where it was in all six freedoms.
 *
 * @param name - name of the support [-]
 * @param point - point held [-]
 * @param had - movement it is kept at [m], [rad]
 * @returns the support
 * @source statics
 */
export function clampAt(name: string, point: string, had: Movement): FrameSupport {
  const restraints = AXES.flatMap((axis) => [
    rigid(axis, 'translation', dot(axis, had.translation)),
    rigid(axis, 'rotation', dot(axis, had.rotation)),
  ]);
  return { name, word: 'prop', point, restraints };
}

/**
 * Whether a restraint is a spring set to a load.
 *
 * @param restraint - restraint of a support
 * @returns true for a spring hanger, a spring stand or the springs under a pump
 * @source mss-sp-58
 */
export function isSetSpring(restraint: Restraint): boolean {
  return restraint.acts === 'translation' && restraint.preload !== 0 && Number.isFinite(restraint.stiffness);
}

/**
 * The same frame with its springs held by their pins where they stood.
 *
 * @param frame - the frame
 * @param movements - movement of every point when the pins went in [m]
 * @returns frame without springs
 * @source statics
 */
export function pinnedFrame(frame: Frame, movements: Readonly<Record<string, Movement>>): Frame {
  const supports = frame.supports.map((support) => {
    const moved = movements[support.point]?.translation ?? [0, 0, 0];
    const restraints = support.restraints.map((restraint) =>
      isSetSpring(restraint)
        ? rigid(restraint.direction, 'translation', dot(moved, restraint.direction))
        : restraint,
    );
    return { ...support, restraints };
  });
  return { ...frame, supports };
}
