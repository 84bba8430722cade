import { IN_SIGHT, IN_SIGHT_CITATION } from '../../catalog/index.js';
import { disconnectDistance as predicted } from '../../checks/electrical/disconnect-in-sight.js';
import { numberIn } from '../../readings/read-box.js';
import type { Judge } from '../judge.js';

/** The disconnect is near enough to be watched by who works on the coupling. */
export const disconnectDistance: Judge = {
  id: 'disconnect-distance',
  title: 'Distance of the disconnect',
  part: 'access',
  trade: 'electrician',
  compare: ({ readings, review, asked }) =>
    asked.has('access.disconnect')
      ? [
          {
            kind: 'measured',
            at: 'disconnect',
            boxes: ['access.disconnect'],
            demand: numberIn(readings, 'access.disconnect'),
            measured: 'distance',
            expected: predicted(review),
            limit: { value: IN_SIGHT, measured: 'distance', words: 'at most', citation: IN_SIGHT_CITATION },
          },
        ]
      : [],
};
