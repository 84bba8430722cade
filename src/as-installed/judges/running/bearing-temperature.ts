import { numberIn } from '../../../readings/read-box.js';
import { siteLimit } from '../../../readings/site-limit.js';
import type { FieldLimit } from '../../../report/limits/field-limit.js';
import type { Judge } from '../../judge.js';

const CELSIUS = 273.15;
const custom = (celsius: number, clause: string): FieldLimit => ({
  value: CELSIUS + celsius,
  measured: 'temperature',
  words: 'at most',
  citation: { source: 'common-practice', clause, confidence: 'memory' },
});
/** Guidance on the housing, and a trip of greased motor bearings with the whole spread of the figures found [K]. */
const HOUSING = custom(82, 'bearing housing 82 °C (180 °F), figures from memory');
const TRIP = custom(115, 'trip of motor bearings 100 to 105 °C, and 10 K of spread, from memory');

/** The bearings run no hotter than their maker allows; without his figure, than is usual. */
export const bearingTemperature: Judge = {
  id: 'bearing-temperature',
  title: 'Temperature of the bearings',
  part: 'start-up',
  trade: 'millwright',
  compare: ({ readings }) => [
    {
      kind: 'measured',
      at: 'bearings',
      boxes: ['start-up.bearing'],
      demand: numberIn(readings, 'start-up.bearing'),
      measured: 'temperature',
      limit: siteLimit(readings, 'start-up.bearing-limit', 'temperature') ?? HOUSING,
    },
  ],
};

/** Hotter than every figure of a trip that was found: until the maker says otherwise it does not run. */
export const bearingHeat: Judge = {
  id: 'bearing-heat',
  title: 'Bearings past every trip',
  part: 'start-up',
  trade: 'millwright',
  compare: ({ readings }) =>
    siteLimit(readings, 'start-up.bearing-limit', 'temperature') === undefined
      ? [
          {
            kind: 'measured',
            at: 'bearings',
            boxes: ['start-up.bearing'],
            demand: numberIn(readings, 'start-up.bearing'),
            measured: 'temperature',
            limit: TRIP,
          },
        ]
      : [],
};
