/** Factor of the weld along a pipe, for the stress around it. */

import type { Sourced } from '../installation.js';
import type { Path } from '../pending-issue.js';
import { assumed, catalogued, given, type InputContext } from './input-context.js';

const PATH: Path = ['limits', 'pipe-stress', 'joint-factor'];

/** Electric resistance welded pipe, the lower of the usual makes of steel pipe [-]. */
const RESISTANCE_WELDED = 0.85;

/**
 * The factor of the longitudinal weld: that of the file, 1 for drawn copper tube, and otherwise that of electric
 * resistance welded pipe, as an assumption.
 *
 * @param reading - where the assumption goes [-]
 * @param own - factor of the file [-]
 * @param materials - materials of the pipes [-]
 * @returns the factor [-]
 */
export function resolveJointFactor(
  reading: InputContext,
  own: number | undefined,
  materials: readonly string[],
): Sourced {
  if (own !== undefined) return given(own, PATH);
  if (materials.length > 0 && materials.every((material) => material === 'copper')) {
    const citation = { source: 'astm-b88', clause: 'drawn without a seam', confidence: 'memory' } as const;
    return catalogued({ value: 1, table: 'factor of the longitudinal weld', row: 'seamless tube', citation });
  }
  reading.assume(PATH, {
    what: 'factor of the weld along the pipe',
    value: reading.print(RESISTANCE_WELDED, 'ratio'),
    citation: {
      source: 'asme-b31.1',
      clause: 'appendix A, electric resistance welded, type E; seamless pipe has 1',
      confidence: 'memory',
    },
    effect: 'Allowable stress around the pipe from pressure, and nothing else',
  });
  return assumed(RESISTANCE_WELDED, PATH);
}
