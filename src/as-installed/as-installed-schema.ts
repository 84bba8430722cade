/** Shape of the results of an as-installed review: types, published JSON Schema and tests follow from it. */

import * as z from 'zod';
import { once } from '../input/once.js';
import { VERDICTS } from '../judging/verdict.js';

/** Format of the file. */
export const AS_INSTALLED_FORMAT = 'pipeborne-as-installed/1';

const verdict = once(() => z.enum(VERDICTS));
const confidence = once(() => z.enum(['read', 'two sources', 'memory', 'common practice', 'computed']));
const basis = once(() =>
  z.strictObject({ source: z.string(), clause: z.string(), confidence: confidence() }),
);
const three = once(() => z.tuple([z.number(), z.number(), z.number()]));
const wrench = once(() =>
  z.strictObject({
    force: three().describe('east, north, up, as the pipe acts on the pump [N]'),
    moment: three().describe('about the centre of the flange face [N·m]'),
  }),
);

const bars = once(() => z.enum(['running', 'start', 'acceptance', 'nothing']));
const decision = once(() =>
  z.strictObject({
    word: z.enum(['go', 'hold', 'stop']),
    against: z.array(z.string()),
    by: z.string().optional().describe('Who decides, as written on a sheet. It is no signature.'),
    on: z.string().optional(),
    nameless: z.enum(['no-name', 'no-day', 'older']).optional().describe('Why the name does not count.'),
  }),
);

const reading = once(() =>
  z.strictObject({
    box: z.string(),
    text: z.string().describe('As written.'),
    kind: z.enum(['number', 'text', 'choice', 'tick', 'date', 'not-read', 'unreadable']),
    value: z.union([z.number(), z.string(), z.boolean()]).optional().describe('SI where it is a number.'),
    file: z.string(),
    page: z.number().int().optional(),
    line: z.number().int().optional(),
  }),
);

const judgement = once(() =>
  z.strictObject({
    judge: z.string(),
    part: z.string(),
    at: z.string(),
    trade: z.string(),
    boxes: z.array(z.string()),
    verdict: verdict(),
    comparison: z.boolean().describe('True where it decides nothing.'),
    blocksStart: z.boolean(),
    bars: bars().describe('What it keeps from happening.'),
    how: z.enum(['against', 'beyond', 'guidance', 'unknown', 'none']).describe('By what.'),
    undisputed: z.string().optional().describe('Why the factor past which it decides is not disputed.'),
    measured: z.string().optional().describe('What the numbers are: gap, force, velocity …'),
    demand: z.number().optional().describe('What is compared, SI.'),
    read: z.number().optional().describe('What was read, where the demand is how far it is off, SI.'),
    expected: z.number().optional().describe('What the review expects, SI.'),
    limit: z.number().optional().describe('SI.'),
    limitWords: z.string().optional().describe('within, at most, at least'),
    ratio: z.number().optional(),
    told: z.string().optional(),
    wanted: z.string().optional(),
    basis: basis().optional(),
    reason: z.string().optional().describe('Code of the finding, or of why it cannot be told.'),
  }),
);

const nozzles = once(() =>
  z.record(z.string(), z.strictObject({ suction: wrench().optional(), discharge: wrench().optional() })),
);

/** Shape of the file. */
export const asInstalledShape = once(() =>
  z.strictObject({
    format: z.literal(AS_INSTALLED_FORMAT),
    tool: z.strictObject({ version: z.string() }),
    input: z.strictObject({ sha256: z.string() }),
    pump: z.strictObject({ mark: z.string() }),
    date: z.string().optional(),
    files: z.array(z.string()),
    decision: z.enum(['go', 'hold']).describe('The first decision by itself: may it be started.'),
    decisions: z.strictObject({ start: decision(), run: decision() }),
    verdict: verdict(),
    openItems: z.array(
      z.strictObject({
        trade: z.string(),
        at: z.string(),
        title: z.string(),
        finding: z.string(),
        evidence: z.string(),
        consequence: z.string(),
        fix: z.string(),
        blocksStart: z.boolean(),
        bars: bars(),
        kind: z.enum(['exceeds', 'guidance', 'missing', 'as found', 'noted', 'recovery', 'conflict']),
        key: z.string().optional().describe('By which it is classed and closed.'),
      }),
    ),
    judgements: z.array(judgement()),
    readings: z.array(reading()),
    asFound: z.strictObject({
      kind: z.enum(['as drawn', 'solved', 'fails']),
      put: z.array(
        z.strictObject({
          mark: z.string(),
          what: z.string(),
          drawn: z.number().optional().describe('[m] or [N]'),
          found: z.number().optional().describe('[m] or [N]'),
        }),
      ),
      left: z.array(z.strictObject({ mark: z.string(), code: z.string() })),
      nozzles: z
        .strictObject({
          predicted: nozzles(),
          designed: nozzles().optional(),
          found: nozzles().optional(),
          heightsAsDrawn: nozzles().optional(),
        })
        .describe('Loads by condition.'),
      findings: z.array(
        z.strictObject({
          check: z.string(),
          at: z.string(),
          condition: z.string().optional(),
          demand: z.number().optional(),
          limit: z.number().optional(),
          unit: z.string(),
          ratio: z.number().optional(),
          verdict: verdict(),
          comparison: z.boolean(),
        }),
      ),
    }),
    issues: z.array(z.strictObject({ code: z.string(), severity: z.string(), message: z.string() })),
  }),
);

/** Content of the file. */
export type AsInstalledFile = z.infer<ReturnType<typeof asInstalledShape>>;

/**
 * The JSON Schema of the results of an as-installed review, draft 2020-12.
 *
 * @returns the schema as plain data
 */
export function asInstalledJsonSchema(): Readonly<Record<string, unknown>> {
  return { ...z.toJSONSchema(asInstalledShape(), { target: 'draft-2020-12' }) };
}
