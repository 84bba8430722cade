import { type JointClosing, jointClosing } from '../../mechanics/what-ifs/fit-up.js';
import { conditionOf } from '../conditions.js';
import type { Facts } from '../facts.js';
import { memoized } from '../memoized.js';
import { nozzleFaces, pumpBody } from './nozzle-faces.js';

/** What pulling the joints of both nozzles shut costs; a nozzle without a line is left out. */
export interface ClosedJoints {
  readonly joints: readonly JointClosing[];
}

/** Closing loads at both nozzles with the line filled. Worked out once for each review. */
export const closedJoints = memoized((subject: Facts): ClosedJoints => {
  const { frame } = subject.layout;
  const filled = conditionOf(subject, 'filled');
  const pump = pumpBody(subject);
  if (filled === undefined || pump === undefined) return { joints: [] };
  const [suction, discharge] = nozzleFaces(subject);
  return {
    joints: [
      jointClosing(frame, filled, pump.name, [suction, discharge]) ?? [],
      jointClosing(frame, filled, pump.name, [discharge, suction]) ?? [],
    ].flat(),
  };
});
