/** What the insulation of a winding keeps to before power is put on, and how a reading is brought to one temperature. */
import type { Installation } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';
import type { FieldLimit } from './field-limit.js';

const WINDING = (clause: string): Citation => ({ source: 'ieee-43', clause, confidence: 'two sources' });

/** Controls and protections are tried by an approved plan before power is put on. */
export const CONTROLS_TESTED: Citation = {
  source: 'ufgs-15132a',
  clause: 'part 3.3, controls and protective circuits tested before power',
  confidence: 'read',
};

/** Least insulation of a random-wound winding, and of any below a thousand volts, at 40 °C [Mohm]. */
const LOW_VOLTAGE = 5;
/** Of a form-wound winding above that, made after about 1970 [Mohm]. */
const HIGH_VOLTAGE = 100;
/** Below it no rule passes any winding or cable: the oldest asks one megohm and one more a kilovolt [Mohm]. */
export const LEAST_INSULATION: FieldLimit = {
  value: 1,
  measured: 'count',
  words: 'at least',
  citation: { source: 'ieee-43', clause: 'below the oldest rule, kV + 1 Mohm', confidence: 'computed' },
};

/**
 * Least insulation of the motor's winding, brought to 40 °C, after one minute.
 *
 * @param installation - motor
 * @returns limit [Mohm]
 */
export function windingInsulation({ pump }: Installation): { readonly limit: FieldLimit } {
  const isHigh = (pump.motor.voltage?.value ?? 0) >= 1000;
  return {
    limit: {
      value: isHigh ? HIGH_VOLTAGE : LOW_VOLTAGE,
      measured: 'count',
      words: 'at least',
      citation: WINDING(isHigh ? 'form-wound, 100 Mohm at 40 °C' : 'below 1 kV, 5 Mohm at 40 °C'),
    },
  };
}

/** Forty degrees, to which readings are brought, and the step in which insulation halves [K]. */
const REFERENCE = 313.15;
const HALVES_IN = 10;

/**
 * Insulation at 40 °C from a reading at another temperature, thermoplastic form, which is the severer of the two for a cold winding:
 *
 *     R40 = R · 0.5^((40 − T) / 10)
 *
 * @param read - insulation as read [Mohm]
 * @param temperature - of the winding [K]
 * @returns insulation at 40 °C [Mohm]
 * @source ieee-43
 */
export function insulationAt40(read: number, temperature: number): number {
  return read * 0.5 ** ((REFERENCE - temperature) / HALVES_IN);
}
