/** Speed of the field of an induction motor, read from the speed on its nameplate. */
export interface FieldSpeed {
  readonly poles: number;
  /** Frequency of the supply [Hz]. */
  readonly frequency: number;
  /** [rad/s] */
  readonly synchronousSpeed: number;
  /** How far the shaft falls behind the field, as a share of its speed [-]. */
  readonly slip: number;
}

/** Slip at full load above which a speed is not taken for that of an induction motor on the mains [-]. */
const LARGEST_SLIP = 0.09;

/**
 * Number of poles and supply frequency that fit a nameplate speed: the field of 2, 4, 6 or 8 poles at 50 or 60 Hz
 * that the shaft follows most closely from below.
 *
 *     field speed = 4 π f / poles
 *
 * @param rating - full-load speed [rad/s]
 * @returns poles, frequency [Hz], field speed [rad/s] and slip [-]; undefined where none fits within 9 %
 * @source nema-mg-1
 */
export function synchronousSpeed(rating: { readonly speed: number }): FieldSpeed | undefined {
  const fields = [50, 60].flatMap((frequency) =>
    [2, 4, 6, 8].map((poles) => {
      const field = (4 * Math.PI * frequency) / poles;
      return { poles, frequency, synchronousSpeed: field, slip: 1 - rating.speed / field };
    }),
  );
  // A speed given as that of the field itself may sit a rounding above it.
  const fitting = fields.filter(({ slip }) => slip >= -1e-4 && slip <= LARGEST_SLIP);
  const best = fitting.sort((one, other) => one.slip - other.slip)[0];
  return best === undefined ? undefined : { ...best, slip: Math.max(0, best.slip) };
}
