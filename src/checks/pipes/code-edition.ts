import type { Subject } from '../../analysis/subject.js';
import { heldEdition, heldEditionsText } from '../../catalog/index.js';
import type { Citation } from '../../sources/index.js';
import type { Demand } from '../define-check.js';

/**
 * What stands in place of every demand of a code whose named edition is not held.
 *
 * @param subject - code and edition of the limits
 * @returns the one demand that cannot be told; nothing where the edition is held, or none is named
 */
export function editionNotHeld({ installation }: Subject): readonly Demand[] | undefined {
  const { stress } = installation.limits;
  if (heldEdition(stress) !== undefined) return undefined;
  const data = { code: stress.code, edition: stress.edition ?? '', held: heldEditionsText() };
  return [{ kind: 'cannot-tell', code: 'checks.stress.edition-not-held', data }];
}

const FACTORS: Citation = {
  source: 'asme-b31.1',
  clause: 'appendix D, editions to 2018',
  confidence: 'memory',
};

/**
 * What a stress rests on beside its allowable: the stress factor of the fitting, where it is not plain pipe.
 *
 * @param intensification - stress intensification factor i [-]
 * @returns citation of the factor, or none
 */
export function factorGrounds(intensification: number): readonly Citation[] {
  return intensification > 1 ? [FACTORS] : [];
}
