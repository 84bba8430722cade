import * as z from 'zod';
import { once } from '../once.js';
import { field, map, oneOf, text } from './field.js';
import { share } from './quantity.js';
import { ratio } from './ratio.js';

const editions = ['10', '16'] as const;

/** The inputs of the published formula; its coefficients are the engineer's to choose. */
const seismicFormula = once(() =>
  map({
    edition: field(
      z.union([oneOf(editions), z.literal([10, 16])]).transform((edition) => String(edition)),
      'Edition of the standard: 10 or 16',
      '16',
    ),
    sds: field(ratio({ most: 10 }), 'Design acceleration of the site at short periods, SDS, in g', 0.5),
    importance: field(ratio({ least: 1, most: 3 }), 'Importance factor of the part, Ip', 1),
    'height-ratio': field(
      share(),
      'Height of the attachment over that of the roof, z/h; need not be above 1',
      0.4,
    ),
    ap: field(ratio({ most: 10 }), 'Amplification factor of the part, ap', 2.5),
    rp: field(ratio({ most: 20 }), 'Response modification factor of the part, Rp', 6),
  }),
);

/** The sideways load: a coefficient from the engineer, or the published formula. */
export const lateral = once(() =>
  map({
    coefficient: field(ratio({ most: 5 }), 'Sideways force as a share of the weight', 0.3).optional(),
    source: field(text(), 'Where the coefficient is taken from', 'structural drawing S-2').optional(),
    'asce-7': field(seismicFormula(), 'The formula of ASCE 7 with its inputs, in place of a coefficient', {
      edition: '16',
      sds: 0.5,
      importance: 1,
      'height-ratio': 0.4,
      ap: 2.5,
      rp: 6,
    }).optional(),
  }),
);
