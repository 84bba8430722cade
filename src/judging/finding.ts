import type { Coded } from '../issues/issue.js';
import type { Citation } from '../sources/index.js';
import type { Outcome } from './compare-with-limit.js';

/** SI unit of demand and limit. */
export type CheckUnit = 'Pa' | 'N' | 'N·m' | 'm' | 'm/s' | 'W' | 'rad' | 'K' | 'Hz' | '-';

/** Symbols of a worked calculation in SI: `Pe = 16 * M / (pi * G^3) + 4 * F / (pi * G^2)`. */
export interface Calculation {
  /** Text that mathjs parses, evaluated by the report: what is printed is what is computed. */
  readonly formula: string;
  /** Left side symbol, for example `Pe`. */
  readonly symbol: string;
  /** Values put in, by symbol, SI, with unit and meaning. */
  readonly values: readonly {
    readonly symbol: string;
    readonly value: number;
    readonly unit: CheckUnit | 'kg' | 'kg/m' | 'N/m' | 'm²' | 'm³' | 'm⁴' | 'kg/m³' | '1/K';
    readonly meaning: string;
  }[];
  readonly unit: CheckUnit;
}

/** One thing compared with its limit: an outcome with its check, its place and its words. */
export interface Finding extends Outcome {
  /** Id of the check. */
  readonly check: string;
  readonly title: string;
  /** Trade word of the place: `H3`, `suction nozzle`, `elbow 2`. */
  readonly at: string;
  /** Governing condition, where there is one. */
  readonly condition?: string;
  readonly unit: CheckUnit;
  /** `at least` where the limit is the least required and the demand what is provided; else the most allowed. */
  readonly sense?: 'at least';
  /** True for a comparison that never decides the verdict of the review. */
  readonly comparison: boolean;
  readonly basis: Citation;
  /** Further grounds that the outcome rests on. */
  readonly rests?: readonly Citation[];
  /** True where the limit was chosen to keep to the demand, so that it is nearest to nothing. */
  readonly chosen?: true;
  /** Code of the reason, for `cannot-tell` and `does-not-apply`, or of the advice for `exceeds`; sentences in `issues`. */
  readonly reason?: Coded;
  readonly calculation?: Calculation;
  /** Only a test on site settles it, before the pump runs; no pass, and no fault of the layout. */
  readonly siteTest?: SiteTest;
}

/** A test on the installed pump: a knock on the motor with its frequency read, or its deflection under a known pull. */
export type SiteTest = 'knock test' | 'pull test';

/**
 * Whether a verdict rests on a value that is remembered and was not read.
 *
 * @param finding - finding
 * @returns true where it was judged, and its basis or a further ground is from memory
 */
export function restsOnMemory({ verdict, comparison, basis, rests = [] }: Finding): boolean {
  const isJudged = !comparison && (verdict === 'meets' || verdict === 'exceeds');
  return isJudged && [basis, ...rests].some(({ confidence }) => confidence === 'memory');
}
