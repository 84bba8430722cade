/** The frequency a motor is made for. */
import type { Citation } from '../../sources/index.js';
import type { FieldLimit } from './field-limit.js';

/** Frequencies of public supplies [Hz], and most slip at full load of the motors considered [-]. */
const SUPPLIES = [50, 60] as const;
const MOST_SLIP = 0.08;
const PAIRS_OF_POLES = [1, 2, 3, 4, 5, 6] as const;

/** Five per cent either way. */
export const FREQUENCY_RANGE: FieldLimit = {
  value: 0.05,
  measured: 'share',
  words: 'within',
  citation: {
    source: 'nema-mg-1',
    clause: 'part 12.44: frequency within five per cent of rated',
    confidence: 'two sources',
  } satisfies Citation,
};

/**
 * Supply that a full-load speed belongs to: the one whose field turns a little faster with some number of poles.
 *
 *     n_s = 2 pi f / p,   0 < 1 - n / n_s < 0.08
 *
 * @param speed - full-load speed [rad/s]
 * @returns frequency [Hz]; nothing where both or neither fit
 * @source dynamics
 */
export function ratedFrequency(speed: number): number | undefined {
  const fits = SUPPLIES.filter((frequency) =>
    PAIRS_OF_POLES.some((pairs) => {
      const slip = 1 - speed / ((2 * Math.PI * frequency) / pairs);
      return slip > 0 && slip < MOST_SLIP;
    }),
  );
  return fits.length === 1 ? fits[0] : undefined;
}
