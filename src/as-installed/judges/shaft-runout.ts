import { numberIn } from '../../readings/read-box.js';
import { siteLimit } from '../../readings/site-limit.js';
import { shaftRunoutLimit } from '../../report/limits/coupling.js';
import type { Judge } from '../judge.js';

/** The shaft runs true above the seal. */
export const shaftRunout: Judge = {
  id: 'shaft-runout',
  title: 'Runout of the shaft at the seal',
  part: 'coupling',
  trade: 'millwright',
  compare: ({ readings, write }) => [
    {
      kind: 'measured',
      at: 'shaft above the seal',
      boxes: ['coupling.runout'],
      demand: numberIn(readings, 'coupling.runout'),
      measured: 'gap',
      limit: siteLimit(readings, 'coupling.runout-limit', 'gap') ?? shaftRunoutLimit(write.system),
    },
  ],
};
