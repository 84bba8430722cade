/** What stands at the end of a line. */

import * as z from 'zod';
import { once } from '../once.js';
import { field, map, oneOf } from './field.js';
import { exactlyOneKey } from './one-key.js';
import { offset } from './position.js';
import { quantity } from './quantity.js';
import { anchorStructure } from './structure.js';

const continuing = once(() =>
  map({
    translation: field(
      z.union([
        quantity('stiffness', 'positive'),
        map({
          east: field(quantity('stiffness', 'not negative'), 'Stiffness to the east and west', '20 kip/in'),
          north: field(
            quantity('stiffness', 'not negative'),
            'Stiffness to the north and south',
            '20 kip/in',
          ),
          up: field(quantity('stiffness', 'not negative'), 'Stiffness up and down', '20 kip/in'),
        }),
      ]),
      'Stiffness of the pipe beyond against movement, alike in every direction or by direction',
      '20 kip/in',
    ),
    rotation: field(
      quantity('rotational stiffness', 'not negative'),
      'Stiffness of the pipe beyond against turning',
      '5000 ft.lbf/deg',
    ),
  }),
);

const anchored = once(() =>
  map({
    'hot-movement': field(offset(), 'How the anchor moves from closing up to hot', {
      up: '1/4 in',
    }).optional(),
    'cold-movement': field(offset(), 'How the anchor moves from closing up to cold', {
      up: '-1/16 in',
    }).optional(),
    structure: anchorStructure(),
  }),
);

/** The end of a walk: a word, or a map of one key. */
export const end = once(() =>
  exactlyOneKey(
    z.union([
      oneOf(['anchored', 'free']),
      map({
        anchored: field(anchored(), 'Held in every direction and turn by something that itself moves', {
          'hot-movement': { up: '1/4 in' },
        }).optional(),
        continues: field(continuing(), 'The pipe goes on', {
          translation: '20 kip/in',
          rotation: '5000 ft.lbf/deg',
        }).optional(),
      }),
    ]),
    'input.one-end',
  ),
);
