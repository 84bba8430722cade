import type { PlacedFlangeJoint } from '../../model/layout/layout.js';
import type { Subject } from '../subject.js';

/** Diameter on which the gasket pushes back, or the bounds it lies between. */
export interface GasketDiameter {
  /** The smallest it may be, which gives the largest equivalent pressure [m]. */
  readonly diameter: number;
  /** False where it was taken on the safe side. */
  readonly given: boolean;
  /** The largest it may be, where the drilling is known [m]. */
  readonly largest?: number;
}

/**
 * Diameter of the gasket reaction: the smallest one given, else bounds. A gasket of either kind reaches in no further
 * than about the outside of the pipe, so its reaction stands further out, and inside the bolts. The smaller the
 * diameter the larger the equivalent pressure: the pipe is the safe side, the bolt circle the other.
 *
 * @param joint - flange joint
 * @param subject - for the pipe at the joint
 * @returns diameter [m], or undefined where neither gasket nor pipe is known
 */
export function gasketDiameter(joint: PlacedFlangeJoint, subject: Subject): GasketDiameter | undefined {
  const given = joint.sides.flatMap(({ dimensions }) => dimensions?.gasketDiameter?.value ?? []);
  if (given.length > 0) return { diameter: Math.min(...given), given: true };
  const { nozzles } = subject.layout;
  const nozzle = [nozzles.suction, nozzles.discharge].find(({ point }) => point === joint.point);
  const pipes = [
    ...joint.sides.flatMap(({ part }) => part?.section ?? []),
    ...(nozzle === undefined ? [] : [nozzle.section]),
  ];
  if (pipes.length === 0) return undefined;
  const circles = joint.sides.flatMap(({ dimensions }) => dimensions?.boltCircle ?? []);
  return {
    diameter: Math.min(...pipes.map(({ outsideDiameter }) => outsideDiameter)),
    given: false,
    ...(circles.length > 0 && { largest: Math.max(...circles) }),
  };
}
