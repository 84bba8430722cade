/** Direction of a stroke, also of one without length. */
import type { Vec3 } from '../../model/conventions.js';
import type { Stroke } from '../../model/layout/layout.js';
import { cross, subtract } from '../../model/vector.js';
import { along, apart, directionOf } from '../space.js';

const SAME_PLACE = 1e-3;

/**
 * Direction of travel along a stroke. A flange that slips over the pipe has no length of its own: it lies as the
 * straight stroke does that meets it, or at right angles to the radius of the bend that does.
 *
 * @param stroke - the stroke [m]
 * @param strokes - all strokes [m]
 * @returns unit vector [-]
 */
export function strokeAxis(stroke: Stroke, strokes: readonly Stroke[]): Vec3 {
  if (apart(stroke.from, stroke.to) > SAME_PLACE) return directionOf(subtract(stroke.to, stroke.from));
  const meeting = strokes.filter(
    (s) =>
      apart(s.from, s.to) > SAME_PLACE &&
      (apart(s.from, stroke.from) < SAME_PLACE || apart(s.to, stroke.from) < SAME_PLACE),
  );
  const straight =
    meeting.find((s) => s.kind === 'straight' && s.role !== 'pump') ??
    meeting.find((s) => s.kind === 'straight');
  if (straight !== undefined) return directionOf(subtract(straight.to, straight.from));
  const [bend] = meeting;
  if (bend === undefined || bend.kind !== 'arc') return [0, 0, 1];
  const [start, end] = [subtract(bend.from, bend.centre), subtract(bend.to, bend.centre)];
  const here = apart(bend.from, stroke.from) < SAME_PLACE ? start : end;
  return directionOf(cross(cross(start, end), here));
}

/**
 * Start of a stroke as drawn: the second leg of a suction diffuser reaches back over the first one's width, so that
 * the corner of the body is closed.
 *
 * @param stroke - the stroke [m]
 * @param strokes - all strokes [m]
 * @returns place [m]; the stroke's own start for everything else
 */
export function closedStart(stroke: Stroke, strokes: readonly Stroke[]): Vec3 {
  if (stroke.kind !== 'straight' || stroke.role !== 'diffuser') return stroke.from;
  const first = strokes.find(
    (s) =>
      s !== stroke && s.kind === 'straight' && s.role === 'diffuser' && apart(s.to, stroke.from) < SAME_PLACE,
  );
  if (first === undefined) return stroke.from;
  return along(stroke.from, strokeAxis(stroke, strokes), -(first.diameter / 2) * DIFFUSER_BODY);
}

/** Body of a diffuser over the pipe it is made for [-]. */
export const DIFFUSER_BODY = 1.18;
