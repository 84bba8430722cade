import type { UnsolvedCondition } from '../../mechanics/frame/response.js';
import { roleOf } from '../../model/conditions/condition-roles.js';
import { norm, subtract } from '../../model/vector.js';
import { solvedOf } from '../conditions.js';
import type { Facts } from '../facts.js';
import { type NozzleLoadRow, nozzleLoadRows } from '../nozzles/nozzle-load-rows.js';
import { SAME, supportLoadIn } from './support-loads.js';

/** What happens when one hanger near the pump is slack. */
export interface SlackQuestion {
  readonly mark: string;
  readonly condition: string;
  /** Why the line falls then. */
  readonly falls?: UnsolvedCondition;
  /** Loads on the nozzles; empty where it falls. */
  readonly nozzles: readonly NozzleLoadRow[];
  /** The supports that take most of its share: load filled and then, down [N]. */
  readonly takers: readonly { readonly mark: string; readonly before: number; readonly slack: number }[];
  /** Point that moves furthest from where it stood filled, and how far [m]. */
  readonly furthest?: { readonly point: string; readonly by: number };
}

/** How many supports are named that take over the load. */
const TAKERS = 2;

/**
 * The questions "what if this hanger is slack", with what came of them.
 *
 * @param subject - layout and response
 * @returns one entry for each hanger near the pump, in the order of the conditions
 */
export function slackQuestions(subject: Facts): readonly SlackQuestion[] {
  const { layout, response } = subject;
  const rows = nozzleLoadRows(subject);
  const filled = solvedOf(subject, 'filled')?.solved;
  return layout.frame.conditions.flatMap((condition): readonly SlackQuestion[] => {
    const role = roleOf(condition);
    if (role.kind !== 'slack') return [];
    const { name } = condition;
    const mark = role.support;
    const solved = response.conditions[name];
    const falls = response.unsolved?.[name];
    if (solved === undefined) {
      return [{ mark, condition: name, nozzles: [], takers: [], ...(falls && { falls }) }];
    }
    const load = (of: typeof solved, support: string) => supportLoadIn(of, support)?.downward ?? 0;
    const takers = layout.supports
      .filter((support) => support.mark !== mark && filled !== undefined)
      .map((support) => ({
        mark: support.mark,
        before: filled === undefined ? 0 : load(filled, support.mark),
        slack: load(solved, support.mark),
      }))
      .sort((a, b) => b.slack - b.before - (a.slack - a.before))
      .slice(0, TAKERS);
    const moved = Object.entries(solved.movements).flatMap(([point, { translation }]) => {
      const before = filled?.movements[point]?.translation;
      return before === undefined ? [] : [{ point, by: norm(subtract(translation, before)) }];
    });
    const furthest = moved.reduce<(typeof moved)[number] | undefined>(
      (most, next) => (most === undefined || next.by > most.by * (1 + SAME) ? next : most),
      undefined,
    );
    return [
      {
        mark,
        condition: name,
        nozzles: rows.filter((row) => row.condition === name),
        takers,
        ...(furthest && { furthest }),
      },
    ];
  });
}
