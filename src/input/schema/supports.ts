import { z } from 'zod';
import { field, map, text } from './field.js';
import { rodSize } from './labels.js';
import { quantity } from './quantity.js';

const mark = field(text(), 'Mark of the support on the drawings, once in the file', 'H1');
const force = (what: string, example: string) => field(quantity('force', 'positive'), what, example);

const rodAssembly = {
  rods: field(z.int().min(1).max(8), 'How many rods share the load', 1).optional(),
  rod: field(rodSize(), 'Size of each rod', '5/8 in').optional(),
  length: field(
    quantity('length', 'positive'),
    'Length of the rod from structure to clamp',
    '7 ft',
  ).optional(),
  'rod-rating': force('Rating of one rod, where it is not that of the table', '1800 lb').optional(),
  'attachment-rating': force('Rating of clamp and attachment for the whole support', '1500 lb').optional(),
};
const rating = force('Rated load of the support', '3000 lb').optional();

/** Everything that can hold the pipe, by kind. */
export const supports = {
  hanger: field(map({ mark, ...rodAssembly }), 'Rod hanger; holds up', {
    mark: 'H1',
    rod: '5/8 in',
    length: '7 ft',
  }),
  'spring-hanger': field(
    map({
      mark,
      rate: field(quantity('stiffness', 'positive'), 'Rate of the whole spring hanger', '300 lb/in'),
      load: force('Load at the set position', '900 lb'),
      minimum: field(
        quantity('force', 'not negative'),
        'Least load of the working range',
        '500 lb',
      ).optional(),
      maximum: force('Greatest load of the working range', '1200 lb').optional(),
      ...rodAssembly,
    }),
    'Spring hanger',
    { mark: 'V1', rate: '300 lb/in', load: '900 lb' },
  ),
  rest: field(map({ mark, rating }), 'The pipe lies on it; holds up', { mark: 'R1' }),
  guide: field(map({ mark, rating }), 'Holds the pipe across its run', { mark: 'G1' }),
  stop: field(map({ mark, rating }), 'Holds the pipe along its run', { mark: 'L1' }),
  stand: field(map({ mark, rating }), 'Stands on the floor under the pipe; holds up', {
    mark: 'S1',
    rating: '3000 lb',
  }),
  anchor: field(map({ mark, rating }), 'Holds the pipe in every direction and turn', { mark: 'A1' }),
};

/** A support given under another part: one key, its kind. */
export const attachedSupport = map({
  hanger: supports.hanger.optional(),
  'spring-hanger': supports['spring-hanger'].optional(),
  rest: supports.rest.optional(),
  stand: supports.stand.optional(),
  anchor: supports.anchor.optional(),
});
