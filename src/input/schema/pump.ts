import * as z from 'zod';
import { once } from '../once.js';
import { bodyFlange } from './body-flange.js';
import { dimensions } from './dimensions.js';
import { disconnect } from './electrical.js';
import { field, map, oneOf, text } from './field.js';
import { levelDirection, pipeSize } from './labels.js';
import { inertia, motor } from './motor.js';
import { offset, place } from './position.js';
import { build, pumpPractice } from './practice.js';
import { quantity, share } from './quantity.js';
import { anchorStructure, structure } from './structure.js';
import { known, weight, within } from './weight.js';

const length = (what: string, example: string) => field(quantity('length', 'positive'), what, example);
const distance = (what: string, example: string) => field(quantity('length'), what, example);

const port = once(() =>
  map({
    size: field(pipeSize(), 'Nominal size of the port', '6 in'),
    facing: field(levelDirection(), 'Direction the port faces, away from the pump', 'south'),
    'from-shaft': length('Distance of the flange face from the shaft axis', '16 in').optional(),
    up: distance('Height of the port above the height the pump is placed by', '2 in').optional(),
    at: field(
      offset(),
      'Place of the flange face relative to the shaft axis, in place of from-shaft and up',
      {
        east: '2 in',
        north: '-16 in',
      },
    ).optional(),
    flange: field(bodyFlange(), 'Flange of the port', { standard: 'B16.1', class: 125, face: 'flat' }),
  }),
);

const springs = once(() =>
  map({
    rate: field(quantity('stiffness', 'positive'), 'Rate of one spring', '900 lb/in'),
    load: field(quantity('force', 'not negative'), 'Load of one spring as set', '400 lb'),
    count: field(z.int().min(1).max(12), 'How many springs', 2),
    at: field(
      z
        .array(
          field(offset(), 'Where one stands in plan, from the middle of the base', {
            east: '14 in',
            north: '9 in',
          }),
        )
        .min(1)
        .max(12),
      'Where each of them stands in plan, from the middle of the base; left out, all stand there and resist no rocking',
      [
        { east: '14 in', north: '9 in' },
        { east: '-14 in', north: '9 in' },
      ],
    ).optional(),
    side: field(
      quantity('stiffness', 'positive'),
      'Stiffness of one spring sideways; left out, they hold nothing sideways',
      '600 lb/in',
    ).optional(),
  }),
);

/** A block of concrete or a frame between casing and springs. */
const inertiaBase = once(() =>
  map({
    weight: weight('Its weight', '900 lb'),
    known: known().optional(),
    within: within().optional(),
    below: length('Its centre of gravity below the underside of the casing', '3 in'),
  }),
);

/** The pump: a casing, a motor above it, two ports. */
export const pump = once(() =>
  map({
    mark: field(text(), 'Mark of the pump on the drawings', 'HWP-1'),
    build: field(build(), 'How motor and pump are joined', 'split-coupled'),
    mount: field(
      oneOf(['hung', 'resting', 'sprung', 'bolted']),
      'How the casing is held: by its pipe alone, free on a base, on springs, or bolted down',
      'hung',
    ),
    at: field(place(), 'Where the shaft axis stands, at the height of the ports', {
      east: '0 ft',
      north: '0 ft',
      elevation: '4 ft 6 in',
    }).optional(),
    casing: field(
      map({
        weight: weight('Weight of the casing with everything in it but the liquid', '520 lb'),
        known: known().optional(),
        within: within().optional(),
        material: field(text(), 'Material of the casing', 'cast iron').optional(),
        'centre-of-gravity': field(
          offset(),
          'Centre of gravity from the shaft axis at the height of the ports',
          {
            up: '1 in',
          },
        ).optional(),
        contents: field(quantity('volume', 'not negative'), 'Liquid held by the casing', '6 gal'),
      }),
      'The casing',
      { weight: '520 lb', known: 'maker', contents: '6 gal' },
    ),
    motor: field(motor(), 'The motor', {
      weight: '310 lb',
      'centre-of-gravity': { up: '34 in' },
      power: '20 hp',
      speed: '1770 rpm',
    }),
    'rotor-inertia': inertia('Inertia of impeller, shaft and coupling about the shaft', '3 lb.ft2'),
    blades: field(z.int().min(1).max(24), 'Number of blades of the impeller', 6).optional(),
    ...pumpPractice(),
    disconnect: field(disconnect(), 'What the motor is disconnected with', {
      name: 'disconnect DS-1',
      distance: '12 ft',
      'in-sight': 'yes',
      lockable: 'yes',
    }).optional(),
    duty: field(
      map({
        flow: field(quantity('flow', 'positive'), 'Flow at the duty point', '620 gpm'),
        head: field(quantity('head', 'positive'), 'Head at the duty point', '70 ft'),
        efficiency: field(share(), 'Efficiency at the duty point', '79 %').optional(),
      }),
      'The duty point',
      { flow: '620 gpm', head: '70 ft' },
    ),
    suction: field(port(), 'The suction port', {
      size: '6 in',
      facing: 'south',
      'from-shaft': '16 in',
      flange: { standard: 'B16.1', class: 125 },
    }),
    discharge: field(port(), 'The discharge port', {
      size: '6 in',
      facing: 'north',
      'from-shaft': '16 in',
      flange: { standard: 'B16.1', class: 125 },
    }),
    base: field(
      map({
        'below-ports': length('Underside of the casing below the height of the ports', '14 in'),
        at: field(offset(), 'Where the base stands in plan, from the shaft axis', {
          east: '2 in',
        }).optional(),
        friction: field(share(), 'Coefficient of friction under a resting base', 0.3).optional(),
        structure: structure(),
        anchors: anchorStructure(),
        springs: field(springs(), 'Springs under the casing', {
          rate: '900 lb/in',
          load: '400 lb',
          count: 2,
        }).optional(),
        'inertia-base': field(
          inertiaBase(),
          'What stands between casing and springs and moves with the pump',
          {
            weight: '900 lb',
            below: '3 in',
          },
        ).optional(),
      }),
      'The base, where the casing rests, is sprung or bolted',
      { 'below-ports': '14 in' },
    ).optional(),
    outline: field(
      map({
        'motor-top': length('Top of the motor above the height of the ports', '48 in').optional(),
        'motor-diameter': length('Diameter of the motor', '14 in').optional(),
        'casing-diameter': length('Diameter of the casing', '26 in').optional(),
        withdrawal: length('Clear height over the motor needed to draw it', '22 in').optional(),
      }),
      'Outline for drawings and headroom',
      { 'motor-top': '48 in', 'motor-diameter': '14 in' },
    ).optional(),
    dimensions: field(dimensions(), 'Dimensions that service asks about', {
      'casing-above': '7 in',
      'motor-foot': '20 in',
    }).optional(),
  }),
);
