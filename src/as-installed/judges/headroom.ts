import { numberIn } from '../../readings/read-box.js';
import { headroomLimit } from '../../report/limits/room.js';
import type { Judge } from '../judge.js';

/** The motor can be drawn: nothing came to hang over it since the layout. */
export const headroom: Judge = {
  id: 'headroom',
  title: 'Clear height over the motor',
  part: 'access',
  trade: 'engineer',
  compare: ({ readings, review }) => [
    {
      kind: 'measured',
      at: 'motor',
      boxes: ['access.over-motor'],
      demand: numberIn(readings, 'access.over-motor'),
      measured: 'distance',
      limit: headroomLimit(review),
    },
  ],
};
