/** Heights that are all off by one amount: the mark they were read from, or the whole line. */
import { numberIn } from '../readings/read-box.js';
import type { ReadingsById } from '../readings/reading.js';
import type { FieldContext } from '../sheet/field-context.js';
import { heightOf, portHeight } from '../sheet/parts/support-expectations.js';
import { type namedSupports, supportBoxes } from '../sheet/support-ids.js';

/** What a tape is believed to on site, an eighth of an inch, and half of the sixteenth it is written down to [m]. */
export const TAPE = 0.0254 / 8 + 0.0254 / 32;

/** A difference that all heights have. */
export interface LevelDatum {
  /** How much higher everything stands than predicted [m]. */
  readonly offset: number;
  /** True where the pump itself was read from the same mark, and is off by as much. */
  readonly known: boolean;
}

/** Heights brought to the datum of the review. */
export interface Levelled {
  /** Height of the pipe by mark [m]. */
  readonly heights: ReadonlyMap<string, number>;
  /** How far such a height is believed [m]. */
  readonly tolerance: number;
  readonly datum?: LevelDatum;
}

/**
 * Takes a common difference off the heights.
 *
 * Where the height of the pump was read from the same mark, heights are told from the pump: two readings of a tape, and twice its
 * tolerance. Where it was not, and two heights or more are all off the same way by more than a tape shows and by the same to what
 * it shows, that is taken for the mark and asked about; it moves nothing in the model.
 *
 * @param named - supports with their words
 * @param readings - readings
 * @param context - review
 * @returns heights in the datum of the review [m]
 */
export function levelled(
  named: ReturnType<typeof namedSupports>,
  readings: ReadingsById,
  context: FieldContext,
): Levelled {
  const read = named.flatMap(({ support, word }) => {
    const found = numberIn(readings, supportBoxes(word).height);
    const drawn = heightOf(support, 'filled', context);
    return found === undefined || drawn === undefined
      ? []
      : [{ mark: support.mark, found, off: found - drawn }];
  });
  const lowered = (offset: number) => new Map(read.map(({ mark, found }) => [mark, found - offset]));
  const port = numberIn(readings, 'supports.port-height');
  if (port !== undefined) {
    const offset = port - portHeight(context);
    if (Math.abs(offset) <= TAPE) return { heights: lowered(0), tolerance: TAPE };
    return { heights: lowered(offset), tolerance: 2 * TAPE, datum: { offset, known: true } };
  }
  const offs = read.map(({ off }) => off);
  const [least, most] = [Math.min(...offs), Math.max(...offs)];
  const isCommon = offs.length > 1 && least * most > 0 && Math.min(Math.abs(least), Math.abs(most)) > TAPE;
  if (!isCommon || most - least > 2 * TAPE) return { heights: lowered(0), tolerance: TAPE };
  const offset = offs.reduce((sum, off) => sum + off, 0) / offs.length;
  return { heights: lowered(offset), tolerance: 2 * TAPE, datum: { offset, known: false } };
}
