/** A stretch of speeds that a drive should pass and not stay in. */
export interface SpeedBand {
  /** [rad/s] */
  readonly from: number;
  /** [rad/s] */
  readonly to: number;
  /** Natural frequencies that make it, rising [Hz]. */
  readonly frequencies: readonly number[];
}

/** What a drive may do, and what it must keep away from. */
export interface LockOutCase {
  /** Natural frequencies [Hz]. */
  readonly frequencies: readonly number[];
  /** How often the set is pushed in one turn of the shaft: 1, 2, number of blades [-]. */
  readonly timesPerTurn: number;
  /** Margin as a share of the exciting frequency, below 1 [-]. */
  readonly margin: number;
  /** Speeds the drive may run at [rad/s]. */
  readonly speeds: { readonly lowest: number; readonly highest: number };
}

/**
 * Speeds within a drive's range at which a natural frequency lies nearer to the exciting one than the margin.
 *
 *     |f − k n| < m k n     →     f / (k (1 + m)) < n < f / (k (1 − m)),   n in turns a second
 *
 * @param asked - natural frequencies, times per turn, margin and range
 * @returns bands, rising and apart from each other
 * @source dynamics
 */
export function lockOutBands(asked: LockOutCase): readonly SpeedBand[] {
  const { timesPerTurn, margin, speeds } = asked;
  const bands: SpeedBand[] = [];
  for (const frequency of [...asked.frequencies].sort((a, b) => a - b)) {
    const speed = (2 * Math.PI * frequency) / timesPerTurn;
    const from = Math.max(speeds.lowest, speed / (1 + margin));
    const to = Math.min(speeds.highest, speed / (1 - margin));
    if (!(from < to)) continue;
    const last = bands[bands.length - 1];
    if (last === undefined || from > last.to) bands.push({ from, to, frequencies: [frequency] });
    else
      bands[bands.length - 1] = {
        from: last.from,
        to: Math.max(last.to, to),
        frequencies: [...last.frequencies, frequency],
      };
  }
  return bands;
}

/** One turn a minute [rad/s]. */
const TURN_A_MINUTE = Math.PI / 30;

/**
 * Ends of a band in whole turns a minute, outwards: what is set in a drive.
 *
 * @param band - exact band
 * @returns turns a minute, whole numbers
 * @source dynamics
 */
export function wholeTurns(band: Pick<SpeedBand, 'from' | 'to'>): {
  readonly from: number;
  readonly to: number;
} {
  return {
    from: Math.floor(band.from / TURN_A_MINUTE + 1e-6),
    to: Math.ceil(band.to / TURN_A_MINUTE - 1e-6),
  };
}
