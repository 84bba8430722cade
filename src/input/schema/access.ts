/** What service asks of the room: the way out, the lift over the motor, and the spaces that must be free. */

import * as z from 'zod';
import { once } from '../once.js';
import { field, map, oneOf, text } from './field.js';
import { direction } from './labels.js';
import { place } from './position.js';
import { quantity } from './quantity.js';
import { ratio } from './ratio.js';
import { weight } from './weight.js';

const length = (what: string, example: string) => field(quantity('length', 'positive'), what, example);
const coordinate = (what: string, example: string) => field(quantity('length'), what, example);

const spot = once(() =>
  map({
    east: coordinate('East of the origin of the plan; west is negative', '2 ft'),
    north: coordinate('North of the origin of the plan; south is negative', '1 ft'),
  }),
);

/** A door or another opening the motor is taken out by. */
export const wayOut = once(() =>
  map({
    east: coordinate('Middle of the opening, east of the origin of the plan', '9 ft'),
    north: coordinate('Middle of the opening, north of the origin of the plan', '-4 ft'),
    width: length('Clear width of the opening', '36 in'),
  }),
);

const sling = once(() =>
  map({
    legs: field(z.int().min(1).max(4), 'Number of legs', 2),
    angle: field(quantity('angle', 'positive'), 'Angle of the legs from the level', '60 deg').optional(),
    length: length('Length of a leg from eye to hook, in place of the angle', '20 in').optional(),
    spread: length('Distance of the outermost lifting eyes from each other', '12 in').optional(),
    rating: weight('Load one leg is rated for in a straight pull', '2000 lb').optional(),
  }),
);

/** The lift over the motor. */
export const lift = once(() =>
  map({
    anchor: field(place(), 'Where the hoist hangs', { east: '0 ft', north: '0 ft', elevation: '13 ft' }),
    rating: weight('Load the anchor and its hoist are rated for', '1 ton').optional(),
    'hoist-height': length('From the anchor to the bearing of the hook, hoist pulled up', '14 in').optional(),
    'hook-to-sling': field(
      quantity('length', 'not negative'),
      'From the bearing of the hook to the top of the sling: shackle, ring',
      '3 in',
    ).optional(),
    sling: field(sling(), 'Sling from the eyes of the motor to the hook', {
      legs: 2,
      angle: '60 deg',
      spread: '12 in',
    }).optional(),
    factor: field(ratio({ most: 10 }), "Owner's factor on the weight lifted", 2).optional(),
    'off-centre': field(
      quantity('length', 'not negative'),
      "Owner's limit of how far the anchor may stand off the centre line of the motor",
      '1 in',
    ).optional(),
    source: field(
      text(),
      "Where the owner's factor and limit are taken from",
      "owner's lifting rule 4",
    ).optional(),
  }),
);

/** What a space is kept free for. */
export const PURPOSES = [
  'motor withdrawal',
  'coupling and seal',
  'wrench room',
  'working space',
  'handle',
  'drain',
  'vent',
  'gauge',
  'aisle',
  'casing lift-out',
] as const;

const space = once(() =>
  map({
    purpose: field(oneOf(PURPOSES), 'What it is kept free for', 'coupling and seal'),
    owner: field(oneOf(['maker', 'owner']), 'Whose number it is', 'maker'),
    source: field(text(), 'Document it is taken from', 'manual 44-7, page 12'),
    height: length(
      'Height that must be free: over the motor, of the box, or of the lift',
      '22 in',
    ).optional(),
    width: length('Width that must be free', '30 in').optional(),
    depth: length('Depth that must be free; along the stem for a handle', '24 in').optional(),
    reach: length(
      'Radius that must be free: round the coupling, or from the stem to the tip',
      '12 in',
    ).optional(),
    side: field(
      direction(),
      'Side it lies on; for a handle where the stem points, away from the pipe',
      'west',
    ).optional(),
    at: field(text(), 'Name of the valve or fitting it belongs to', 'gate valve 1').optional(),
    from: field(
      quantity('length', 'not negative'),
      'Distance from the centre line of the pipe to a handle, or to where the room in front of a fitting begins',
      '16 in',
    ).optional(),
    angle: field(quantity('angle', 'positive'), 'Angle a handle sweeps', '90 deg').optional(),
    start: field(direction(), 'Where a lever points at the start of its sweep', 'north').optional(),
    through: field(z.array(spot()).min(2).max(40), 'Points of the centre line of an aisle', [
      { east: '-6 ft', north: '4 ft' },
      { east: '6 ft', north: '4 ft' },
    ]).optional(),
  }),
);

/** Spaces with the maker's or the owner's numbers. */
export const serviceSpaces = once(() => z.array(space()));
