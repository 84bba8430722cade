/** What supports are fastened to, and what a person takes it for where nobody knows. */

import * as z from 'zod';
import { once } from '../once.js';
import { field, map, text } from './field.js';
import { quantity, share, stiffness } from './quantity.js';

const assumedBy = once(() =>
  field(text(), 'Who takes this value where it is not known', 'R. Okafor').optional(),
);
const document = once(() =>
  field(text(), 'Document the value is taken from', 'structural drawing S-2').optional(),
);

const against = (what: string) => field(stiffness('stiffness'), what, '100 kip/in');
const turning = once(() =>
  field(stiffness('rotational stiffness'), 'Stiffness against turning, or rigid', '5000 ft.lbf/deg'),
);

/** Stiffness of the structure in the directions a support holds. */
export const structure = once(() =>
  field(
    z.union([
      stiffness('stiffness'),
      map({ stiffness: against('Stiffness, or rigid'), 'assumed-by': assumedBy(), document: document() }),
    ]),
    'Stiffness of what the support hangs on or stands on, in the directions it holds, or rigid; left out, a range is judged',
    '100 kip/in',
  ).optional(),
);

const bothWays = once(() => ({
  translation: against('Stiffness against movement, or rigid'),
  rotation: turning(),
}));

/** Stiffness of the structure at something that holds every movement and turn. */
export const anchorStructure = once(() =>
  field(
    map({ ...bothWays(), 'assumed-by': assumedBy(), document: document() }),
    'Stiffness of what the anchor is fastened to; left out, a range is judged',
    { translation: '200 kip/in', rotation: '50000 ft.lbf/deg' },
  ).optional(),
);

/** How the motor stands on its bracket. */
export const bracket = once(() =>
  field(
    map({
      frequency: field(
        quantity('frequency', 'positive'),
        "Manufacturer's natural frequency of the motor on its bracket, the casing held",
        '75 Hz',
      ).optional(),
      rotation: field(
        stiffness('rotational stiffness'),
        'Stiffness of the bracket against rocking of the motor, or rigid',
        '60000 ft.lbf/deg',
      ).optional(),
      'assumed-by': assumedBy(),
      document: document(),
    }),
    'Bracket between casing and motor: natural frequency of the motor on it, or its stiffness; left out, a range is judged',
    { frequency: '75 Hz' },
  ).optional(),
);

/** What one person takes for everything alike that nothing in the file says. */
export const assumed = once(() =>
  map({
    by: field(text(), 'Who takes these values; printed beside them', 'R. Okafor'),
    structure: against('Stiffness behind hangers, under rests and stands, at guides and stops').optional(),
    anchors: field(map(bothWays()), 'Stiffness at anchors, anchored ends and a bolted base', {
      translation: '200 kip/in',
      rotation: '50000 ft.lbf/deg',
    }).optional(),
    friction: field(share(), 'Coefficient of friction of a resting base, rests and stands', 0.3).optional(),
    'rigid-grooved-joints': field(
      map({
        bending: field(
          stiffness('rotational stiffness'),
          'Stiffness of each against bending and twist, or rigid',
          '50000 ft.lbf/deg',
        ),
      }),
      'Grip of grooved joints of the rigid type',
      { bending: '50000 ft.lbf/deg' },
    ).optional(),
  }),
);
