/** The margin a natural frequency keeps from running speed. */
import { citationOf } from '../../analysis/citation-of.js';
import type { Installation } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';

/** A share of the exciting frequency, with its source. */
export interface KnockMargin {
  /** [-] */
  readonly share: number;
  readonly citation: Citation;
  /** True for a margin that nobody has asked for here. */
  readonly isPublished: boolean;
}

const GUIDE: Citation = {
  source: 'ufgs-15131a',
  clause: 'no natural frequency within 25 % of running speed',
  confidence: 'read',
};

/**
 * The margin of the file; else that of a public guide specification, as a comparison.
 *
 * @param installation - limits
 * @returns share of the exciting frequency [-]
 */
export function knockMargin({ limits }: Installation): KnockMargin {
  const given = limits.frequencyMargin;
  return given === undefined
    ? { share: 0.25, citation: GUIDE, isPublished: true }
    : { share: given.value, citation: citationOf(given, GUIDE), isPublished: false };
}
