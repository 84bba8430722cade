import * as z from 'zod';
import { once } from '../once.js';
import { field, map, oneOf, text } from './field.js';
import { direction, pipeSize } from './labels.js';
import { exactlyOneKey } from './one-key.js';
import { elbowRadius, plainParts } from './parts.js';
import { quantity } from './quantity.js';
import { supports } from './supports.js';
import { known, weight, within } from './weight.js';

const length = (what: string, example: string) => field(quantity('length', 'positive'), what, example);

const insulation = once(() =>
  z.union([
    z.literal('none'),
    map({
      kind: field(text(), 'Kind of insulation', 'fibreglass'),
      thickness: length('Thickness', '2 in'),
      density: field(quantity('density', 'positive'), 'Own density', '4 lb/ft3').optional(),
      jacket: field(
        quantity('mass per area', 'not negative'),
        'Weight of the jacket by its area',
        '0.3 lb/ft2',
      ).optional(),
    }),
  ]),
);

/** What the pipe is made of; given for the whole piping, and again where a line differs. */
const pipe = once(() => ({
  size: field(pipeSize(), 'Nominal size of the pipe', '6 in').optional(),
  schedule: field(text(), 'Schedule or type of the pipe', 'STD').optional(),
  'outside-diameter': length('Own outside diameter, for pipe of no standard size', '6.625 in').optional(),
  wall: length('Own wall thickness, in place of a schedule', '0.28 in').optional(),
  material: field(text(), 'Material of the pipe', 'carbon steel').optional(),
  elbows: field(elbowRadius(), 'Radius of elbows: long, short, or a length', 'long').optional(),
  insulation: field(insulation(), 'Insulation, or none', {
    kind: 'fibreglass',
    thickness: '2 in',
  }).optional(),
}));

const steps = once(() => ({ ...plainParts(), ...supports() }));
type PlainStep = Partial<{
  [Kind in keyof ReturnType<typeof steps>]: z.output<ReturnType<typeof steps>[Kind]>;
}>;

const teeParts = once(() => ({
  'enter-by': field(oneOf(['run', 'branch']), 'Which leg the walk comes in by', 'run').optional(),
  turn: field(
    direction(),
    'Direction of travel behind it, where the walk comes in by the branch',
    'west',
  ).optional(),
  make: field(
    oneOf(['welding tee', 'fabricated', 'reinforced fabricated', 'grooved fitting']),
    'How the tee is made',
    'welding tee',
  ).optional(),
  weight: weight('Own weight in place of the catalogue', '40 lb').optional(),
  known: known().optional(),
  within: within().optional(),
  'centre-to-run-end': length('Own length from the centre to an end of the run', '5-5/8 in').optional(),
  'centre-to-branch-end': length(
    'Own length from the centre to the end of the branch',
    '5-5/8 in',
  ).optional(),
}));
const sideParts = once(() => ({
  direction: field(direction(), 'Direction of the side leg, away from the tee', 'east').optional(),
  size: field(pipeSize(), 'Size of the side leg, where it differs', '4 in').optional(),
  schedule: field(text(), 'Schedule of the side leg, where it differs', 'STD').optional(),
}));

/** One step of a walk: a map of one key. */
export type WalkStep = PlainStep & { readonly tee?: Tee | undefined };
/** A tee and what stands on its side leg. */
export type Tee = z.output<z.ZodObject<ReturnType<typeof teeParts>>> & { readonly side: TeeSide };
/** The side leg of a tee, walked outward. */
export type TeeSide = z.output<z.ZodObject<ReturnType<typeof sideParts>>> & {
  readonly walk: readonly WalkStep[];
};

const walk: () => z.ZodType<readonly WalkStep[]> = once(() =>
  z
    .lazy(() => z.array(step()).min(1))
    .meta({
      id: 'walk',
      description: 'Parts in order, walked outward from the pump; the last is an end',
      examples: [[{ straight: '2 ft' }, { elbow: 'up' }, { straight: '4 ft' }, { end: 'anchored' }]],
    }),
);
const tee = once(() =>
  field(
    map({
      ...teeParts(),
      side: field(map({ ...sideParts(), walk: walk() }), 'The side leg', {
        direction: 'east',
        walk: [{ straight: '3 ft' }, { end: 'free' }],
      }),
    }),
    'Tee with a side leg',
    { side: { direction: 'east', size: '4 in', walk: [{ straight: '3 ft' }, { end: 'free' }] } },
  ),
);

/** One step of a walk. */
export const step: () => z.ZodType<WalkStep> = once(
  () =>
    exactlyOneKey(map({ ...steps(), tee: tee() }).partial()).meta({
      id: 'step',
      description: 'One part or support: a map of one key, its kind',
      examples: [{ straight: '2 ft' }],
      minProperties: 1,
      maxProperties: 1,
    }) as z.ZodType<WalkStep>,
);

const line = once(() =>
  map({
    name: field(text(), 'Name of the line', 'suction line').optional(),
    from: field(oneOf(['suction', 'discharge']), 'Port the line starts at', 'suction'),
    ...pipe(),
    walk: walk(),
  }),
);

/** The piping: what it is made of, and its lines. */
export const piping = once(() =>
  map({
    ...pipe(),
    lines: field(z.array(line()).min(1).max(2), 'Lines, one from each port', [
      { from: 'suction', walk: [{ straight: '2 ft' }, { end: 'anchored' }] },
    ]),
  }),
);
