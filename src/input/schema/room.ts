import { z } from 'zod';
import { field, map, oneOf, text } from './field.js';
import { place } from './position.js';
import { quantity } from './quantity.js';

const object = map({
  kind: field(oneOf(['beam', 'wall', 'panel', 'pipe', 'duct', 'other']), 'What it is', 'beam'),
  name: field(text(), 'Its name', 'roof beam'),
  from: field(place, 'One corner of the box round it', { east: '-6 ft', north: '2 ft', elevation: '11 ft' }),
  to: field(place, 'The opposite corner', { east: '6 ft', north: '2 ft 6 in', elevation: '12 ft' }),
});

/** The room, for headroom and clearances. */
export const room = map({
  floor: field(quantity('length'), 'Elevation of the floor', '0 ft').optional(),
  ceiling: field(quantity('length'), 'Elevation of the underside of the structure', '13 ft').optional(),
  objects: field(z.array(object), 'Things that may be in the way', [
    {
      kind: 'beam',
      name: 'roof beam',
      from: { east: '-6 ft', north: '2 ft', elevation: '11 ft' },
      to: { east: '6 ft', north: '3 ft', elevation: '12 ft' },
    },
  ]).optional(),
});
