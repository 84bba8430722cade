/** The sideways load, and how far an occasional load may take the stress. */
import { seismicCoefficient } from '../../catalog/index.js';
import type { Citation } from '../../sources/index.js';
import type { Limits, Sourced } from '../installation.js';
import type { Path } from '../pending-issue.js';
import type { FileContent } from '../schema/file-schema.js';
import { assumed, computed, given, givenBy, type InputContext, placeholder } from './input-context.js';

type FileLimits = NonNullable<FileContent['limits']>;
type FileLateral = NonNullable<FileLimits['lateral']>;
type Code = Limits['stress']['code'];

const LATERAL: Path = ['limits', 'lateral'];
const FACTOR: Path = ['limits', 'pipe-stress', 'occasional-factor'];

/** What each code allows of an occasional load over the allowable stress [-]: the factor taken, and its largest. */
const occasional: Readonly<
  Record<Code, { readonly taken: number; readonly most: number; readonly citation: Citation }>
> = {
  'B31.9': {
    taken: 1.33,
    most: 1.33,
    citation: { source: 'asme-b31.9', clause: 'para 902.3.3', confidence: 'read' },
  },
  'B31.1': {
    taken: 1.15,
    most: 1.2,
    citation: {
      source: 'asme-b31.1',
      clause: 'para 102.2.4: 1.15 for 8 h at a time and 800 h a year, 1.20 for 1 h and 80 h',
      confidence: 'memory',
    },
  },
};

/**
 * The sideways load; none where the file says nothing of it.
 *
 * @param reading - where issues and assumptions go [-]
 * @param file - content of `limits` [-]
 * @param occasionalFactor - how far an occasional load may take the stress over the allowable [-]
 * @returns coefficient of gravity [-] and occasional factor [-], or nothing
 */
export function resolveLateral(
  reading: InputContext,
  file: FileContent['limits'],
  occasionalFactor: Sourced,
): Pick<Limits, 'lateral'> {
  if (!file?.lateral) return {};
  return { lateral: { coefficient: coefficientOf(reading, file.lateral), occasionalFactor } };
}

function coefficientOf(reading: InputContext, file: FileLateral): Sourced {
  const { coefficient, source } = file;
  const formula = file['asce-7'];
  if (formula) {
    if (coefficient !== undefined)
      reading.report('input.lateral-twice', [...LATERAL, 'coefficient'], {}, 'key');
    else if (source !== undefined)
      reading.report('input.source-of-formula', [...LATERAL, 'source'], {}, 'key');
    return formulaCoefficient(reading, formula);
  }
  if (coefficient === undefined) {
    reading.report('input.missing', [...LATERAL, 'coefficient'], { key: 'coefficient' }, 'holder');
    return placeholder;
  }
  if (source === undefined)
    reading.report('input.missing', [...LATERAL, 'source'], { key: 'source' }, 'holder');
  return givenBy(coefficient, [...LATERAL, 'coefficient'], source ?? '');
}

function formulaCoefficient(reading: InputContext, file: NonNullable<FileLateral['asce-7']>): Sourced {
  const { value, byFormula, least, most, citation } = seismicCoefficient({
    acceleration: file.sds,
    importance: file.importance,
    heightRatio: file['height-ratio'],
    amplification: file.ap,
    response: file.rp,
  });
  const print = (number: number): string => reading.print(number, 'ratio');
  const { ap, sds, rp, importance } = file;
  const how = `0.4 × ${ap} × ${sds} × (1 + 2 × ${file['height-ratio']}) / (${rp} / ${importance}) = ${print(byFormula)}`;
  const held = `at least ${print(least)}, at most ${print(most)} of the weight; strength level`;
  return computed(value, `${how}, ${held}`, {
    ...citation,
    clause: `${citation.clause}, 7-${file.edition}`,
  });
}

/**
 * How far a sideways load or a start may take the stress over the allowable.
 *
 * @param reading - where issues and assumptions go [-]
 * @param own - factor of the file [-]
 * @param code - code of the pipe stresses [-]
 * @returns the factor [-]
 */
export function resolveOccasionalFactor(reading: InputContext, own: number | undefined, code: Code): Sourced {
  const { taken, most, citation } = occasional[code];
  if (own !== undefined) {
    if (own > most)
      reading.warn('input.occasional-over-code', FACTOR, {
        found: reading.print(own, 'ratio'),
        code,
        most: reading.print(most, 'ratio'),
      });
    return given(own, FACTOR);
  }
  reading.assume(FACTOR, {
    what: 'factor on the allowable stress for occasional loads',
    value: reading.print(taken, 'ratio'),
    citation,
    effect: 'Allowable stress while the motor starts, and beside a sideways load',
  });
  return assumed(taken, FACTOR);
}
