/** What one person may lift by hand, by the published lifting equation. */

/** Load constant: 23 kg, printed as 51 lb [kg]. */
export const LOAD_CONSTANT = 23;

/** How a piece is lifted. Multipliers that are left out are one, as in the ideal posture. */
export interface HandLift {
  /** From the ankles to the hands, level [m]. */
  readonly horizontal: number;
  /** Height of the hands over the floor at the start [m]. */
  readonly vertical: number;
  /** How far it is raised or lowered [m]. */
  readonly travel: number;
  /** Turn of the body, frequency and grip, as multipliers [-]. */
  readonly asymmetry?: number;
  readonly frequency?: number;
  readonly grip?: number;
}

/** Bounds of the equation [m]: nearest and farthest reach, highest hands, least and largest travel. */
const NEAREST = 0.25;
const FARTHEST = 0.63;
const HIGHEST = 1.75;
const LEAST_TRAVEL = 0.25;
const MOST_TRAVEL = 1.75;
const KNUCKLE = 0.75;

/**
 * Recommended weight limit:
 *
 *     RWL = 23 kg × 0.25/H × (1 − 0.3 |V − 0.75|) × (0.82 + 0.045/D) × asymmetry × frequency × grip,  H, V, D in m
 *
 * Each multiplier is one at most; beyond the farthest reach, highest hands or largest travel the limit is nothing.
 *
 * @param lift - reach, height and travel [m]
 * @returns weight one person may lift, as mass [kg]
 * @source niosh-lifting
 */
export function recommendedWeight({ horizontal, vertical, travel, ...others }: HandLift): number {
  if (horizontal > FARTHEST || vertical > HIGHEST || vertical < 0 || travel > MOST_TRAVEL) return 0;
  const reach = NEAREST / Math.max(NEAREST, horizontal);
  const height = 1 - 0.3 * Math.abs(vertical - KNUCKLE);
  const distance = Math.min(1, 0.82 + 0.045 / Math.max(LEAST_TRAVEL, travel));
  const { asymmetry = 1, frequency = 1, grip = 1 } = others;
  return LOAD_CONSTANT * reach * height * distance * asymmetry * frequency * grip;
}
