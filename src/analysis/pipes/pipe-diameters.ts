/** Distances along the pipe that are counted in diameters: straight pipe before the suction, pump to check valve. */
import { nominalInches } from '../../catalog/index.js';
import type { ElbowPart, Part } from '../../input/installation.js';
import type { PlacedPart } from '../../model/layout/place-parts.js';
import { cross, dot, norm } from '../../model/vector.js';
import type { Subject } from '../subject.js';
import { courseOf, isCheckValve, type Side } from './line-course.js';

const METRES_PER_INCH = 0.0254;
/** Within so many diameters a second elbow adds to the swirl of the first [-]. */
const TOGETHER = 5;
const SAME_PLANE = 1e-3;

/** The straight pipe of one side and what ends it. */
export interface StraightRun {
  /** Length from the face of the port [m]. */
  readonly length: number;
  /** Nominal size of the port [m]. */
  readonly diameter: number;
  /** What ends it; absent where the line as described ends first. */
  readonly by?: PlacedPart;
  /** What that does to the flow: `elbow`, `two elbows out of plane`. */
  readonly disturbs: string;
}

/**
 * Size a run is counted in: the nominal size of the port, or the bore of the pipe where the size is no standard one.
 *
 * @param subject - installation and layout
 * @param side - side of the pump
 * @returns diameter [m]
 */
export function portDiameter({ layout }: Subject, side: Side): number {
  const { nps, section } = layout.nozzles[side];
  const inches = nominalInches(nps);
  return inches === undefined ? section.outsideDiameter - 2 * section.wall : inches * METRES_PER_INCH;
}

/**
 * Straight pipe between the suction port and the first part that disturbs the flow.
 *
 * @param subject - installation and layout
 * @returns length, size and what ends it; undefined where there is no line
 */
export function suctionRun(subject: Subject): StraightRun | undefined {
  return straightRunFrom(courseOf(subject, 'suction'), portDiameter(subject, 'suction'));
}

/**
 * Straight pipe along a course from where it starts.
 *
 * @param course - parts in walking order
 * @param diameter - size it is counted in [m]
 * @returns length, size and what ends it; undefined for an empty course
 */
export function straightRunFrom(course: readonly PlacedPart[], diameter: number): StraightRun | undefined {
  const start = course[0]?.start;
  if (start === undefined) return undefined;
  const at = course.findIndex(({ part }) => disturbs(part));
  const by = course[at];
  if (by === undefined) {
    const length = (course.at(-1)?.end ?? start) - start;
    return { length, diameter, disturbs: 'nothing described' };
  }
  return {
    length: by.start - start,
    diameter,
    by,
    disturbs: disturbance(by, course.slice(at + 1), diameter),
  };
}

/** Pipe, flanges, joints and what only hangs on the pipe leave the flow as it is. */
function disturbs(part: Part): boolean {
  return (
    part.kind === 'elbow' ||
    part.kind === 'tee' ||
    part.kind === 'reducer' ||
    part.kind === 'valve' ||
    part.kind === 'suction-diffuser'
  );
}

function disturbance(by: PlacedPart, beyond: readonly PlacedPart[], diameter: number): string {
  const { part } = by;
  switch (part.kind) {
    case 'elbow': {
      const next = beyond.find((step) => disturbs(step.part));
      const isNear = next !== undefined && next.start - by.end < TOGETHER * diameter;
      if (!isNear || next.part.kind !== 'elbow') return 'elbow';
      return isOutOfPlane(by, part, next, next.part) ? 'two elbows out of plane' : 'two elbows in one plane';
    }
    case 'valve':
      return `${part.valve} valve`.replace(/(valve|strainer|check) valve$/u, '$1');
    case 'suction-diffuser':
      return 'suction diffuser';
    default:
      return part.kind;
  }
}

function isOutOfPlane(first: PlacedPart, one: ElbowPart, second: PlacedPart, two: ElbowPart): boolean {
  const planes = [cross(first.directionIn, one.turn), cross(second.directionIn, two.turn)] as const;
  const sizes = norm(planes[0]) * norm(planes[1]);
  return Math.abs(dot(planes[0], planes[1])) < sizes * (1 - SAME_PLANE);
}

/** How far a check valve on the discharge stands from the pump. */
export interface CheckValveDistance {
  readonly name: string;
  /** From the face of the port to its near end [m]. */
  readonly distance: number;
  /** Nominal size of the port [m]. */
  readonly diameter: number;
}

/**
 * The check valves on the discharge with their distances.
 *
 * @param subject - installation and layout
 * @returns valves in walking order
 */
export function checkValveDistances(subject: Subject): readonly CheckValveDistance[] {
  const diameter = portDiameter(subject, 'discharge');
  return courseOf(subject, 'discharge')
    .filter(({ part }) => isCheckValve(part))
    .map(({ part, start }) => ({ name: part.name, distance: start, diameter }));
}
