/** Shape of the largest loads in the results file. */

import * as z from 'zod';
import { once } from '../../input/once.js';

const largest = once(() =>
  z.strictObject({
    load: z.number().describe('[N]'),
    condition: z.string(),
  }),
);

const measures = once(() => ({
  down: largest().optional().describe('As the pipe acts on the support.'),
  up: largest().optional(),
  sideways: largest().optional().describe('Level, whichever way.'),
  resultant: largest().optional().describe('Of a hanger the pull along its rods.'),
  governs: z.enum(['down', 'up', 'sideways']).optional().describe('Direction of the largest of all.'),
}));

/** Largest loads on supports, ends of lines and the base of the pump. */
export const supportLoadsShape = once(() =>
  z
    .array(
      z.strictObject({
        at: z.string(),
        kind: z.string(),
        ...measures(),
        byRole: z
          .record(z.string(), z.strictObject(measures()))
          .describe('The same by what the conditions stand for: test, pump-out, lateral, start …'),
      }),
    )
    .describe(
      'Largest load on each support, end of a line and pump base of all conditions that come to pass; a direction in which nothing acts is absent.',
    ),
);

const component = once(() =>
  largest().extend({
    load: z.number().describe('Size [N] or [N·m].'),
    signed: z.number().describe('The same with its sign in the axes of the nozzle.'),
  }),
);

const onNozzle = once(() => ({
  force: largest()
    .extend({ axial: z.number().describe('Size of its part along the nozzle, then [N].') })
    .optional()
    .describe('Largest resultant force.'),
  moment: z
    .strictObject({ load: z.number().describe('[N·m]'), condition: z.string() })
    .optional()
    .describe('Largest resultant moment about the centre of the flange face.'),
  components: z
    .strictObject({
      axialForce: component().optional().describe('Signed: positive where the pipe pulls on the nozzle.'),
      verticalForce: component().optional(),
      crossForce: component().optional(),
      resultantForce: component().optional(),
      axialMoment: component().optional(),
      verticalMoment: component().optional(),
      crossMoment: component().optional(),
      resultantMoment: component().optional(),
    })
    .describe('The largest of each by itself; absent where it is nothing in every condition.'),
}));

/** Largest loads of the pipe on the nozzles. */
export const nozzleLoadsShape = once(() =>
  z
    .array(
      z.strictObject({
        at: z.string(),
        ...onNozzle(),
        byRole: z
          .record(z.string(), z.strictObject(onNozzle()))
          .describe('The same by what the conditions stand for: test, lateral, start …'),
      }),
    )
    .describe(
      'Largest loads of the pipe on each nozzle of all conditions that come to pass with the pump in its place, as the pipe acts on the pump.',
    ),
);
