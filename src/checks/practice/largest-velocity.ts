import { citationOf } from '../../analysis/citation-of.js';
import { courseOf, type Side } from '../../analysis/pipes/line-course.js';
import type { Subject } from '../../analysis/subject.js';
import type { PipeSection, Sourced } from '../../input/installation.js';
import type { Citation } from '../../sources/index.js';
import type { Demand } from '../define-check.js';

/** Where the liquid is fastest. */
export interface FastestPipe {
  readonly section: PipeSection;
  /** [m/s] */
  readonly velocity: number;
}

/**
 * The narrowest pipe of one side before the flow parts at a tee, and the velocity in it at the duty.
 *
 * @param subject - installation and layout
 * @param side - side of the pump
 * @returns section and velocity [m/s]
 */
export function fastestPipe(subject: Subject, side: Side): FastestPipe {
  const course = courseOf(subject, side);
  const tee = course.findIndex(({ part }) => part.kind === 'tee');
  const whole = tee < 0 ? course : course.slice(0, tee);
  const sections = [subject.layout.nozzles[side].section, ...whole.map(({ part }) => part.section)];
  const speeds = sections.map((section) => {
    const bore = section.outsideDiameter - 2 * section.wall;
    return { section, velocity: subject.installation.pump.duty.flow / ((Math.PI / 4) * bore ** 2) };
  });
  return speeds.reduce((most, next) => (next.velocity > most.velocity ? next : most));
}

/**
 * The velocity of one side held against a limit.
 *
 * @param subject - installation and layout
 * @param side - side of the pump
 * @param limit - given limit [m/s]
 * @param otherwise - grounds where the limit was assumed
 * @returns demand
 */
export function velocityDemand(
  subject: Subject,
  side: Side,
  limit: Sourced | undefined,
  otherwise: Citation,
): Demand {
  const { section, velocity } = fastestPipe(subject, side);
  return {
    kind: 'compared',
    demand: velocity,
    limit: limit?.value,
    data: { pipe: section.name },
    ...(limit !== undefined && { basis: citationOf(limit, otherwise), comparison: false }),
  };
}
