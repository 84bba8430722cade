import { startMovements } from '../../../checks/motion/start-movement.js';
import { numberIn } from '../../../readings/read-box.js';
import { siteLimit } from '../../../readings/site-limit.js';
import type { FieldLimit } from '../../../report/limits/field-limit.js';
import { startMovementLimit } from '../../../report/limits/start.js';
import type { FieldSubject, Judge } from '../../judge.js';

/**
 * The limit for movement at the start: that of the file, else one written on the sheet, else what the review predicts for the
 * motor top, as guidance.
 *
 * @param subject - review and readings
 * @returns limit [m]; nothing where nothing is predicted either
 */
export function movementLimit({ review, readings }: FieldSubject): FieldLimit | undefined {
  const given =
    startMovementLimit(review.installation) ?? siteLimit(readings, 'start-up.movement-limit', 'gap');
  if (given !== undefined) return given;
  const most = Math.max(0, ...startMovements(review).map(({ movement }) => movement));
  if (!(most > 0)) return undefined;
  return {
    value: most,
    measured: 'gap',
    words: 'at most',
    citation: {
      source: 'common-practice',
      clause: 'the movement that the review predicts, as guidance',
      confidence: 'common practice',
    },
  };
}

/** The pipe moves no more at the start than the motor top may. */
export const pipeMovement: Judge = {
  id: 'pipe-movement',
  title: 'Movement of the pipe at the start',
  part: 'start-up',
  trade: 'commissioning agent',
  compare: (subject) => [
    {
      kind: 'measured',
      at: 'pipe',
      boxes: ['start-up.pipe'],
      demand: numberIn(subject.readings, 'start-up.pipe'),
      measured: 'gap',
      limit: movementLimit(subject),
    },
  ],
};
