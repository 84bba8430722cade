/** Dimensions of the pump that service asks about: what stands where on the shaft, and what comes out of it. */
import { once } from '../once.js';
import { field, map } from './field.js';
import { levelDirection } from './labels.js';
import { quantity } from './quantity.js';
import { weight } from './weight.js';

const length = (what: string, example: string) => field(quantity('length', 'positive'), what, example);

const spacer = once(() =>
  map({
    from: length('Underside of the window between the shaft ends, above the height of the ports', '12 in'),
    length: length('Length of the spacer: how far the shaft ends stand apart once it is out', '7 in'),
    'seal-length': length(
      'Length of the seal or cartridge that must pass between the shaft ends',
      '5 in',
    ).optional(),
    'coupling-weight': weight('Weight of the heaviest piece of the coupling', '18 lb').optional(),
  }),
);

const terminalBox = once(() =>
  map({
    side: field(levelDirection(), 'Side of the motor it stands on', 'east'),
    out: length('How far it stands out from the motor', '6 in'),
    width: length('Its width along the motor', '9 in'),
    height: length('Its height', '10 in'),
    up: length('Its middle above the height of the ports', '36 in'),
  }),
);

/** What stands where on the shaft. */
export const dimensions = once(() =>
  map({
    'casing-above': length('Top of the casing above the height of the ports', '7 in').optional(),
    'casing-below': length('Underside of the casing below the height of the ports', '8 in').optional(),
    'motor-foot': length('Underside of the motor above the height of the ports', '20 in').optional(),
    eyes: length('Lifting eyes of the motor above the height of the ports', '44 in').optional(),
    spacer: field(spacer(), 'Window of a spacer coupling', {
      from: '12 in',
      length: '7 in',
      'seal-length': '5 in',
    }).optional(),
    'guard-diameter': length('Diameter of the guard round the coupling', '12 in').optional(),
    'terminal-box': field(terminalBox(), 'Terminal box of the motor', {
      side: 'east',
      out: '6 in',
      width: '9 in',
      height: '10 in',
      up: '36 in',
    }).optional(),
    'guard-weight': weight('Weight of the heaviest half of the guard', '6 lb').optional(),
    'seal-weight': weight('Weight of the seal or cartridge', '5 lb').optional(),
    'rotor-weight': weight('Weight of impeller, shaft and cover as drawn together', '95 lb').optional(),
  }),
);
