/** What was read of the supports, sorted by what it changes in the model. */

import type { SingleRole } from '../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../model/layout/layout.js';
import { supportFacts } from '../model/support-parts.js';
import { choiceIn, numberIn } from '../readings/read-box.js';
import type { ReadingsById } from '../readings/reading.js';
import type { FieldContext } from '../sheet/field-context.js';
import { heightOf, loadOf } from '../sheet/parts/supports.js';
import { namedSupports, supportBoxes } from '../sheet/support-ids.js';
import type { LeftOut, ModelUpdate } from './model-update.js';

/** Readings of the supports in SI. */
export interface FoundReadings {
  /** Half of what a tape shows: smaller differences are as drawn [m]. */
  readonly step: number;
  /** Distance along the pipe by mark [m]. */
  readonly places: ReadonlyMap<string, number>;
  /** How far the pipe stands higher than predicted, by mark [m]. */
  readonly heights: ReadonlyMap<string, number>;
  readonly rodLengths: ReadonlyMap<string, number>;
  /** Gaps under what should carry, by mark [m]. */
  readonly gaps: ReadonlyMap<string, number>;
  /** Marks of springs whose stops are in. */
  readonly stopped: readonly string[];
  /** Loads on springs, all read in one state [N]. */
  readonly springs: { readonly target: SingleRole; readonly loads: Readonly<Record<string, number>> };
  /** All of these but places, as they are printed. */
  readonly put: readonly ModelUpdate[];
  readonly left: readonly LeftOut[];
}

/** States in which a scale may be read, the best first: box and condition. */
const STATES = [
  ['filled', 'filled'],
  ['hot', 'hot'],
  ['dry', 'empty'],
] as const;

/** Half of a sixteenth of an inch, and half a millimetre [m]. */
const HALF_SIXTEENTH = 0.0254 / 32;
const HALF_MILLIMETRE = 0.5e-3;
/** Share of a spring's load that its scale shows [-]. */
const SCALE = 2e-3;

/**
 * Sorts what was read of the supports.
 *
 * @param context - review and writer
 * @param readings - readings
 * @returns readings by what they change; what only repeats the prediction is left out
 */
export function foundReadings(context: FieldContext, readings: ReadingsById): FoundReadings {
  const step = context.write.system === 'us' ? HALF_SIXTEENTH : HALF_MILLIMETRE;
  const places = new Map<string, number>();
  const heights = new Map<string, number>();
  const rodLengths = new Map<string, number>();
  const gaps = new Map<string, number>();
  const stopped: string[] = [];
  const put: ModelUpdate[] = [];
  const named = namedSupports(context.review.layout.supports);
  for (const { support, word } of named) {
    const ids = supportBoxes(word);
    const { mark } = support;
    const place = numberIn(readings, ids.position);
    if (place !== undefined) places.set(mark, place);
    const [height, drawn] = [numberIn(readings, ids.height), heightOf(support, 'filled', context)];
    if (height !== undefined && drawn !== undefined && Math.abs(height - drawn) > step) {
      heights.set(mark, height - drawn);
      put.push({ mark, what: 'height', drawn, found: height });
    }
    const [length, given] = [numberIn(readings, ids.rodLength), support.part?.rods?.length];
    if (length !== undefined && given !== undefined && length > 0 && Math.abs(length - given) > step) {
      rodLengths.set(mark, length);
      put.push({ mark, what: 'rod length', drawn: given, found: length });
    }
    const gap = carries(support) ? numberIn(readings, ids.gap) : undefined;
    if (gap !== undefined && gap > 0) {
      gaps.set(mark, gap);
      put.push({ mark, what: 'gap under it', drawn: 0, found: gap });
    }
    if (support.part?.spring !== undefined && choiceIn(readings, ids.stops) === 'no') {
      stopped.push(mark);
      put.push({ mark, what: 'travel stops in' });
    }
  }
  const springs = springLoads(named, readings, stopped, context);
  return {
    step,
    places,
    heights,
    rodLengths,
    gaps,
    stopped,
    springs: springs.read,
    put: [...put, ...springs.put],
    left: springs.left,
  };
}

const carries = (support: PlacedSupport): boolean => supportFacts(support).bears;

function springLoads(
  named: ReturnType<typeof namedSupports>,
  readings: ReadingsById,
  stopped: readonly string[],
  context: FieldContext,
) {
  const springs = named.filter(
    ({ support }) => support.part?.spring !== undefined && !stopped.includes(support.mark),
  );
  const readIn = (state: (typeof STATES)[number][0]) =>
    springs.flatMap(({ support, word }) => {
      const load = numberIn(readings, supportBoxes(word)[state]);
      return load === undefined ? [] : [{ mark: support.mark, load }];
    });
  const [state, target] = STATES.find(([each]) => readIn(each).length > 0) ?? STATES[0];
  const read = readIn(state);
  const differs = read.some(
    ({ mark, load }) => Math.abs(load - (loadOf(mark, target, context) ?? Number.NaN)) > SCALE * load,
  );
  const elsewhere = STATES.flatMap(([other]) => (other === state ? [] : readIn(other)));
  const left: readonly LeftOut[] = [...new Set(elsewhere.map(({ mark }) => mark))]
    .filter((mark) => !read.some((each) => each.mark === mark))
    .map((mark) => ({ mark, code: 'fieldwork.as-found.other-state' }));
  const put = read.map(({ mark, load }): ModelUpdate => {
    const drawn = loadOf(mark, target, context);
    return { mark, what: 'spring load', found: load, ...(drawn !== undefined && { drawn }) };
  });
  const loads = differs ? Object.fromEntries(read.map(({ mark, load }) => [mark, load])) : {};
  return { read: { target, loads }, put: differs ? put : [], left };
}
