/** Shape of the bands in the results file. */

import * as z from 'zod';
import { once } from '../../input/once.js';

const place = once(() => ({ check: z.string(), at: z.string() }));

export const bandsShape = once(() =>
  z
    .strictObject({
      coverage: z.number().describe('Standard uncertainties either side in a printed band [-].'),
      heavier: z.number().describe('Share by which all weights are taken heavier and lighter together [-].'),
      doubts: z.array(
        z.strictObject({
          id: z.string(),
          what: z.string(),
          moves: z.enum(['share', 'factor', 'shift', 'alternative']),
          halfWidth: z.number().describe('Share or factor less one [-]; a shift [m].'),
          taken: z.number().optional().describe('In `unit`.'),
          unit: z.enum(['kg', 'kg/m', 'm³', 'N', 'N/m', 'm', '-']),
          known: z.string(),
          source: z.string(),
          path: z.string().optional(),
        }),
      ),
      ratios: z.array(
        z.strictObject({
          ...place(),
          comparison: z.boolean(),
          ratio: z.number().describe('[-]'),
          standard: z.number().describe('Standard uncertainty [-].'),
          statement: z.enum(['meets throughout', 'meets only if', 'exceeds throughout', 'exceeds unless']),
          heavier: z.number().optional().describe('With all weights heavier [-].'),
          lighter: z.number().optional().describe('With all weights lighter [-].'),
          turns: z.array(
            z.strictObject({
              doubt: z.string(),
              value: z.number().optional().describe('Where demand equals limit, in the unit of the doubt.'),
              meets: z.enum(['below', 'above']),
            }),
          ),
        }),
      ),
      nozzles: z.array(
        z.strictObject({
          nozzle: z.enum(['suction', 'discharge']),
          condition: z.string(),
          load: z.enum(['resultantForce', 'resultantMoment']),
          value: z.number().describe('[N] or [N·m]'),
          standard: z.number().describe('[N] or [N·m]'),
        }),
      ),
      supports: z.array(
        z.strictObject({
          mark: z.string(),
          condition: z.string(),
          value: z.number().describe('Down [N].'),
          standard: z.number().describe('[N]'),
        }),
      ),
      sampled: z
        .strictObject({
          count: z.number().int(),
          seed: z.number().int(),
          failed: z.number().int().describe('Samples in which nothing could be worked out.'),
          ratios: z.array(
            z.strictObject({
              ...place(),
              mean: z.number(),
              standard: z.number(),
              low: z.number().describe('2.5 % of the samples lie below.'),
              high: z.number().describe('2.5 % of the samples lie above.'),
              beyond: z.number().describe('Share of the samples that exceed [-].'),
            }),
          ),
        })
        .optional(),
      findOut: z
        .array(
          z.strictObject({
            kind: z.enum(['missing', 'rough']),
            code: z.string().optional().describe('Of the reason that verdicts wait.'),
            doubt: z.string().optional(),
            turns: z.array(z.strictObject(place())).describe('Verdicts that wait for it, or that it turns.'),
            share: z.number().optional().describe('Of what is left to the limit it may use up, most [-].'),
          }),
        )
        .describe('Data to find out, what matters most first.'),
    })
    .describe('How sure the numbers are; absent where it was not worked out.'),
);
