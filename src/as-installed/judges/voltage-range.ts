import { numberIn, numbersIn } from '../../readings/read-box.js';
import { VOLTAGE_RANGE } from '../../sheet/limits/electrical.js';
import { PAIRS } from '../../sheet/parts/electrical.js';
import type { Judge } from '../judge.js';

/** The voltage is near the rated one: that of the file, else that of the plate. */
export const voltageRange: Judge = {
  id: 'voltage-range',
  title: 'Voltage against rated',
  part: 'electrical',
  trade: 'electrician',
  blocksStart: false,
  compare: ({ readings, review }) => {
    const boxes = PAIRS.map((pair) => `electrical.volts-${pair}`);
    const read = numbersIn(readings, boxes);
    const rated =
      review.installation.pump.motor.voltage?.value ?? numberIn(readings, 'identity.motor-voltage');
    const farthest = (at: number) =>
      read?.reduce((worst, value) => (Math.abs(value - at) > Math.abs(worst - at) ? value : worst));
    const worst = rated === undefined ? read?.[0] : farthest(rated);
    return [
      {
        kind: 'measured',
        at: 'supply',
        boxes,
        demand: worst === undefined ? undefined : Math.abs(worst - (rated ?? 0)),
        read: worst,
        expected: rated,
        measured: 'voltage',
        limit:
          rated === undefined
            ? undefined
            : { ...VOLTAGE_RANGE, value: VOLTAGE_RANGE.value * rated, measured: 'voltage' },
        noLimit: 'fieldwork.no-rated-voltage',
      },
    ];
  },
};
