import * as z from 'zod';
import { once } from '../once.js';
import { motorElectrical } from './electrical.js';
import { field, map, refuse } from './field.js';
import { exactlyOneKey } from './one-key.js';
import { offset } from './position.js';
import { motorPractice } from './practice.js';
import { quantity } from './quantity.js';
import { ratio } from './ratio.js';
import { bracket } from './structure.js';
import { known, weight, within } from './weight.js';

/** Ways of starting that need no number; the schema's own words, so that a slip can be told. */
const bareStarts = ['across the line', 'wye-delta'] as const;
type BareStart = (typeof bareStarts)[number];

const bareStart = once(() =>
  z
    .string()
    .meta({ enum: [...bareStarts] })
    .transform((found, context): BareStart => {
      const start = bareStarts.find((word) => word === found);
      return start ?? refuse(context, 'input.unknown-start', { found, words: bareStarts });
    }),
);

const ramp = once(() =>
  field(quantity('time', 'positive'), 'Time of the ramp from standstill to full speed', '12 s'),
);
const start = once(() =>
  exactlyOneKey(
    z.union([
      bareStart(),
      map({
        autotransformer: field(
          map({ tap: field(ratio({ most: 1 }), 'Voltage of the tap as a share of the line', '65 %') }),
          'Started through an autotransformer',
          { tap: '65 %' },
        ).optional(),
        'soft starter': field(
          map({
            'current-limit': field(
              ratio({ most: 20 }),
              'Limit of the current over full-load current',
              '300 %',
            ),
            ramp: ramp().optional(),
          }),
          'Started by an electronic starter with a limit of current',
          { 'current-limit': '300 %', ramp: '12 s' },
        ).optional(),
        'variable-speed drive': field(
          map({
            'torque-limit': field(ratio({ most: 10 }), 'Limit of the torque over full-load torque', '110 %'),
            ramp: ramp(),
          }),
          'Started and run by a variable-speed drive',
          { 'torque-limit': '110 %', ramp: '20 s' },
        ).optional(),
      }),
    ]),
    'input.one-start',
  ),
);

const torque = (what: string, example: string) =>
  field(quantity('moment', 'positive'), what, example).optional();
const speed = (what: string, example: string) => field(quantity('speed', 'positive'), what, example);

/** Inertia of something that turns. */
export const inertia = (what: string, example: string) =>
  field(quantity('inertia', 'positive'), what, example).optional();

/** The motor: weight, rating, and what is known of its start. */
export const motor = once(() =>
  map({
    weight: weight('Weight of the motor', '310 lb').optional(),
    known: known().optional(),
    within: within().optional(),
    'centre-of-gravity': field(
      offset(),
      'Centre of gravity of the motor from the shaft axis at the height of the ports',
      { up: '34 in' },
    ),
    power: field(quantity('power', 'positive'), 'Rated power', '20 hp'),
    speed: field(quantity('speed', 'positive'), 'Rated speed', '1770 rpm'),
    bracket: bracket(),
    ...motorPractice(),
    ...motorElectrical(),
    start: field(start(), 'How the motor is started', 'across the line').optional(),
    'locked-rotor-torque': torque('Torque at standstill on full voltage', '90 ft.lbf'),
    'breakdown-torque': torque('Greatest torque on full voltage', '140 ft.lbf'),
    'locked-rotor-current': field(
      ratio({ most: 20 }),
      'Current at standstill on full voltage over full-load current',
      '600 %',
    ).optional(),
    inertia: inertia(
      "Inertia of the motor's rotor about the shaft, mass times radius of gyration squared",
      '12 lb.ft2',
    ),
    speeds: field(
      map({
        lowest: speed('Lowest speed the drive may run the pump at', '600 rpm'),
        highest: speed('Highest speed the drive may run the pump at', '1770 rpm'),
      }),
      'Speeds a variable-speed drive may run the pump at',
      { lowest: '600 rpm', highest: '1770 rpm' },
    ).optional(),
  }),
);
