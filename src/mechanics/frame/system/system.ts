import type { ProfileFactor } from '../../../algebra/profile-factor.js';
import type { PreparedFrame } from '../prepare-frame.js';
import type { Clusters } from './cluster.js';
import type { Unknowns } from './unknowns.js';

/** Stiffness of the frame with one set of bodies and holds, factored. Shared by all conditions that have it. */
export interface System {
  readonly prepared: PreparedFrame;
  readonly clusters: Clusters;
  readonly unknowns: Unknowns;
  readonly factor: ProfileFactor;
  /** Scales of the unknowns that make the diagonal one. */
  readonly scale: Float64Array;
  /** 1-norm of the scaled stiffness [-]. */
  readonly norm: number;
}
