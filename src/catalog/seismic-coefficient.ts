import type { Citation } from '../sources/index.js';

/** Inputs of the formula. Every one is the engineer's own choice; no table of them is kept here. */
export interface SeismicQuery {
  /** Design acceleration of the site at short periods, SDS [-, in g]. */
  readonly acceleration: number;
  /** Importance factor of the part, Ip [-]. */
  readonly importance: number;
  /** Height of the attachment over that of the roof, z/h; the standard asks for no more than 1 [-]. */
  readonly heightRatio: number;
  /** Amplification factor of the part, ap [-]. */
  readonly amplification: number;
  /** Response modification factor of the part, Rp [-]. */
  readonly response: number;
}

/** Sideways force over weight, and what it was held between. */
export interface SeismicCoefficient {
  /** Fp / Wp, at strength level [-]. */
  readonly value: number;
  /** The formula alone, before its bounds [-]. */
  readonly byFormula: number;
  /** [-] */
  readonly least: number;
  /** [-] */
  readonly most: number;
  readonly citation: Citation;
}

/**
 * Sideways force of an earthquake on a part of a building, over the weight of the part. Strength level: a code that
 * works with allowable stresses may take seven tenths of it.
 *
 *     Fp / Wp = 0.4 ap SDS (1 + 2 z/h) / (Rp / Ip)     at least 0.3 SDS Ip, at most 1.6 SDS Ip
 *
 * @param query - inputs of the formula [-]
 * @returns coefficient with its bounds [-]
 * @source asce-7 equations 13.3-1 to 13.3-3, editions 2010 and 2016
 */
export function seismicCoefficient(query: SeismicQuery): SeismicCoefficient {
  const { acceleration, importance, heightRatio, amplification, response } = query;
  const byFormula = (0.4 * amplification * acceleration * (1 + 2 * heightRatio)) / (response / importance);
  const least = 0.3 * acceleration * importance;
  const most = 1.6 * acceleration * importance;
  return {
    value: Math.min(Math.max(byFormula, least), most),
    byFormula,
    least,
    most,
    citation: {
      source: 'asce-7',
      clause: 'equations 13.3-1 to 13.3-3',
      confidence: 'two sources',
    },
  };
}
