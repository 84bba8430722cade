import { numbersIn } from '../../readings/read-box.js';
import { unbalance } from '../../readings/unbalance.js';
import { CURRENT_UNBALANCE } from '../../report/limits/electrical.js';
import { PHASES } from '../../sheet/parts/electrical.js';
import type { Judge } from '../judge.js';

/** The three currents are alike. */
export const currentUnbalance: Judge = {
  id: 'current-unbalance',
  title: 'Current unbalance',
  part: 'electrical',
  trade: 'electrician',
  compare: ({ readings }) => {
    const boxes = PHASES.map((phase) => `electrical.amps-${phase}`);
    const read = numbersIn(readings, boxes);
    return [
      {
        kind: 'measured',
        at: 'motor',
        boxes,
        demand: read && unbalance(read),
        measured: 'share',
        limit: CURRENT_UNBALANCE,
        expected: 0,
      },
    ];
  },
};
