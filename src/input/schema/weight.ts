import { once } from '../once.js';
import { field, oneOf } from './field.js';
import { quantity } from './quantity.js';
import { ratio } from './ratio.js';

/** How a weight is known. */
export const known = once(() =>
  field(oneOf(['weighed', 'maker', 'handbook', 'estimated']), 'How the weight is known', 'maker'),
);

/** How far a weight may be off. */
export const within = once(() =>
  field(ratio({ most: 1 }), 'How far the weight may be off either way; left out, by how it is known', '5 %'),
);

/** The weight of something, as mass. */
export const weight = (what: string, example: string) =>
  field(quantity('mass', 'not negative'), what, example);
