/** What was read at one flange of the pump before bolt-up, put together. */
import { faceDiameters } from '../analysis/nozzles/nozzle-faces.js';
import type { FieldSubject } from '../as-installed/judge.js';
import { nozzleAxes } from '../model/nozzle-axes.js';
import { numberIn, numbersIn } from '../readings/read-box.js';
import { type FaceGaps, faceGaps } from '../sheet/face-gaps.js';
import { flangeBoxes } from '../sheet/parts/before-bolt-up.js';

/** The two flanges. */
export const FLANGES = ['suction', 'discharge'] as const;
export type Which = (typeof FLANGES)[number];

/** Ids of the four gaps. */
export function gapIds(which: Which): readonly string[] {
  const ids = flangeBoxes(which);
  return ['up', 'across', 'down', 'back'].map((key) => ids.gap(key));
}

/**
 * The plane of the gaps at one flange.
 *
 * @param which - the flange
 * @param subject - readings and layout
 * @returns the plane; nothing where a gap or the size of the face is missing
 */
export function gapsAt(which: Which, { review, readings }: FieldSubject): FaceGaps | undefined {
  const nozzle = review.layout.nozzles[which];
  const { face } = faceDiameters(review, nozzle.point);
  const four = numbersIn(readings, gapIds(which));
  if (four === undefined || face === undefined) return undefined;
  const [up = 0, across = 0, down = 0, back = 0] = four;
  return faceGaps({ up, across, down, back }, face, nozzleAxes(nozzle.axis));
}

/** How far the mean gap is from the gasket's thickness; positive is too wide [m]. */
export function gapBeyondGasket(which: Which, subject: FieldSubject): number | undefined {
  const gasket = numberIn(subject.readings, flangeBoxes(which).gasket);
  const gaps = gapsAt(which, subject);
  return gasket === undefined || gaps === undefined ? undefined : gaps.mean - gasket;
}
