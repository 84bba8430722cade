import type { Response } from '../../../mechanics/frame/response.js';
import { conditionId, conditionTitle } from '../../../model/conditions/condition-roles.js';
import type { ReportContext, View } from '../../context.js';

/** Conditions of which the one that moves most is drawn. */
const MOVING = (['hot', 'cold', 'running', 'filled'] as const).map((role) => conditionId(role));

/**
 * How the line moves, drawn larger than it does.
 *
 * @param context - results
 * @returns title of the condition whose movement is drawn
 */
export function picture(context: ReportContext) {
  return {
    movementCondition: conditionTitle(drawnMovement(context.subject.response)),
  } satisfies View;
}

/**
 * Condition whose movement is drawn: of those in service, the one in which something moves farthest.
 *
 * @param response - solved conditions
 * @returns name of a solved condition
 */
export function drawnMovement(response: Response): string {
  const farthest = (name: string): number =>
    Math.max(
      0,
      ...Object.values(response.conditions[name]?.movements ?? {}).map((movement) =>
        Math.hypot(...movement.translation),
      ),
    );
  const solved = MOVING.filter((name) => name in response.conditions);
  const [first = Object.keys(response.conditions)[0] ?? ''] = solved;
  return solved.reduce((most, name) => (farthest(name) > farthest(most) ? name : most), first);
}
