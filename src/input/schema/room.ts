import * as z from 'zod';
import { once } from '../once.js';
import { lift, wayOut } from './access.js';
import { panelElectrical } from './electrical.js';
import { field, map, oneOf, text } from './field.js';
import { place } from './position.js';
import { quantity } from './quantity.js';

const object = once(() =>
  map({
    kind: field(oneOf(['beam', 'wall', 'panel', 'pipe', 'duct', 'other']), 'What it is', 'beam'),
    name: field(text(), 'Its name', 'roof beam'),
    from: field(place(), 'One corner of the box round it', {
      east: '-6 ft',
      north: '2 ft',
      elevation: '11 ft',
    }).optional(),
    to: field(place(), 'The opposite corner', {
      east: '6 ft',
      north: '2 ft 6 in',
      elevation: '12 ft',
    }).optional(),
    points: field(z.array(place()).min(2).max(60), 'Points of the centre line of a run, in place of a box', [
      { east: '-6 ft', north: '3 ft', elevation: '11 ft' },
      { east: '6 ft', north: '3 ft', elevation: '11 ft' },
    ]).optional(),
    diameter: field(
      quantity('length', 'positive'),
      'Outside diameter of a run, insulation included',
      '4 in',
    ).optional(),
    electrical: field(panelElectrical(), 'What a panel needs in front of it', {
      'voltage-to-ground': '277 V',
      front: 'south',
      opposite: 'grounded',
    }).optional(),
  }),
);

/** The room, for headroom and clearances. */
export const room = once(() =>
  map({
    floor: field(quantity('length'), 'Elevation of the floor', '0 ft').optional(),
    ceiling: field(quantity('length'), 'Elevation of the underside of the structure', '13 ft').optional(),
    objects: field(z.array(object()), 'Things that may be in the way', [
      {
        kind: 'beam',
        name: 'roof beam',
        from: { east: '-6 ft', north: '2 ft', elevation: '11 ft' },
        to: { east: '6 ft', north: '3 ft', elevation: '12 ft' },
      },
    ]).optional(),
    'way-out': field(wayOut(), 'Opening the motor is taken out by', {
      east: '9 ft',
      north: '-4 ft',
      width: '36 in',
    }).optional(),
    lift: field(lift(), 'Lift over the motor', {
      anchor: { east: '0 ft', north: '0 ft', elevation: '13 ft' },
      rating: '1 ton',
    }).optional(),
  }),
);
