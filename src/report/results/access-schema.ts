/** Shape of what the results file says of access: spaces and the lift. */

import * as z from 'zod';
import { once } from '../../input/once.js';

const space = once(() =>
  z.strictObject({
    purpose: z.string().describe('Id of the check.'),
    at: z.string(),
    needed: z.number().optional().describe('[m]'),
    found: z.number().optional().describe('[m]'),
    nearest: z.string().optional().describe('What stands nearest, or in the way.'),
    short: z.number().optional().describe('How much is missing [m].'),
    move: z
      .number()
      .optional()
      .describe('Movement of what stands in the way that was tried and clears the space [m].'),
  }),
);

/** Access: spaces and the lift. */
export const accessShape = once(() =>
  z
    .strictObject({
      spaces: z.array(space()),
      lift: z
        .strictObject({
          available: z.number().describe('From the eyes of the motor to the anchor [m].'),
          gear: z.number().optional().describe('Taken up by sling, hook and hoist [m].'),
          withdrawal: z.number().optional().describe('Height the motor is drawn by [m].'),
          offCentre: z.number().describe('Anchor off the centre line of the motor [m].'),
          legPull: z.number().optional().describe('Pull in a leg of the sling, without factor [N].'),
        })
        .optional(),
    })
    .describe('Room for service, as far as the file describes the room.'),
);
