import type { Installation } from '../../input/installation.js';
import { buildFrameParts } from '../../model/frame/build-frame.js';
import type { Frame } from '../../model/frame/frame.js';
import type { Layout } from '../../model/layout/layout.js';

/**
 * The layout as it was with what holds it as it is now: supports, joints, and the bodies and points that a bracket moves.
 * Nothing else follows from what nobody stated; the pipes stay the same objects, so that what was worked out of them serves.
 *
 * @param layout - as stated
 * @param varied - the installation at other bounds
 * @returns layout with its frame, in the conditions it had
 * @throws EngineError as `buildFrameParts`
 */
export function layoutAtBounds(layout: Layout, varied: Installation): Layout {
  return { ...layout, frame: heldBy(layout.frame, buildFrameParts(varied).frame) };
}

/** A frame held by what another has. @param frame - whose pipes stay @param other - whose supports, joints and bodies are taken @returns both in one */
export function heldBy(frame: Frame, other: Frame): Frame {
  const points = { ...frame.points };
  for (const [name, place] of Object.entries(other.points)) points[name] ??= place;
  return { ...frame, points, supports: other.supports, joints: other.joints, bodies: other.bodies };
}
