import type { Frame, FrameCondition } from '../../../model/frame/frame.js';
import { dot, subtract } from '../../../model/vector.js';
import type { Mode } from '../../modes/frequencies.js';
import { movedMovement } from '../elements/rigid-arm.js';
import { lumpMass } from '../present-mass.js';

/**
 * Share of a vibration's energy of motion that lies in some bodies: near 1 where they alone move, near 0 where the pipe
 * moves and they stand still. What pushes at these bodies excites the vibration in this proportion.
 *
 *     share = Σ (m v² + Θ φ²) / xᵀ M x     over the lumps of the bodies
 *
 * @param frame - the frame that vibrates
 * @param condition - contents
 * @param mode - the vibration
 * @param bodies - names of the bodies
 * @returns share, from 0 to 1 [-]
 * @source dynamics
 */
export function bodyShare(
  frame: Frame,
  condition: FrameCondition,
  mode: Mode,
  bodies: readonly string[],
): number {
  let energy = 0;
  for (const body of frame.bodies) {
    if (!bodies.includes(body.name) || condition.removed.includes(body.name)) continue;
    const point = body.points[0]!;
    const movement = mode.shape[point]!;
    for (const lump of body.masses) {
      const arm = subtract(lump.at, frame.points[point]!);
      const { translation, rotation } = movedMovement(movement, arm);
      energy += lumpMass(lump, condition) * dot(translation, translation);
      const inertia = lump.inertia ?? [0, 0, 0];
      for (let i = 0; i < 3; i++) energy += inertia[i]! * rotation[i]! ** 2;
    }
  }
  return energy / mode.modalMass;
}
