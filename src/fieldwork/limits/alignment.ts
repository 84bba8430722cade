/** What two flange faces may be off before the bolts are pulled, and what the shaft may move while they are. */
import { citationOf } from '../../checks/citation-of.js';
import type { Subject } from '../../checks/finding.js';
import { faceDiameters } from '../../checks/nozzle-faces.js';
import type { Sourced } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';
import type { FieldLimit } from '../field-limit.js';

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

/** Flange size from which the tolerance of parallelism grows with the diameter: 250 mm [m]. */
const LARGE_FLANGE = 0.25;
/** Out of parallel allowed: fixed below that size, then so much per diameter, up to a cap [m], [-], [m]. */
const SMALL_TILT = 0.25e-3;
const TILT = 1e-3;
const MOST_TILT = 0.75e-3;
/** Movement of the shaft while the bolts are pulled [m]. */
const SHAFT = 0.05e-3;
/** Turn of the bolt holes [m]. */
const HOLES = 3e-3;

/**
 * Out of parallel that the machinery-installation practice allows at a flange.
 *
 * @param outside - outside diameter of the flange [m]
 * @returns difference of the gap across the face [m]
 */
export function parallelismOf(outside: number): number {
  return outside < LARGE_FLANGE ? SMALL_TILT : Math.min(MOST_TILT, TILT * outside);
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
 * @returns limits with their sources [m]
 */
export function alignmentLimits(subject: Subject, which: 'suction' | 'discharge'): AlignmentLimits {
  const { limits, pump } = subject.installation;
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
          value: parallelismOf(outside),
          measured: 'gap',
          words: 'at most',
          citation: machinery('parallelism of the faces'),
        };
  return {
    ...(gap && { gap: limit(gap, machinery('gasket spacing'), 'within') }),
    ...(offset && { offset: limit(offset, assembly('centre lines'), 'within') }),
    ...(tilt && { parallelism: tilt }),
    holes: { value: HOLES, measured: 'gap', words: 'within', citation: assembly('bolt holes') },
    shaft: {
      value: SHAFT,
      measured: 'gap',
      words: 'at most',
      citation: machinery('movement of the shaft at bolt-up'),
    },
  };
}
