import { startMovements } from '../../checks/motion/start-movement.js';
import { numberIn } from '../../readings/read-box.js';
import type { Judge } from '../judge.js';
import { movementLimit } from './running/pipe-movement.js';

/** The motor top moves no more at the start than the file allows. */
export const startMovementSeen: Judge = {
  id: 'start-movement',
  title: 'Movement of the motor top at the start',
  part: 'start-up',
  trade: 'commissioning agent',
  compare: (subject) => {
    const { readings, review } = subject;
    const moved = startMovements(review).map(({ movement }) => movement);
    return [
      {
        kind: 'measured',
        at: 'motor top',
        boxes: ['start-up.motor-top'],
        demand: numberIn(readings, 'start-up.motor-top'),
        measured: 'gap',
        limit: movementLimit(subject),
        ...(moved.length > 0 && { expected: Math.max(...moved) }),
      },
    ];
  },
};
