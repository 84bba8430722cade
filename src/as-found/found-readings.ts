/** What was read of the supports, sorted by what it changes in the model. */

import type { SingleRole } from '../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../model/layout/layout.js';
import { supportFacts } from '../model/support-parts.js';
import { choiceIn, numberIn } from '../readings/read-box.js';
import type { ReadingsById } from '../readings/reading.js';
import type { FieldContext } from '../sheet/field-context.js';
import { heightOf, loadOf } from '../sheet/parts/support-expectations.js';
import { namedSupports, supportBoxes } from '../sheet/support-ids.js';
import { supportPlaces } from '../sheet/support-places.js';
import { type LevelDatum, levelled, TAPE } from './level-datum.js';
import type { Compared, LeftOut, ModelUpdate } from './model-update.js';

/** Readings of the supports in SI. */
export interface FoundReadings {
  /** What a tape shows: smaller differences are as drawn [m]. */
  readonly step: number;
  /** Everything that a tape was held to, moved or not. */
  readonly compared: readonly Compared[];
  /** A difference that all heights have, where they have one. */
  readonly datum?: LevelDatum;
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

/** Share of a spring's load to which its scale and its rate are believed, common practice [-]. */
const SCALE = 0.05;

/**
 * Sorts what was read of the supports.
 *
 * @param context - review and writer
 * @param readings - readings
 * @returns readings by what they change; what only repeats the prediction is left out
 */
export function foundReadings(context: FieldContext, readings: ReadingsById): FoundReadings {
  const places = new Map<string, number>();
  const heights = new Map<string, number>();
  const rodLengths = new Map<string, number>();
  const gaps = new Map<string, number>();
  const stopped: string[] = [];
  const put: ModelUpdate[] = [];
  const named = namedSupports(context.review.layout.supports);
  const level = levelled(named, readings, context);
  const compared: Compared[] = [];
  const differs = (each: Omit<Compared, 'tolerance'>, tolerance = TAPE): boolean => {
    compared.push({ ...each, tolerance });
    return Math.abs(each.found - each.drawn) > tolerance;
  };
  const along = new Map(supportPlaces(context.review.installation).map((each) => [each.mark, each.distance]));
  for (const { support, word } of named) {
    const ids = supportBoxes(word);
    const { mark } = support;
    const [place, at] = [numberIn(readings, ids.position), along.get(mark)];
    if (place !== undefined) {
      places.set(mark, place);
      if (at !== undefined)
        compared.push({ mark, what: 'place', box: ids.position, drawn: at, found: place, tolerance: TAPE });
    }
    const [height, drawn] = [level.heights.get(mark), heightOf(support, 'filled', context)];
    if (height !== undefined && drawn !== undefined) {
      if (differs({ mark, what: 'height', box: ids.height, drawn, found: height }, level.tolerance)) {
        heights.set(mark, height - drawn);
        put.push({ mark, what: 'height', drawn, found: height });
      }
    }
    const [length, given] = [numberIn(readings, ids.rodLength), support.part?.rods?.length];
    if (length !== undefined && given !== undefined && length > 0) {
      if (differs({ mark, what: 'rod length', box: ids.rodLength, drawn: given, found: length })) {
        rodLengths.set(mark, length);
        put.push({ mark, what: 'rod length', drawn: given, found: length });
      }
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
    step: TAPE,
    compared,
    ...(level.datum && { datum: level.datum }),
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
