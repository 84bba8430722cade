/** What is asked of the electrical side: the panels of the room, the disconnect and the motor's nameplate. */
import { once } from '../once.js';
import { field, map, oneOf, text } from './field.js';
import { levelDirection } from './labels.js';
import { yesOrNo } from './practice.js';
import { quantity } from './quantity.js';

/** What a panel needs in front of it. */
export const panelElectrical = once(() =>
  map({
    'voltage-to-ground': field(
      quantity('voltage', 'positive'),
      'Voltage to ground, not between lines: 277 V on a 480 V wye',
      '277 V',
    ).optional(),
    front: field(levelDirection(), 'Side its doors or covers open to: north, south, east or west', 'south'),
    opposite: field(
      oneOf(['nothing', 'grounded', 'live']),
      'What faces it: nothing live or grounded; something grounded, as concrete, brick and tile count; live parts',
      'grounded',
    ).optional(),
  }),
);

/** What the motor is disconnected with. */
export const disconnect = once(() =>
  map({
    name: field(text(), 'Its mark on the drawings', 'disconnect DS-1').optional(),
    panel: field(
      text(),
      'Name of the panel among the objects of the room that it is',
      'starter panel',
    ).optional(),
    distance: field(
      quantity('length', 'not negative'),
      'Distance from the motor, where no panel of the room is named',
      '12 ft',
    ).optional(),
    'in-sight': yesOrNo('Whether it is seen from the motor'),
    lockable: yesOrNo('Whether it can be locked open'),
  }),
);

/** What the nameplate of the motor says. */
export const motorElectrical = once(() => ({
  voltage: field(quantity('voltage', 'positive'), 'Rated voltage between lines', '460 V').optional(),
  'full-load-current': field(
    quantity('current', 'positive'),
    'Rated current at full load',
    '24 A',
  ).optional(),
}));

/** Limit of the vibration, the owner's or the maker's. */
export const vibrationLimit = once(() =>
  field(
    map({
      velocity: field(quantity('velocity', 'positive'), 'Largest r.m.s. velocity', '0.18 in/s'),
      source: field(text(), 'Where the limit is taken from', "owner's specification 23 21 23"),
    }),
    'Vibration at the bearings',
    { velocity: '0.18 in/s', source: "owner's specification 23 21 23" },
  ).optional(),
);
