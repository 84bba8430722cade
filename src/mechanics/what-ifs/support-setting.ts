import type { Wrench } from '../../model/conventions.js';
import type { Frame, FrameCondition } from '../../model/frame/frame.js';
import { UP } from '../../model/vector.js';
import { wrenchOnBody } from '../frame/recovery/wrench-on-body.js';
import { standingFrame } from '../frame/standing-frame.js';
import type { NozzleFace } from './fit-up.js';

/** What raising one support does, per metre, with every other support staying as it is. */
export interface RaisingEffect {
  readonly mark: string;
  /** True for a support that carries nothing in the condition: raising it a little does nothing. */
  readonly idle: boolean;
  /** Change of the load of the pipe on each support, downward, by mark [N/m]. */
  readonly supports: Readonly<Record<string, number>>;
  /** Change of the load of the pipe on each nozzle [N/m], [N·m/m]. */
  readonly nozzles: Readonly<Partial<Record<NozzleFace['which'], Wrench>>>;
}

/**
 * How the loads change as each support is raised.
 *
 * @param frame - the frame
 * @param condition - the condition in which it is done, usually filled
 * @param pump - name of the body that is the pump [-]
 * @param of - nozzles, and marks of the supports to be raised
 * @returns effects in the order of the marks, per metre raised
 * @throws EngineError as `solveFrame`
 * @source beam-theory
 */
export function raisingEffects(
  frame: Frame,
  condition: FrameCondition,
  pump: string,
  of: { readonly nozzles: readonly NozzleFace[]; readonly marks: readonly string[] },
): readonly RaisingEffect[] {
  const standing = standingFrame(frame, condition);
  return of.marks.map((mark) => {
    const { condition: still, response } = standing.disturb({ imposed: { [mark]: UP } });
    const states = standing.response.supports[mark]?.states ?? [];
    return {
      mark,
      idle: states.every((state) => state === 'lifted' || state === 'in gap' || state === 'absent'),
      supports: Object.fromEntries(
        Object.entries(response.supports).map(([name, { load }]) => [name, -load.force[2]]),
      ),
      nozzles: Object.fromEntries(
        of.nozzles.map(({ which, point }) => [which, wrenchOnBody(frame, still, response, pump, point)]),
      ),
    };
  });
}
