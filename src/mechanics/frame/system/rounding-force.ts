import type { PreparedFrame } from '../prepare-frame.js';

/**
 * Force under which a difference is rounding: a millionth of what the stiffest part would take if one end of it alone
 * moved as far as anything does. It counts only where a movement meets next to nothing, as of a line carried as a whole
 * or growing freely.
 *
 *     F = 10⁻⁶ k |u|,   and the work it would do, F |u|
 *
 * @param prepared - the frame; stiffness [N/m]
 * @param movements - six numbers a point [m], [rad]
 * @returns force [N], and its work over the furthest movement [N·m]
 * @source statics
 */
export function roundingForce(
  prepared: PreparedFrame,
  movements: Float64Array,
): { readonly force: number; readonly work: number } {
  let stiffest = 0;
  for (let e = 0; e < prepared.elementCount; e++) {
    for (const diagonal of [0, 7, 14]) stiffest = Math.max(stiffest, prepared.stiffness[36 * e + diagonal]!);
  }
  let furthest = 0;
  for (let i = 0; i < movements.length; i++) {
    if (i % 6 < 3) furthest = Math.max(furthest, Math.abs(movements[i]!));
  }
  const force = 1e-6 * stiffest * furthest;
  return { force, work: force * furthest };
}
