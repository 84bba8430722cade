/** Which end of a flange is its face. */
import type { Stroke } from '../../model/layout/layout.js';
import { apart } from '../space.js';

const SAME_PLACE = 1e-3;

/**
 * The end of a flange that meets no pipe: its gasket.
 *
 * @param flange - the flange [m]
 * @param strokes - all strokes [m]
 * @returns `to` where pipe meets only its `from`, else `from`
 */
export function gasketEnd(flange: Stroke, strokes: readonly Stroke[]): 'from' | 'to' {
  const meetsPipe = (end: 'from' | 'to') =>
    strokes.some(
      (s) =>
        s !== flange &&
        (s.kind === 'arc' || s.role === 'pipe' || s.role === 'reducer') &&
        (apart(s.from, flange[end]) < SAME_PLACE || apart(s.to, flange[end]) < SAME_PLACE),
    );
  return meetsPipe('from') && !meetsPipe('to') ? 'to' : 'from';
}
