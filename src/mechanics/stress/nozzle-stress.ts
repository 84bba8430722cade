/** Principal stress in a pump nozzle, and the combined rules for loads on both nozzles. */
import { EngineError } from '../../issues/issue.js';

/** Normal stress along a surface and the shear that acts with it. */
export interface PlaneStress {
  /** [Pa] */
  readonly normal: number;
  /** [Pa] */
  readonly shear: number;
}

/**
 * Largest principal stress under one normal stress and a shear stress.
 *
 *     σp = σ/2 + √(σ²/4 + τ²)
 *
 * @param stress - normal and shear stress [Pa]
 * @returns largest principal stress [Pa]
 * @source timoshenko-1 p. 299
 */
export function principalStress(stress: PlaneStress): number {
  return stress.normal / 2 + maximumShearStress(stress);
}

/**
 * Largest shear stress under one normal stress and a shear stress.
 *
 *     τmax = √(σ²/4 + τ²)
 *
 * @param stress - normal and shear stress [Pa]
 * @returns largest shear stress [Pa]
 * @source timoshenko-1 p. 299
 */
export function maximumShearStress(stress: PlaneStress): number {
  return Math.hypot(stress.normal / 2, stress.shear);
}

/** Section of a nozzle and what the pipe does to it. */
export interface NozzleSectionLoad {
  /** [m] */
  readonly outsideDiameter: number;
  /** [m] */
  readonly insideDiameter: number;
  /** Force along the nozzle, positive when the pipe pulls on it [N]. */
  readonly axialForce: number;
  /** Resultant of the two forces across the nozzle [N]. */
  readonly crossForce: number;
  /** Resultant of the two moments that bend the nozzle [N·m]. */
  readonly bendingMoment: number;
  /** Moment about the nozzle's own axis [N·m]. */
  readonly torsion: number;
}

/**
 * Normal and shear stress in a nozzle by the rule for pumps carried by their piping alone. Y is the nozzle axis.
 * The standard prints the constants rounded (1.27, 122, 61 in inches; 1.27, 10 200, 5100 in millimetres); here they
 * are exact, which gives up to 0.3 % more. Internal pressure is not included and the shear is force over area,
 * both as in the standard.
 *
 *     σ = 4 FY / [π (Do² − Di²)] + 32 Do √(MX² + MZ²) / [π (Do⁴ − Di⁴)]
 *     τ = 4 √(FX² + FZ²) / [π (Do² − Di²)] + 16 Do |MY| / [π (Do⁴ − Di⁴)]
 *
 * @param load - diameters [m], forces [N] and moments [N·m] at the flange face
 * @returns normal and shear stress [Pa]
 * @throws EngineError `mechanics.stress.not-a-nozzle` when the bore is not smaller than the outside; data: both [m]
 * @source api-610 annex F.2, memory
 */
export function nozzleStress(load: NozzleSectionLoad): PlaneStress {
  const { outsideDiameter: Do, insideDiameter: Di } = load;
  if (!(Di >= 0 && Do > Di)) {
    throw new EngineError('mechanics.stress.not-a-nozzle', { outsideDiameter: Do, insideDiameter: Di });
  }
  const area = (Math.PI * (Do ** 2 - Di ** 2)) / 4;
  const modulus = (Math.PI * (Do ** 4 - Di ** 4)) / (32 * Do);
  return {
    normal: load.axialForce / area + load.bendingMoment / modulus,
    shear: load.crossForce / area + Math.abs(load.torsion) / (2 * modulus),
  };
}
