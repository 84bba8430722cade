/** Shape of the results file, one definition for the types, the published JSON Schema and the tests. */

import * as z from 'zod';
import { once } from '../../input/once.js';
import { VERDICTS } from '../../judging/verdict.js';
import { accessShape } from './access-schema.js';
import { bandsShape } from './band-schema.js';
import { boundsShape } from './bounds-results.js';
import { fitUpShape, pumpOutShape, settingShape } from './installation-schema.js';
import { nozzleLoadsShape, supportLoadsShape } from './load-schema.js';

const vector = once(() => z.tuple([z.number(), z.number(), z.number()]));
const wrench = once(() =>
  z.strictObject({
    force: vector().describe('east, north, up [N]'),
    moment: vector().describe('about the stated point [N·m]'),
  }),
);
const verdict = once(() => z.enum(VERDICTS));
const confidence = once(() => z.enum(['read', 'two sources', 'memory', 'common practice', 'computed']));

const condition = once(() =>
  z.strictObject({
    nozzles: z
      .strictObject({ suction: wrench(), discharge: wrench() })
      .optional()
      .describe(
        'As the pipe acts on the pump, about the centre of the flange face; absent where the pump is out.',
      ),
    supports: z.record(z.string(), wrench()).describe('As the pipe acts on the support, by mark.'),
    points: z
      .record(
        z.string(),
        z.strictObject({ movement: vector().describe('[m]'), rotation: vector().describe('[rad]') }),
      )
      .describe('Movement from the line as drawn, without load.'),
    balance: z.strictObject({
      applied: wrench().describe('Sum of everything that acts, about the origin.'),
      reacted: wrench().describe('Sum of what the supports do to the frame, about the origin.'),
      residual: z.number().describe('What is left of both over the weight [-].'),
    }),
    states: z
      .record(z.string(), z.array(z.string()))
      .describe('What each restraint of each support does: holding, lifted, slipping, topped out …'),
    undetermined: z
      .record(z.string(), z.array(z.enum(['vertical', 'sideways', 'moment'])))
      .optional()
      .describe(
        'Supports whose load nothing determines: rigid supports of one rigid part share it in a way that neither statics nor stiffness says. The load given is one of many.',
      ),
    joints: z
      .record(
        z.string(),
        z.strictObject({
          lengthening: z.number().describe('[m]'),
          angle: z.number().describe('Bending [rad].'),
          rods: z.enum(['slack', 'engaged']).optional(),
          rodTension: z.number().optional().describe('All rods together [N].'),
          bending: z.enum(['free', 'at limit']).optional(),
        }),
      )
      .optional()
      .describe('Joints whose rods have a gap or that bend freely up to an angle.'),
    rounds: z.number().int().describe('Rounds in which supports and joints settled.'),
  }),
);

const finding = once(() =>
  z.strictObject({
    check: z.string(),
    at: z.string(),
    condition: z.string().optional(),
    demand: z.number().optional(),
    limit: z.number().optional(),
    unit: z.enum(['Pa', 'N', 'N·m', 'm', 'm/s', 'W', 'rad', 'K', 'Hz', '-']),
    ratio: z.number().optional(),
    sense: z
      .literal('at least')
      .optional()
      .describe('The limit is the least required and the demand what is provided; absent: the most allowed.'),
    verdict: verdict(),
    comparison: z.boolean().describe('True for a comparison that never decides the verdict.'),
    low: z.number().optional().describe('Least demand over everything that nobody stated, in `unit`.'),
    high: z.number().optional().describe('Largest demand over everything that nobody stated, in `unit`.'),
    turnedBy: z
      .array(z.string())
      .optional()
      .describe('What nobody stated and turns the verdict, that which moves it most first.'),
    siteTest: z
      .enum(['knock test', 'pull test'])
      .optional()
      .describe('The test on site that settles it before the pump runs.'),
    reason: z.string().optional().describe('Code of the reason or of the advice.'),
    basis: z.strictObject({ source: z.string(), clause: z.string(), confidence: confidence() }),
  }),
);

const run = once(() =>
  z.strictObject({
    inertia: z.number().describe('[kg·m²]'),
    duration: z.number().describe('Time to running speed [s].'),
    twist: z.number().describe('Largest, put on slowly [N·m].'),
    dynamicFactor: z.number().describe('[-]'),
    motorTop: z.number().describe('Movement of the motor top by time history [m].'),
  }),
);

const startUp = once(() =>
  z
    .union([
      z.strictObject({ reason: z.string().describe('Code of why the start could not be worked out.') }),
      z.strictObject({
        staticTwist: z.number().describe('Twist of the start put on slowly [N·m].'),
        dynamicFactor: z.number().describe('[-]'),
        stopTwist: z.number().describe('Twist at switching off under load, dynamics included [N·m].'),
        twist: z.number().describe('Twist of the conditions `starting`: the larger of both [N·m].'),
        runs: z.array(run()).describe('One for a given inertia, several over a range.'),
        motorTop: z
          .array(
            z.strictObject({
              condition: z.string(),
              by: z.enum(['dynamic factor', 'time history']),
              movement: z.number().describe('From where it stands when running [m].'),
            }),
          )
          .describe('Movement of the motor top while starting.'),
      }),
    ])
    .describe('Twist of the pump set about its shaft while it starts.'),
);

/** The results file. */
export const resultsShape = once(() =>
  z
    .strictObject({
      format: z.literal('pipeborne-results/1'),
      tool: z.strictObject({ version: z.string() }),
      input: z.strictObject({ sha256: z.string().regex(/^[0-9a-f]{64}$/) }),
      review: z
        .strictObject({
          project: z.string(),
          date: z.string().describe('Date of the review, ISO 8601.'),
          revision: z.exactOptional(z.string()),
          units: z.enum(['us', 'si']).describe('Units the review is printed in; those here are SI.'),
        })
        .describe('What the input says of the review itself.'),
      verdict: verdict(),
      pump: z.strictObject({ mark: z.string() }),
      conditions: z.record(z.string(), condition()),
      supportLoads: supportLoadsShape().optional(),
      nozzleLoads: nozzleLoadsShape().optional(),
      weights: z.array(
        z.strictObject({
          part: z.string(),
          dry: z.number().describe('[kg]'),
          contents: z.number().describe('[kg]'),
          insulation: z.number().describe('[kg]'),
        }),
      ),
      frequencies: z
        .array(z.number())
        .describe('Natural frequencies [Hz]; empty where none were worked out.'),
      startUp: startUp().optional(),
      pumpOut: pumpOutShape().optional(),
      fitUp: fitUpShape().optional(),
      setting: settingShape().optional(),
      access: accessShape().optional(),
      quality: z
        .strictObject({
          residual: z.number().describe('Largest force left after solving over the largest load [-].'),
          energy: z
            .number()
            .describe('Largest difference of the work that acts and the work taken up over their sum [-].'),
          reciprocalCondition: z.number().describe('Of the scaled stiffness, estimated [-].'),
        })
        .describe('How far the numbers can be trusted.'),
      findings: z.array(finding()),
      bounds: boundsShape().optional(),
      bands: bandsShape().optional(),
      assumptions: z.array(
        z.strictObject({ path: z.string(), value: z.string(), source: z.string(), effect: z.string() }),
      ),
    })
    .describe('Results of one review. SI units; x east, y north, z up.'),
);

/** What a results file holds. */
export type ResultsFile = z.infer<ReturnType<typeof resultsShape>>;

/**
 * JSON Schema of the results file, for programs that read it.
 *
 * @returns the schema, draft 2020-12
 */
export function resultsJsonSchema(): Readonly<Record<string, unknown>> {
  return { title: 'Pipeborne results', ...z.toJSONSchema(resultsShape()) };
}
