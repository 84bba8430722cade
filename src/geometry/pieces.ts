import { EngineError } from '../issues/issue.js';
import type { ConvexSolid, Run, Solid } from './solid.js';

/**
 * The convex solids that a solid is made of.
 *
 * @param solid - any solid [m]
 * @returns one or more convex solids [m]
 * @throws EngineError `geometry.not-a-solid` when a run has no point or a group no piece
 */
export function piecesOf(solid: Solid): readonly ConvexSolid[] {
  if (solid.kind !== 'run' && solid.kind !== 'group') return [solid];
  const pieces = solid.kind === 'run' ? capsulesOf(solid) : solid.pieces;
  if (pieces.length === 0) throw new EngineError('geometry.not-a-solid', { kind: solid.kind });
  return pieces;
}

function capsulesOf({ path, radius }: Run): readonly ConvexSolid[] {
  return path.flatMap((from, index): readonly ConvexSolid[] => {
    const to = path[index + 1];
    if (to !== undefined) return [{ kind: 'capsule', from, to, radius }];
    return path.length === 1 ? [{ kind: 'capsule', from, to: from, radius }] : [];
  });
}
