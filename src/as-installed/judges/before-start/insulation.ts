import { numberIn } from '../../../readings/read-box.js';
import { insulationAt40, LEAST_INSULATION, windingInsulation } from '../../../report/limits/insulation.js';
import type { Judge } from '../../judge.js';

const [MOTOR, TEMPERATURE, CABLE] = [
  'before-start.motor-insulation',
  'before-start.winding-temperature',
  'before-start.cable-insulation',
];

/** The winding is dry and whole before power is put on: insulation to ground, brought to 40 °C. */
export const motorInsulation: Judge = {
  id: 'motor-insulation',
  title: 'Insulation of the winding, megohm at 40 °C',
  part: 'before-start',
  trade: 'electrician',
  compare: ({ readings, review }) => {
    const read = numberIn(readings, MOTOR);
    const temperature = numberIn(readings, TEMPERATURE);
    const { limit } = windingInsulation(review.installation);
    const known = read !== undefined && temperature !== undefined;
    return [
      {
        kind: 'measured',
        at: 'motor',
        boxes: [MOTOR, TEMPERATURE],
        // What no rule passes at any temperature needs no thermometer.
        demand: known ? insulationAt40(read, temperature) : read !== undefined && read < 1 ? read : undefined,
        read,
        measured: 'count',
        limit,
      },
    ];
  },
};

/** The cable is whole: less than the oldest rule passes for anything is no insulation. */
export const cableInsulation: Judge = {
  id: 'cable-insulation',
  title: 'Insulation of the cable, megohm',
  part: 'before-start',
  trade: 'electrician',
  compare: ({ readings }) => [
    {
      kind: 'measured',
      at: 'motor cable',
      boxes: [CABLE],
      demand: numberIn(readings, CABLE),
      measured: 'count',
      limit: LEAST_INSULATION,
    },
  ],
};
