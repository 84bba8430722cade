import type { TeePart } from '../../input/installation.js';

/**
 * Stress intensification of a tee, the same for run and branch.
 *
 *     i = 0.9 / h^(2/3), at least 1
 *     h = 3.1 t / r    welding tee to B16.9
 *     h = t / r        fabricated without reinforcement
 *     h = (t + p/2)^(5/2) / (r t^(3/2))   with a pad as thick as the run, p = t
 *
 * A grooved fitting has no value in the code: it is taken as fabricated, the larger of the two.
 *
 * @param run - outside diameter and wall of the run pipe [m]
 * @param make - how the tee is made
 * @returns stress intensification factor [-]
 * @source asme-b31.1 (appendix D, editions to 2018, memory)
 */
export function teeIntensification(
  run: { readonly outsideDiameter: number; readonly wall: number },
  make: TeePart['make'],
): number {
  const t = run.wall;
  const r = (run.outsideDiameter - t) / 2;
  const characteristic = {
    'welding tee': (3.1 * t) / r,
    fabricated: t / r,
    'reinforced fabricated': (t + t / 2) ** 2.5 / (r * t ** 1.5),
    'grooved fitting': t / r,
  }[make];
  return Math.max(1, 0.9 / characteristic ** (2 / 3));
}
