/** What nobody stated in the results file: its shape, and how it is filled. */
import * as z from 'zod';
import { once } from '../../input/once.js';
import type { Bounds } from '../../study/bounds/bounds.js';

const place = once(() => z.strictObject({ check: z.string(), at: z.string() }));

/** Shape of the bounds. */
export const boundsShape = once(() =>
  z
    .strictObject({
      trials: z.number().int().describe('How many times the line was solved again.'),
      failed: z.number().int().describe('How many of them could not be worked out.'),
      unstated: z
        .array(
          z.strictObject({
            id: z.string(),
            what: z.string(),
            path: z.string().describe('Where in the file it would be said.'),
            taken: z.enum(['rigid', 'none', 'free']),
            end: z.number().describe('The other end of its range, in `unit`.'),
            turning: z.number().optional().describe('The other end against turning [N·m/rad].'),
            unit: z.enum(['N/m', 'N·m/rad', 'Hz', '-']),
            source: z.string(),
            turns: z.array(place()).describe('Verdicts that it turns.'),
            share: z
              .number()
              .optional()
              .describe('Largest part of what was left to a limit that it uses up alone [-].'),
          }),
        )
        .describe('What nobody stated, what matters most first.'),
      supports: z
        .array(
          z.strictObject({
            mark: z.string(),
            condition: z.string(),
            stated: z.number().describe('[N]'),
            low: z.number().describe('[N]'),
            high: z.number().describe('[N]'),
          }),
        )
        .describe('Load of each support, down, over all of it.'),
      sweep: z
        .array(
          z.strictObject({
            bracket: z
              .number()
              .describe('Softness of the bracket from 0, as stated, to 1, the end of its range [-].'),
            structure: z.number().describe('The same of structure, anchors and joints together [-].'),
            friction: z.number().describe('The same of friction [-].'),
            bracketFrequency: z.number().optional().describe('[Hz]'),
            pump: z.array(z.number()).describe('Natural frequencies that count as those of the pump [Hz].'),
          }),
        )
        .optional()
        .describe('Natural frequencies over what nobody stated.'),
    })
    .describe('What nobody stated, and what it does within its range.'),
);

/**
 * The bounds as plain data.
 *
 * @param bounds - what the trials gave
 * @returns data in the shape of `boundsShape`, SI units
 */
export function boundsResults(bounds: Bounds): z.infer<ReturnType<typeof boundsShape>> {
  const { things, trials, failed, supports, frequencies } = bounds;
  return {
    trials,
    failed,
    unstated: things.map(({ thing, turns, most }) => ({
      id: thing.id,
      what: thing.what,
      path: thing.path,
      taken: thing.taken,
      end: thing.end,
      ...(thing.turning !== undefined && { turning: thing.turning }),
      unit: thing.unit,
      source: thing.citation.clause,
      turns: turns.map(({ check, at }) => ({ check, at })),
      ...(most && { share: most.share }),
    })),
    supports: supports.map((one) => ({ ...one })),
    ...(frequencies && {
      sweep: frequencies.samples.map(({ bracket, structure, friction, bracketFrequency, modes }) => ({
        bracket,
        structure,
        friction,
        ...(bracketFrequency !== undefined && { bracketFrequency }),
        pump: modes.filter(({ counts }) => counts).map(({ frequency }) => frequency),
      })),
    }),
  };
}
