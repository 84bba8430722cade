/**
 * What a thing that nobody stated may be, where a competent engineer would call it possible in building services: not the
 * worst anywhere, and not the best. Nothing here is a limit. No standard was found that prints such ranges; what each
 * rests on stands beside it.
 */
import type { Citation, Confidence } from '../../sources/index.js';

/** Least stiffness, or least natural frequency; the other end is rigid. Friction goes from none to its largest. */
export interface Reach {
  /** [N/m], [N·m/rad], [Hz] or [-] */
  readonly end: number;
  readonly citation: Citation;
}

const POUND_PER_INCH = 4.4482216152605 / 0.0254;
const INCH_POUND = 4.4482216152605 * 0.0254;

const practice = (clause: string, confidence: Confidence = 'common practice'): Citation => ({
  source: 'common-practice',
  clause,
  confidence,
});

/** Steel or strut that pipes hang on or are guided by: a trapeze of 24 in of strut channel comes to 18 600 lb/in. */
const hung: Reach = {
  end: 10_000 * POUND_PER_INCH,
  citation: practice(
    'structure behind pipe supports: 10 kip/in (1.75 kN/mm) or more, from 48EI/L³ of light steel',
  ),
};

/** Floors under rests, stands and bases: 1000 lb sinks a slab by less than 0.02 in. */
const stood: Reach = {
  end: 50_000 * POUND_PER_INCH,
  citation: practice('floor under stands and bases: 50 kip/in (8.8 kN/mm) or more'),
};

/** Anchors: of 50 kip/in and 10⁷ in·lb/rad; hand work takes a stiff one at 10⁶ lb/in and 10⁸ to 10⁹ in·lb/rad. */
const anchored: Reach = {
  end: 50_000 * POUND_PER_INCH,
  citation: practice('anchor in building structure: 50 kip/in (8.8 kN/mm) or more', 'memory'),
};
const anchoredTurning: Reach = {
  end: 1e7 * INCH_POUND,
  citation: practice('anchor against turning: 10⁷ in·lb/rad (1130 kN·m/rad) or more', 'memory'),
};

/** Steel on steel is usually taken at 0.3; tests with plates gave 0.5, rusty ones more; nothing holds at all times. */
const friction: Reach = {
  end: 0.5,
  citation: practice('friction of steel on steel or concrete: none to 0.5, usually taken as 0.3'),
};

/** Natural frequency of a motor on its bracket: 40 to 80 Hz are usual up to this power, 25 Hz and more above. */
const bracket: Reach = {
  end: 40,
  citation: practice('motor on its bracket, casing held: 40 Hz or more up to 75 kW (100 hp)', 'memory'),
};
const largeBracket: Reach = {
  end: 25,
  citation: practice('motor on its bracket, casing held: 25 Hz or more above 75 kW (100 hp)', 'memory'),
};
/** A motor bolted to the casing without a bracket between. */
const closeCoupled: Reach = {
  end: 60,
  citation: practice('motor bolted to the casing: 60 Hz or more', 'memory'),
};
/** Power up to which a motor counts as small [W]. */
const SMALL_MOTOR = 75_500;

/** A rigid grooved joint may bend as much as this many diameters of its pipe do [-]. */
const gripDiameters: Reach = {
  end: 5,
  citation: practice(
    'grooved joint of the rigid type: as stiff as 5 diameters of its pipe, or more',
    'memory',
  ),
};
/** A flexible one, bending and turning freely by its type, grips with up to a twentieth of that [-]. */
const looseGrip: Reach = {
  end: 1 / 20,
  citation: practice('grooved joint of the flexible type: free, or up to 1/20 of a rigid one', 'memory'),
};

export const ranges = {
  hung,
  stood,
  anchored,
  anchoredTurning,
  friction,
  bracket,
  largeBracket,
  closeCoupled,
  gripDiameters,
  looseGrip,
} as const;

/**
 * What the natural frequency of a motor on its bracket is at least.
 *
 * @param pump - how it is built, and power of the motor [W]
 * @returns frequency [Hz] with its source
 */
export function bracketReach(pump: {
  readonly build: 'split-coupled' | 'close-coupled';
  readonly motor: { readonly power: number };
}): Reach {
  if (pump.build === 'close-coupled') return ranges.closeCoupled;
  return pump.motor.power > SMALL_MOTOR ? ranges.largeBracket : ranges.bracket;
}
