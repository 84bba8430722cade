/** A value of the installation that may be other than it was taken: by how much, and how it is known. Plain data. */
import type { Citation } from '../../sources/index.js';

/** How a value was obtained, from the surest to the least sure. */
export type Obtained =
  | 'weighed'
  | 'maker'
  | 'given'
  | 'catalogue'
  | 'computed'
  | 'handbook'
  | 'estimated'
  | 'assumed';

/** What an uncertainty varies. */
export type Varied =
  /** Masses: of the casing, of the motor, of one part by name, or of a kind of part that is catalogued as one. */
  | { readonly kind: 'mass'; readonly owner: string }
  /** Liquid held, by the pump or by one part. */
  | { readonly kind: 'contents'; readonly owner: string }
  | { readonly kind: 'spring-rate'; readonly mark: string }
  | { readonly kind: 'spring-load'; readonly mark: string }
  /** Centre of gravity of pump and motor off the shaft. */
  | { readonly kind: 'centre'; readonly way: 'east' | 'north' }
  /** Stiffness of a joint that is not rigid. */
  | { readonly kind: 'joint-stiffness'; readonly owner: string }
  /** Stiffness of the pipe beyond an end that continues. */
  | { readonly kind: 'pipe-beyond'; readonly owner: string }
  /** An anchored end that turns freely after all. */
  | { readonly kind: 'end-turns'; readonly owner: string };

/** A value with its limits: rectangular between them, as nothing more is known. */
export interface Uncertainty {
  /** `mass of motor`; unique. */
  readonly id: string;
  /** Trade words: `weight of the motor`. */
  readonly what: string;
  readonly varied: Varied;
  /**
   * How the value moves with an amount s from −1 to 1: `share` v (1 + h s), `factor` v (1 + h)^s, `shift` v + h s, with h
   * the half width; `alternative` is there (1) or not (0), and is no part of a band.
   */
  readonly moves: 'share' | 'factor' | 'shift' | 'alternative';
  /** Half width: a share [-], or a distance [m]. */
  readonly half: number;
  /** Value taken where it is one number: mass [kg], volume [m³], load [N], rate [N/m], distance [m]. */
  readonly taken?: number;
  readonly unit: 'kg' | 'kg/m' | 'm³' | 'N' | 'N/m' | 'm' | '-';
  readonly obtained: Obtained;
  /** Where the half width comes from. */
  readonly citation: Citation;
  /** Path of the file, where the value stands or is missing. */
  readonly path?: string;
}

/** Standard uncertainty of a rectangular distribution of half width 1: 1/√3 [-]. @source gum */
export const STANDARD_OF_RECTANGLE = 1 / Math.sqrt(3);

/** Standard uncertainties either side in a band; about 95 % where several uncertainties of one size add up [-]. @source gum */
export const COVERAGE = 2;

/**
 * The value of an uncertainty at an amount.
 *
 * @param uncertainty - the uncertainty
 * @param amount - from −1 to 1 [-]
 * @returns value in the unit of the uncertainty; undefined where it is not one number
 */
export function valueAt(uncertainty: Uncertainty, amount: number): number | undefined {
  const { taken, moves, half } = uncertainty;
  if (taken === undefined || moves === 'alternative') return undefined;
  return moves === 'shift' ? taken + half * amount : taken * factorAt(uncertainty, amount);
}

/**
 * What an amount multiplies a value by.
 *
 * @param uncertainty - moves by share or factor
 * @param amount - from −1 to 1 [-]
 * @returns factor [-]
 */
export function factorAt({ moves, half }: Uncertainty, amount: number): number {
  return moves === 'factor' ? (1 + half) ** amount : 1 + half * amount;
}
