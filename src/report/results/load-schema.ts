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
