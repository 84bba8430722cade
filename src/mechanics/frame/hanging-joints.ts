import type { Frame } from '../../model/frame/frame.js';

/** What becomes of the joints when bodies are taken out. */
export interface JointsLeft {
  /** Joints that are still there, by their number. */
  readonly stands: readonly boolean[];
  /** Of those, the ones that hang from what stands at one of their ends: the point that is loose, and what carries it. */
  readonly hanging: readonly { readonly joint: number; readonly loose: string; readonly from: string }[];
}

/**
 * Which joints are left when bodies are removed, and which of them hang by one end.
 *
 * A joint bolted to what was taken out stays with the part that stands: its loose end hangs from the other one. It then
 * carries nothing but its own weight, which reaches that end with its full arm however soft the joint is, so that the
 * two ends are taken as one rigid piece: a joint that bends or turns freely would only droop by itself, and is no
 * reason to say that the line falls. As of any joint within one rigid part, the forces reported of it are its own weight.
 * Joints one behind the other hang from one another. A joint with both ends on
 * what was taken out goes with it.
 *
 * @param frame - the frame
 * @param removed - names of the bodies taken out
 * @returns joints that are left [-]
 * @source statics
 */
export function jointsLeft(frame: Frame, removed: ReadonlySet<string>): JointsLeft {
  const everyJoint = frame.joints.map(() => true);
  if (removed.size === 0) return { stands: everyJoint, hanging: [] };
  const loose = new Set(frame.bodies.flatMap(({ name, points }) => (removed.has(name) ? points : [])));
  const held = new Set(frame.members.flatMap(({ from, to }) => [from, to]));
  for (const { name, points } of frame.bodies) {
    // A lump on one point is carried by it and holds nothing.
    if (!removed.has(name) && points.length > 1) for (const point of points) held.add(point);
  }
  for (const { point } of frame.supports) if (!loose.has(point)) held.add(point);
  const stands = frame.joints.map(({ from, to }) =>
    [from, to].some((point) => held.has(point) || !loose.has(point)),
  );
  const hanging: JointsLeft['hanging'][number][] = [];
  const waiting = new Set(frame.joints.keys());
  for (let before = -1; before !== hanging.length; ) {
    before = hanging.length;
    for (const index of waiting) {
      const { from, to } = frame.joints[index]!;
      const [free] = [from, to].filter((point) => loose.has(point) && !held.has(point));
      if (stands[index] === false || free === undefined) continue;
      const other = free === from ? to : from;
      waiting.delete(index);
      hanging.push({ joint: index, loose: free, from: other });
      if (!held.has(other)) loose.add(other);
    }
  }
  return { stands, hanging };
}

/**
 * The point of a line that carries what is bolted to a body: the body's own point, or beyond joints that hang.
 *
 * @param frame - the frame
 * @param removed - names of the bodies taken out
 * @param point - point of one of them
 * @returns name of the point
 * @source statics
 */
export function carrierOf(frame: Frame, removed: readonly string[], point: string): string {
  const { hanging } = jointsLeft(frame, new Set(removed));
  return hanging.reduce((at, { loose, from }) => (loose === at ? from : at), point);
}
