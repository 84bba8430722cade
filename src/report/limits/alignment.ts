/** What two flange faces may be off before the bolts are pulled, and what the shaft may move while they are. */

import { citationOf } from '../../analysis/citation-of.js';
import { faceDiameters } from '../../analysis/nozzles/nozzle-faces.js';
import type { Subject } from '../../analysis/subject.js';
import type { Sourced, UnitSystem } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';
import type { FieldLimit } from './field-limit.js';

const MACHINERY = 'chapter 6, sections 4.6 to 4.8';
const machinery = (clause: string): Citation => ({
  source: 'api-686',
  clause: `${MACHINERY}, ${clause}`,
  confidence: 'read',
});
const assembly = (clause: string): Citation => ({
  source: 'asme-pcc-1',
  clause: `appendix E, ${clause}`,
  confidence: 'read',
});

/**
 * The numbers as both systems of units print them: a reading of 0.002 in meets 0.002 in, and one of 0.05 mm meets
 * 0.05 mm. Parallelism is fixed below a flange size, then so much per diameter, up to a cap [m], [-].
 */
const PRINTED = {
  us: {
    flange: 0.254,
    tilt: 0.254e-3,
    perDiameter: 1e-3,
    mostTilt: 0.762e-3,
    shaft: 0.0508e-3,
    holes: 3.175e-3,
  },
  si: { flange: 0.25, tilt: 0.25e-3, perDiameter: 1e-3, mostTilt: 0.75e-3, shaft: 0.05e-3, holes: 3e-3 },
} as const;

/**
 * Out of parallel that the machinery-installation practice allows at a flange.
 *
 * @param outside - outside diameter of the flange [m]
 * @param system - units in which the practice is read
 * @returns difference of the gap across the face [m]
 */
export function parallelismOf(outside: number, system: UnitSystem): number {
  const { flange, tilt, perDiameter, mostTilt } = PRINTED[system];
  return outside < flange ? tilt : Math.min(mostTilt, perDiameter * outside);
}

/** Tolerances at one flange; each is there or is not. */
export interface AlignmentLimits {
  readonly gap?: FieldLimit;
  readonly offset?: FieldLimit;
  readonly parallelism?: FieldLimit;
  readonly holes: FieldLimit;
  readonly shaft: FieldLimit;
}

/**
 * Tolerances at one flange of the pump: those of the file where it gives them; the published ones otherwise.
 *
 * @param subject - installation and layout
 * @param which - the flange
 * @param system - units they are read in; those of the review where not said
 * @returns limits with their sources [m]
 */
export function alignmentLimits(
  subject: Subject,
  which: 'suction' | 'discharge',
  system: UnitSystem = subject.installation.review.units,
): AlignmentLimits {
  const { limits, pump } = subject.installation;
  const { holes, shaft } = PRINTED[system];
  const { gap, offset, parallelism } = limits.fitUp ?? {};
  const { face } = faceDiameters(subject, subject.layout.nozzles[which].point);
  const outside = pump.ports[which].flange.outsideDiameter ?? face;
  const limit = (sourced: Sourced, published: Citation, words: FieldLimit['words']): FieldLimit => ({
    value: sourced.value,
    measured: 'gap',
    words,
    citation: citationOf(sourced, published),
  });
  const isGiven = parallelism !== undefined && parallelism.origin.kind !== 'assumed';
  const tilt: FieldLimit | undefined = isGiven
    ? limit(parallelism, machinery(''), 'at most')
    : outside === undefined
      ? undefined
      : {
          value: parallelismOf(outside, system),
          measured: 'gap',
          words: 'at most',
          citation: machinery('parallelism of the faces'),
        };
  return {
    ...(gap && { gap: limit(gap, machinery('gasket spacing'), 'within') }),
    ...(offset && { offset: limit(offset, assembly('centre lines'), 'within') }),
    ...(tilt && { parallelism: tilt }),
    holes: { value: holes, measured: 'gap', words: 'within', citation: assembly('bolt holes') },
    shaft: {
      value: shaft,
      measured: 'gap',
      words: 'at most',
      citation: machinery('movement of the shaft at bolt-up'),
    },
  };
}
