import { bodyOf, reachOf } from './convex-body.js';
import { piecesOf } from './pieces.js';
import type { Box, Solid } from './solid.js';
import type { Vec3 } from './vector.js';

/**
 * Smallest box along the axes of the building that holds a solid.
 *
 * @param solid - the solid [m]
 * @returns the box [m]
 */
export function boundingBox(solid: Solid): Box {
  const bodies = piecesOf(solid).map(bodyOf);
  const reach = (direction: Vec3): number =>
    Math.max(...bodies.map((body) => reachOf(body, direction) + body.rounding));
  return {
    kind: 'box',
    low: [-reach([-1, 0, 0]), -reach([0, -1, 0]), -reach([0, 0, -1])],
    high: [reach([1, 0, 0]), reach([0, 1, 0]), reach([0, 0, 1])],
  };
}
