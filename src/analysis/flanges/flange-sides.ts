import type { FlangeSide, PlacedFlangeJoint } from '../../model/layout/layout.js';
import type { Subject } from '../subject.js';

/**
 * Whether the file says anything about the flange of one side. A valve or suction diffuser taken by its weight and
 * length alone has a flange of which nothing is known.
 *
 * @param side - one side of a joint
 * @returns true where a standard or dimensions are there
 */
export function isDescribed(side: FlangeSide): boolean {
  return side.standard !== 'unknown' || side.dimensions !== undefined;
}

/**
 * Joints of which at least one side is described.
 *
 * @param subject - layout
 * @returns joints in walking order
 */
export function describedJoints(subject: Subject): readonly PlacedFlangeJoint[] {
  return subject.layout.flangeJoints.filter((joint) => joint.sides.some(isDescribed));
}

/**
 * Names of the owners of flanges of which nothing is known, for the sentence.
 *
 * @param joint - flange joint
 * @returns owner names joined by `and`; empty where both sides are described
 */
export function undescribedOwners(joint: PlacedFlangeJoint): string {
  return joint.sides
    .filter((side) => !isDescribed(side))
    .map((side) => side.owner)
    .join(' and ');
}
