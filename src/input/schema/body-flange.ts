/** Flanges that belong to a body: a pump, a valve, a suction diffuser. */

import * as z from 'zod';
import { once } from '../once.js';
import { field, map, oneOf, text } from './field.js';
import { quantity } from './quantity.js';

/** What a flange may carry by temperature, where no table of the catalogue says so. */
export const flangeRating = once(() =>
  field(
    z
      .array(
        map({
          temperature: field(quantity('temperature'), 'Temperature up to which it holds', '150 degF'),
          pressure: field(quantity('pressure', 'positive'), 'Gauge pressure it may carry', '250 psi'),
        }),
      )
      .min(1)
      .max(20),
    "Manufacturer's pressure rating by temperature, from the lowest temperature up",
    [{ temperature: '150 degF', pressure: '250 psi' }],
  ),
);

export const flangeFace = once(() =>
  field(oneOf(['raised', 'flat', 'unknown']), 'Facing of the flange', 'flat'),
);
export const flangeMaterial = once(() =>
  field(oneOf(['cast iron', 'ductile iron', 'steel', 'unknown']), 'Material of the flange', 'cast iron'),
);

/** A flange of a pump or a suction diffuser. */
export const bodyFlange = once(() =>
  map({
    standard: field(oneOf(['B16.5', 'B16.1', 'own']), 'Standard of the flange', 'B16.1'),
    class: field(text(), 'Pressure class', 125),
    face: flangeFace().optional(),
    material: flangeMaterial().optional(),
    rating: flangeRating().optional(),
  }),
);
