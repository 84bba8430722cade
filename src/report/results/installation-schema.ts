/** Shape of what the results file says to a fitter: the pump out, flanges pulled shut, supports set. */

import * as z from 'zod';
import { once } from '../../input/once.js';

const vector = once(() => z.tuple([z.number(), z.number(), z.number()]));
const perUnit = once(() =>
  z.strictObject({
    force: vector().describe('east, north, up [N/m], or [N/rad] for turns'),
    moment: vector().describe('about the centre of the flange face [N·m/m], or [N·m/rad] for turns'),
  }),
);
const nozzle = once(() => z.enum(['suction', 'discharge']));

const spring = once(() =>
  z
    .strictObject({
      rise: z.number().describe('Up positive [m].'),
      gap: z.number().describe('Along the nozzle, away from the pump positive [m].'),
      sideways: vector().describe('Across the nozzle, level [m].'),
      tilt: z.number().describe('Angle between the faces [rad].'),
      widest: vector().describe('Unit vector to where the gap is widest; zero where the faces are parallel.'),
      twist: z.number().describe('Turn about the axis of the nozzle [rad].'),
    })
    .describe('Movement of the open flange from where it was bolted, the line filled.'),
);

/** What the lines do when the pump is lifted out. */
export const pumpOutShape = once(() =>
  z
    .strictObject({
      flanges: z.array(
        z.strictObject({
          nozzle: nozzle(),
          falls: z.boolean().describe('True for a line that does not stand without the pump.'),
          spring: spring().optional(),
          pinnedSpring: spring().optional().describe('The same with the springs pinned where they stood.'),
          prop: z.number().optional().describe('Force that keeps the flange at its height, up positive [N].'),
          pinnedProp: z.number().optional().describe('The same with the springs pinned [N].'),
        }),
      ),
      springs: z
        .array(
          z.strictObject({
            mark: z.string(),
            filled: z.number().describe('Load with the line filled and bolted [N].'),
            free: z.number().describe('Load left with the line free [N].'),
            rise: z.number().describe('How far the line rises there [m].'),
          }),
        )
        .describe('To be pinned first to last.'),
    })
    .describe('What a fitter meets when the pump is lifted out.'),
);

/** What pulling the joints at the pump shut costs. */
export const fitUpShape = once(() =>
  z
    .strictObject({
      joints: z.array(
        z.strictObject({
          nozzle: nozzle(),
          loads: z
            .strictObject({
              gap: perUnit(),
              rise: perUnit(),
              offset: perUnit(),
              twist: perUnit(),
              'tilt-upright': perUnit(),
              'tilt-sideways': perUnit(),
            })
            .describe(
              "As the pipe acts on the pump, for one unit by which the line's face stands away, up, across, twisted or tilted before it is pulled shut; supports as they are filled.",
            ),
          usedUp: z
            .record(z.string(), z.number())
            .optional()
            .describe(
              'Misfit of each way that alone uses up the allowance [m], [rad]; absent without a basis.',
            ),
        }),
      ),
    })
    .describe('Closing stiffness of the joints at the pump.'),
);

/** How supports are to be set. */
export const settingShape = once(() =>
  z
    .strictObject({
      target: z.string().describe('Condition in which the springs come right.'),
      springs: z.array(
        z.strictObject({
          mark: z.string(),
          design: z.number().describe('Load it is to carry [N].'),
          raise: z.number().describe("Height over the file's setting [m]."),
          loads: z.record(z.string(), z.number()).describe('Load so set, by condition [N].'),
          reached: z.boolean(),
          beyond: z
            .number()
            .optional()
            .describe('Height that would give it its load, where its adjustment does not go so far [m].'),
        }),
      ),
      raising: z
        .array(
          z.strictObject({
            mark: z.string(),
            idle: z.boolean().describe('True where the support carries nothing.'),
            supports: z.record(z.string(), z.number()).describe('Change of the load down, by support [N/m].'),
            nozzles: z.record(z.string(), perUnit()),
          }),
        )
        .describe('What raising each support does, per metre, the line filled.'),
    })
    .describe('Setting of the supports.'),
);
