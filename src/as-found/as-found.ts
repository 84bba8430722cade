/**
 * The line as it was found: places, heights, rods, springs, stops and gaps put back into the model, and solved again.
 */

import { isNotWorkedOut } from '../analysis/memoized.js';
import { analysed, type Subject } from '../analysis/subject.js';
import { supportSettings } from '../analysis/supports/support-settings.js';
import { type Coded, EngineError } from '../issues/issue.js';
import type { ConditionResponse } from '../mechanics/frame/response.js';
import { solveFrame } from '../mechanics/frame/solve-frame.js';
import { drySetting } from '../mechanics/what-ifs/spring-setting.js';
import { isCommon, ofRole } from '../model/conditions/condition-roles.js';
import type { Frame, FrameCondition } from '../model/frame/frame.js';
import { buildLayout } from '../model/layout/build-layout.js';
import type { ReadingsById } from '../readings/reading.js';
import type { FieldContext } from '../sheet/field-context.js';
import { raisedBy, withRodLength, withUpright } from './found-frame.js';
import { movedSupports } from './found-places.js';
import { type FoundReadings, foundReadings } from './found-readings.js';
import type { LevelDatum } from './level-datum.js';
import type { Compared, LeftOut, ModelUpdate } from './model-update.js';

/** What was compared with the drawing, whatever came of it. */
interface Taped {
  readonly compared: readonly Compared[];
  readonly datum?: LevelDatum;
}

/** The line as found. */
export type AsFound = Taped & Outcome;

type Outcome =
  /** Nothing read differs from the drawing by more than the tape shows, or nothing was read. */
  | { readonly kind: 'as drawn'; readonly left: readonly LeftOut[] }
  | {
      readonly kind: 'solved';
      readonly subject: Subject;
      readonly put: readonly ModelUpdate[];
      readonly left: readonly LeftOut[];
      /** The same with all heights as drawn, where heights were put back. */
      readonly levelled?: Subject;
    }
  | {
      readonly kind: 'fails';
      /** Why it could not be solved. */
      readonly why: Coded;
      readonly put: readonly ModelUpdate[];
      readonly left: readonly LeftOut[];
    };

/**
 * Solves the line as found, in the conditions that every line goes through.
 *
 * Heights are taken as if the pipe had been cut to the drawing and the support held it off by what was read; where the
 * pipe was cut to that height, it bears none of it. Therefore the same is solved with heights as drawn as well.
 *
 * @param context - review and writer
 * @param readings - readings
 * @returns the line as found
 */
export function asFound(context: FieldContext, readings: ReadingsById): AsFound {
  const found = foundReadings(context, readings);
  const { review } = context;
  const places = movedSupports(review.installation, found.places, found.step);
  const left: readonly LeftOut[] = [
    ...places.impossible.map((mark) => ({ mark, code: 'fieldwork.as-found.past-fitting' as const })),
    ...found.left,
  ];
  const put: readonly ModelUpdate[] = [
    ...places.moved.map(({ mark, drawn, found: at }) => ({ mark, what: 'place' as const, drawn, found: at })),
    ...found.put,
  ];
  const taped: Taped = { compared: found.compared, ...(found.datum && { datum: found.datum }) };
  if (put.length === 0) return { ...taped, kind: 'as drawn', left };
  try {
    const layout =
      places.installation === review.installation ? review.layout : buildLayout(places.installation);
    const conditions = layout.frame.conditions.filter(isCommon).map((condition) => ({
      ...condition,
      stopped: [...new Set([...condition.stopped, ...found.stopped])],
    }));
    const solved = (heights: boolean): Subject => {
      const frame = frameAsFound({ ...layout.frame, conditions }, found, heights);
      const whole = { ...layout, frame };
      return analysed({ installation: places.installation, layout: whole, response: solveFrame(frame) });
    };
    const subject = solved(true);
    return {
      ...taped,
      kind: 'solved',
      subject,
      put,
      left,
      ...(found.heights.size > 0 && { levelled: solved(false) }),
    };
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    return { ...taped, kind: 'fails', why: error.told, put, left };
  }
}

function frameAsFound(drawn: Frame, found: FoundReadings, heights: boolean): Frame {
  const entries = <T>(map: ReadonlyMap<string, T>, change: (value: T) => ReturnType<typeof raisedBy>) =>
    new Map([...map].map(([mark, value]) => [mark, change(value)]));
  let frame = withUpright(drawn, entries(found.rodLengths, withRodLength));
  if (heights) frame = withUpright(frame, entries(found.heights, raisedBy));
  frame = withUpright(frame, entries(gapHeights(frame, found), raisedBy));
  const { target, loads } = found.springs;
  const condition = ofRole(frame.conditions, target);
  if (condition === undefined || Object.keys(loads).length === 0) return frame;
  const setting = drySetting(frame, { target: condition, read: [condition] }, loads);
  const raises = new Map(setting?.springs.map(({ mark, raise }) => [mark, raise]));
  return withUpright(frame, entries(raises, raisedBy));
}

/**
 * How far each support with a gap under it stands too low: the pipe is let hang without it, and the support put below
 * by the gap that was felt.
 */
function gapHeights(frame: Frame, { gaps }: FoundReadings): ReadonlyMap<string, number> {
  if (gaps.size === 0) return new Map();
  const filled = ofRole(frame.conditions, 'filled');
  if (filled === undefined) return new Map();
  const without: FrameCondition = { ...filled, absent: [...filled.absent, ...gaps.keys()] };
  const hanging = solveFrame({ ...frame, conditions: [without] }).conditions[without.name];
  return new Map(
    frame.supports.flatMap(({ name, point }) => {
      const gap = gaps.get(name);
      const height = hanging?.movements[point]?.translation[2];
      return gap === undefined || height === undefined ? [] : [[name, height - gap] as const];
    }),
  );
}

/**
 * The line as designed: every spring at the load the file gives it, in service.
 *
 * @param subject - the review
 * @returns responses by condition; nothing where there are no springs
 */
export function asDesigned(subject: Subject): Readonly<Record<string, ConditionResponse>> | undefined {
  const worked = supportSettings(subject);
  return isNotWorkedOut(worked) ? undefined : worked.springs?.responses;
}
