import { numbersIn } from '../../readings/read-box.js';
import { unbalance } from '../../readings/unbalance.js';
import { VOLTAGE_UNBALANCE } from '../../report/limits/electrical.js';
import { PAIRS } from '../../sheet/parts/electrical.js';
import type { Judge } from '../judge.js';

/** The three voltages are alike: one per cent of unbalance makes six to ten of current, and heats the motor. */
export const voltageUnbalance: Judge = {
  id: 'voltage-unbalance',
  title: 'Voltage unbalance',
  part: 'electrical',
  trade: 'electrician',
  compare: ({ readings }) => {
    const boxes = PAIRS.map((pair) => `electrical.volts-${pair}`);
    const read = numbersIn(readings, boxes);
    return [
      {
        kind: 'measured',
        at: 'supply',
        boxes,
        demand: read && unbalance(read),
        measured: 'share',
        limit: VOLTAGE_UNBALANCE,
        expected: 0,
      },
    ];
  },
};
