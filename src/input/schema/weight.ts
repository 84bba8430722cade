import { field, oneOf } from './field.js';
import { quantity } from './quantity.js';

/** How a weight is known. */
export const known = field(
  oneOf(['weighed', 'maker', 'handbook', 'estimated']),
  'How the weight is known',
  'maker',
);

/** The weight of something, as mass. */
export const weight = (what: string, example: string) =>
  field(quantity('mass', 'not negative'), what, example);
