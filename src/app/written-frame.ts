/** A frame written by hand, without an installation: solved, vibrated, and cut at a body. Arguments are looked at first. */

import { requireArgument, requireMembers } from '../issues/argument.js';
import { wrenchOnBody as cutAtBody } from '../mechanics/frame/recovery/wrench-on-body.js';
import type { Response } from '../mechanics/frame/response.js';
import { solveFrame as solve } from '../mechanics/frame/solve-frame.js';
import { findVibrations } from '../mechanics/modes/find-vibrations.js';
import { type Frequencies, naturalFrequencies as lowestModes } from '../mechanics/modes/frequencies.js';
import type { Wrench } from '../model/conventions.js';
import type { Frame, FrameCondition } from '../model/frame/frame.js';
import { requireFrame } from './check-frame.js';

/**
 * Solves a frame in all its conditions.
 *
 * @param frame - points, members, bodies, joints, supports and conditions, SI
 * @returns movements [m], [rad], loads and wrenches [N], [N·m] by condition, and how far they can be trusted
 * @throws EngineError `argument.wrong` for what is no frame; `mechanics.…`, `algebra.…` for one that cannot be solved:
 *   a mechanism, supports that contradict each other, a number out of range, a name that is not there
 * @source beam-theory
 */
export function solveFrame(frame: Frame): Response {
  requireFrame(frame);
  return solve(frame);
}

/** How far frequencies are looked for. */
export interface FrequencyOptions {
  /** Frequency that matters: more than the lowest ten are given until one lies above it, at most forty [Hz]. */
  readonly upTo?: number;
}

/**
 * Lowest natural frequencies of a frame, small vibrations about one of its conditions: supports act as they do there.
 * Long pipes are cut into pieces short enough for what is asked; their further points are named after the pipe.
 *
 * @param frame - the frame
 * @param condition - name of one of its conditions
 * @param options - frequency up to which they matter [Hz]
 * @returns the lowest ten and what more was asked for [Hz], shapes, mass shares [-], and up to where none is missing [Hz]
 * @throws EngineError `argument.wrong`; else as `solveFrame`
 * @source beam-theory
 */
export function naturalFrequencies(
  frame: Frame,
  condition: string,
  options: FrequencyOptions = {},
): Frequencies {
  requireFrame(frame);
  const { upTo = 0 } = options;
  requireArgument(Number.isFinite(upTo) && upTo >= 0, 'options.upTo', 'a frequency, 0 or more [Hz]', upTo);
  const about = conditionOf(frame, condition);
  // Pipes are cut for a frequency that matters; where none is named, the lowest is where that begins.
  const lowest = lowestModes(frame, about, 1).modes[0]?.frequency ?? 0;
  return findVibrations(frame, about, Math.max(upTo, lowest)).frequencies;
}

/**
 * What everything outside exerts on a rigid body at one of its points, about that point: for a nozzle, the load of the
 * pipe on the pump.
 *
 * @param frame - the frame
 * @param response - what `solveFrame` gave for it
 * @param where - names of a condition, of a body, and of one of the body's points
 * @returns force [N] and moment about the point [N·m], east, north, up
 * @throws EngineError `argument.wrong`; `mechanics.not-of-body` where the body does not stand or has no such point;
 *   `mechanics.rigid-loop` where bodies close a loop
 * @source statics
 */
export function wrenchOnBody(
  frame: Frame,
  response: Response,
  where: { readonly condition: string; readonly body: string; readonly point: string },
): Wrench {
  requireFrame(frame);
  requireMembers(response, 'response', ['conditions'], 'what solveFrame gave');
  requireMembers(where, 'where', ['condition', 'body', 'point'], 'names: condition, body, point');
  const condition = conditionOf(frame, where.condition, 'where.condition');
  const solved = Object.hasOwn(response.conditions, condition.name)
    ? response.conditions[condition.name]
    : undefined;
  const wanted = `the response of this frame, with "${condition.name}" solved`;
  requireArgument(solved !== undefined, 'response.conditions', wanted, solved);
  return cutAtBody(frame, condition, solved, where.body, where.point);
}

function conditionOf(frame: Frame, name: string, argument = 'condition'): FrameCondition {
  const found = frame.conditions.find((condition) => condition.name === name);
  const names = frame.conditions.map((condition) => `"${condition.name}"`).join(', ');
  requireArgument(found !== undefined, argument, `one of the frame's conditions: ${names}`, name);
  return found;
}
