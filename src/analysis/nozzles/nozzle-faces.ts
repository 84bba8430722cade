import type { NozzleFace } from '../../mechanics/what-ifs/fit-up.js';
import type { FrameBody } from '../../model/frame/frame.js';
import type { Facts } from '../facts.js';

/**
 * Both nozzles as the mechanics needs them.
 *
 * @param subject - layout
 * @returns suction first
 */
export function nozzleFaces(subject: Facts): readonly [NozzleFace, NozzleFace] {
  const { suction, discharge } = subject.layout.nozzles;
  return [suction, discharge];
}

/**
 * The body that is the pump: the one to which both nozzles belong.
 *
 * @param subject - layout with its frame
 * @returns the body, or undefined where no body has both
 */
export function pumpBody(subject: Facts): FrameBody | undefined {
  const faces = nozzleFaces(subject);
  return subject.layout.frame.bodies.find(({ points }) => faces.every(({ point }) => points.includes(point)));
}

/** Diameter of the sealing faces at a nozzle, over which out of parallel is measured, and of the bolt circle. */
export interface FaceDiameters {
  /** [m] */
  readonly face?: number;
  /** [m] */
  readonly boltCircle?: number;
}

/**
 * Diameters of the joint at a nozzle, the smallest face of its two sides: a raised face at its edge, a flat face at
 * the outside of the flange.
 *
 * @param subject - layout
 * @param point - point of the nozzle
 * @returns diameters as far as they are known [m]
 */
export function faceDiameters(subject: Facts, point: string): FaceDiameters {
  const sides = subject.layout.flangeJoints.find((joint) => joint.point === point)?.sides ?? [];
  const known = sides.flatMap(({ dimensions, face }) => {
    const { raisedFaceDiameter, outsideDiameter } = dimensions ?? {};
    return (face === 'flat' ? undefined : raisedFaceDiameter) ?? outsideDiameter ?? [];
  });
  const circles = sides.flatMap(({ dimensions }) => dimensions?.boltCircle ?? []);
  return {
    ...(known.length > 0 && { face: Math.min(...known) }),
    ...(circles.length > 0 && { boltCircle: Math.min(...circles) }),
  };
}

/**
 * Name of the line that starts at a nozzle.
 *
 * @param subject - installation
 * @param which - the nozzle
 * @returns name of the line
 */
export function lineAt(subject: Facts, which: 'suction' | 'discharge'): string {
  return subject.installation.lines.find(({ from }) => from === which)?.name ?? `${which} line`;
}
