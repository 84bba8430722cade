/** The line and the pump after moving, enlarged. */
import type { Installation } from '../../input/installation.js';
import type { ConditionResponse, Movement } from '../../mechanics/frame/response.js';
import type { Vec3 } from '../../model/conventions.js';
import type { Layout } from '../../model/layout/layout.js';
import { add, cross, scale, subtract } from '../../model/vector.js';
import type { Shape, Xy } from '../drawing.js';
import type { Box } from '../plane.js';
import { apart, arcPoints } from '../space.js';
import type { LinePicture } from './line-picture.js';
import { NOTHING } from './moved-places.js';
import { type Projection, project } from './projection.js';
import type { DrawnStroke } from './shortened-line.js';
import { line } from './tube.js';

/** Length on paper of the largest movement, about [1/72 in]. */
const LARGEST_ON_PAPER = 30;

/**
 * Round factor by which movements are enlarged over the picture: 1, 2 or 5 times a power of ten.
 *
 * @param largest - largest movement [m]
 * @param paperScale - points of paper per metre
 * @returns factor, at least 1
 */
export function exaggeration(largest: number, paperScale: number): number {
  if (!(largest > NOTHING)) return 1;
  const wanted = LARGEST_ON_PAPER / (largest * paperScale);
  if (wanted <= 1) return 1;
  const decade = 10 ** Math.floor(Math.log10(wanted));
  const step = [5, 2, 1].find((s) => s * decade <= wanted) ?? 1;
  return step * decade;
}

/** Centre line of a stroke as drawn. @param drawn - the stroke [m] @returns places in order [m] */
export function centreLine(drawn: DrawnStroke): readonly Vec3[] {
  return drawn.centre === undefined
    ? [drawn.from, drawn.to]
    : arcPoints({ ...drawn, centre: drawn.centre }, 10);
}

/** Pieces a moved stroke is drawn in. */
const STEPS = 10;

/** Absurd movements of a wrong input must not leave the paper. @param room - part of the paper the line is drawn in @param p - place [-] @returns place held near it [-] */
export const heldIn = (room: Box, p: Xy): Xy => [
  Math.min(room.right + 40, Math.max(room.left - 40, p[0])),
  Math.min(room.bottom + 16, Math.max(room.top - 16, p[1])),
];

/**
 * A stroke after moving: its ends' movements and rotations carried along it by the cubic of a beam; a bend likewise
 * along its arc.
 *
 * @param drawn - the stroke as drawn [m]
 * @param solved - the condition
 * @param factor - how much movements are enlarged [-]
 * @param projection - view and scale
 * @param room - part of the paper the line is drawn in
 * @returns dash-dot line
 */
export function movedLine(
  drawn: DrawnStroke,
  solved: Pick<ConditionResponse, 'movements'>,
  factor: number,
  projection: Projection,
  room: Box,
): Shape {
  const [a, b] = [solved.movements[drawn.stroke.points[0]], solved.movements[drawn.stroke.points[1]]];
  const still: Movement = { translation: [0, 0, 0], rotation: [0, 0, 0] };
  const [start, end] = [a ?? b ?? still, b ?? a ?? still];
  const length = apart(drawn.stroke.from, drawn.stroke.to);
  const run = subtract(drawn.stroke.to, drawn.stroke.from);
  const base =
    drawn.centre === undefined ? straightPoints(drawn) : arcPoints({ ...drawn, centre: drawn.centre }, STEPS);
  const points = base.map((place, i): Xy => {
    const t = i / STEPS;
    const slope = (rotation: Vec3): Vec3 =>
      drawn.centre === undefined && length > 0 ? cross(rotation, run) : [0, 0, 0];
    const shift = hermite(start.translation, end.translation, slope(start.rotation), slope(end.rotation), t);
    return heldIn(room, project(projection, add(place, scale(shift, factor))));
  });
  return line(points, 'dash-dot', 'none', false, 'accent');
}

function straightPoints(drawn: DrawnStroke): readonly Vec3[] {
  return Array.from({ length: STEPS + 1 }, (_, i) =>
    add(drawn.from, scale(subtract(drawn.to, drawn.from), i / STEPS)),
  );
}

/** Cubic with given values and slopes at both ends. */
function hermite(a: Vec3, b: Vec3, slopeA: Vec3, slopeB: Vec3, t: number): Vec3 {
  const [t2, t3] = [t * t, t * t * t];
  const sum = add(scale(a, 2 * t3 - 3 * t2 + 1), scale(b, 3 * t2 - 2 * t3));
  return add(sum, add(scale(slopeA, t3 - 2 * t2 + t), scale(slopeB, t3 - t2)));
}

/**
 * The pump moves as one body: its ports, and its axis up to the motor top.
 *
 * @param installation - pump and its outline [m]
 * @param layout - nozzles [m]
 * @param solved - the condition
 * @param factor - how much movements are enlarged [-]
 * @param picture - the picture it is drawn in
 * @param room - part of the paper the line is drawn in
 * @returns dash-dot lines
 */
export function movedPump(
  installation: Installation,
  layout: Layout,
  solved: Pick<ConditionResponse, 'movements'>,
  factor: number,
  picture: LinePicture,
  room: Box,
): readonly Shape[] {
  const { suction, discharge } = layout.nozzles;
  const [one, two] = [solved.movements[suction.point], solved.movements[discharge.point]];
  if (one === undefined || two === undefined) return [];
  const carried = (at: Vec3): Xy => {
    const arm = subtract(at, suction.at);
    const shift = add(one.translation, cross(one.rotation, arm));
    return heldIn(room, project(picture.projection, add(at, scale(shift, factor))));
  };
  const { position, outline } = installation.pump;
  const top: Vec3 = [position[0], position[1], position[2] + outline.motorTop.value];
  return [
    line(
      [carried(suction.at), carried(position), carried(discharge.at)],
      'dash-dot',
      'none',
      false,
      'accent',
    ),
    line([carried(position), carried(top)], 'dash-dot', 'none', false, 'accent'),
  ];
}
