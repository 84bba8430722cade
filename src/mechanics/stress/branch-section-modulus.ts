import type { Tube } from '../../model/frame/frame.js';

/** A branch that is smaller than the run it leaves. */
export interface ReducedBranch {
  /** Pipe of the branch [m]. */
  readonly branch: Tube;
  /** Wall of the run [m]. */
  readonly runWall: number;
  /** Stress intensification factor of the tee i [-]. */
  readonly intensification: number;
}

/**
 * Section modulus with which the branch of a reduced outlet is judged where its centre-line meets that of the run: the
 * crotch breaks in whichever is weaker, the wall of the run or the thickened wall of the branch.
 *
 *     Z = π r² ts          r = (D − t) / 2, mean radius of the branch
 *     ts = the lesser of the wall of the run and i t
 *
 * A branch as large as its run is judged with the modulus of the pipe.
 *
 * @param reduced - pipe of the branch and wall of the run [m], intensification [-]
 * @returns effective section modulus [m³]
 * @source asme-b31.1 para 104.8.4, memory
 */
export function effectiveBranchModulus({ branch, runWall, intensification }: ReducedBranch): number {
  const { outsideDiameter: D, wall: t } = branch;
  const r = (D - t) / 2;
  return Math.PI * r ** 2 * Math.min(runWall, intensification * t);
}
