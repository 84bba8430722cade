import { isHypothetical } from '../../model/conditions/condition-roles.js';
import type { ReportContext } from '../context.js';
import { everyCondition } from '../words/condition-order.js';
import { carriesWeight } from '../words/support-word.js';

/**
 * Largest and least load of every support over all conditions that come to pass, each with the condition it comes from.
 *
 * @param context - results and writer
 * @returns one row for each support that carries weight
 */
export function supportEnvelope(context: ReportContext) {
  const { layout, response } = context.subject;
  const conditions = everyCondition(response).filter((condition) => !isHypothetical(condition));
  const rows = layout.supports.filter(carriesWeight).map((support) => {
    const loads = conditions.flatMap((condition) => {
      const own = condition.supports[support.mark];
      const isThere = own?.states.some((state) => state !== 'absent') ?? false;
      return own === undefined || !isThere ? [] : [{ load: -own.load.force[2], name: condition.title }];
    });
    const pick = (sign: 1 | -1) =>
      loads.reduce<(typeof loads)[number] | undefined>(
        (best, next) => (best === undefined || sign * (next.load - best.load) > 0 ? next : best),
        undefined,
      );
    return { mark: support.mark, most: pick(1), least: pick(-1) };
  });
  const show = context.write.scaled(
    'force',
    rows.flatMap(({ most, least }) => [most?.load, least?.load]),
  );
  return rows.map(({ mark, most, least }) => ({
    mark,
    most: show(most?.load),
    mostCondition: most?.name ?? '–',
    least: show(least?.load),
    leastCondition: least?.name ?? '–',
  }));
}
