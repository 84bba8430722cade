import * as z from 'zod';
import { once } from '../once.js';
import { field, map, oneOf, text } from './field.js';
import { rodSize } from './labels.js';
import { offset } from './position.js';
import { quantity, share } from './quantity.js';
import { anchorStructure, structure } from './structure.js';

const mark = once(() => field(text(), 'Mark of the support on the drawings, once in the file', 'H1'));
const force = (what: string, example: string) => field(quantity('force', 'positive'), what, example);

const rodAssembly = once(() => ({
  rods: field(z.int().min(1).max(8), 'How many rods share the load', 1).optional(),
  rod: field(rodSize(), 'Size of each rod', '5/8 in').optional(),
  length: field(
    quantity('length', 'positive'),
    'Length of the rod from structure to clamp',
    '7 ft',
  ).optional(),
  'rod-rating': force('Rating of one rod, where it is not that of the table', '1800 lb').optional(),
  'attachment-rating': force('Rating of clamp and attachment for the whole support', '1500 lb').optional(),
}));
const rating = once(() => force('Rated load of the support', '3000 lb').optional());
const outOfPlace = once(() =>
  field(offset(), 'How far the support itself stands off its place: settlement, or an error of its height', {
    up: '-1/8 in',
  }).optional(),
);
const gap = once(() =>
  field(
    quantity('length', 'not negative'),
    'Free movement to either side before it holds',
    '1/16 in',
  ).optional(),
);
const friction = once(() =>
  field(share(), 'Coefficient of friction between pipe and support', 0.3).optional(),
);
const yesOrNo = once(() =>
  z.union([oneOf(['yes', 'no']), z.boolean()]).transform((word) => word === 'yes' || word === true),
);
const rigidRods = once(() =>
  field(yesOrNo(), 'Whether the rods count as rigid, whatever their size and length', 'yes').optional(),
);
/** What every support may say. */
const every = once(() => ({ mark: mark(), 'out-of-place': outOfPlace() }));

/** Everything that can hold the pipe, by kind. */
export const supports = once(() => ({
  hanger: field(
    map({ ...every(), ...rodAssembly(), 'rigid-rods': rigidRods(), structure: structure() }),
    'Rod hanger; holds up',
    {
      mark: 'H1',
      rod: '5/8 in',
      length: '7 ft',
    },
  ),
  'spring-hanger': field(
    map({
      ...every(),
      rate: field(quantity('stiffness', 'positive'), 'Rate of the whole spring hanger', '300 lb/in'),
      load: force('Load at the set position', '900 lb'),
      minimum: field(
        quantity('force', 'not negative'),
        'Least load of the working range',
        '500 lb',
      ).optional(),
      maximum: force('Greatest load of the working range', '1200 lb').optional(),
      ...rodAssembly(),
      structure: structure(),
    }),
    'Spring hanger',
    { mark: 'V1', rate: '300 lb/in', load: '900 lb' },
  ),
  rest: field(
    map({ ...every(), rating: rating(), friction: friction(), structure: structure() }),
    'The pipe lies on it; holds up',
    {
      mark: 'R1',
    },
  ),
  guide: field(
    map({ ...every(), rating: rating(), gap: gap(), structure: structure() }),
    'Holds the pipe across its run',
    { mark: 'G1' },
  ),
  stop: field(
    map({ ...every(), rating: rating(), gap: gap(), structure: structure() }),
    'Holds the pipe along its run',
    { mark: 'L1' },
  ),
  stand: field(
    map({ ...every(), rating: rating(), friction: friction(), structure: structure() }),
    'Stands on the floor under the pipe; holds up',
    {
      mark: 'S1',
      rating: '3000 lb',
    },
  ),
  anchor: field(
    map({ ...every(), rating: rating(), structure: anchorStructure() }),
    'Holds the pipe in every direction and turn',
    { mark: 'A1' },
  ),
}));

/** A support given under another part: one key, its kind. */
export const attachedSupport = once(() =>
  map({
    hanger: supports().hanger.optional(),
    'spring-hanger': supports()['spring-hanger'].optional(),
    rest: supports().rest.optional(),
    stand: supports().stand.optional(),
    anchor: supports().anchor.optional(),
  }),
);
