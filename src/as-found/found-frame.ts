/** Changes of a frame by what was read of its supports. */
import type { Frame, FrameSupport, Restraint } from '../model/frame/frame.js';

const isUpright = ({ acts, direction }: Restraint): boolean =>
  acts === 'translation' && Math.abs(direction[2]) > 0.999;

/**
 * A frame with the upright restraints of some supports changed.
 *
 * @param frame - the frame
 * @param changes - by mark: what becomes of an upright restraint
 * @returns the frame changed; the same object where there is nothing to change
 */
export function withUpright(
  frame: Frame,
  changes: ReadonlyMap<string, (restraint: Restraint) => Restraint>,
): Frame {
  if (changes.size === 0) return frame;
  const supports = frame.supports.map((support): FrameSupport => {
    const change = changes.get(support.name);
    if (change === undefined) return support;
    return {
      ...support,
      restraints: support.restraints.map((each) => (isUpright(each) ? change(each) : each)),
    };
  });
  return { ...frame, supports };
}

/** A restraint standing higher by so much [m]. */
export function raisedBy(height: number): (restraint: Restraint) => Restraint {
  return (restraint) => ({ ...restraint, imposed: restraint.imposed + height * restraint.direction[2] });
}

/** A rod of another length: it swings with it, and lengthens in proportion [m]. */
export function withRodLength(found: number): (restraint: Restraint) => Restraint {
  return (restraint) => {
    const { swingLength, stiffness } = restraint;
    if (swingLength === undefined || !(found > 0)) return restraint;
    const isRod = restraint.preload === 0 && Number.isFinite(stiffness);
    return {
      ...restraint,
      swingLength: found,
      ...(isRod && { stiffness: (stiffness * swingLength) / found }),
    };
  };
}
