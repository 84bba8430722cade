import { nozzleLoadRows } from '../../../analysis/nozzles/nozzle-load-rows.js';
import { conditionTitle } from '../../../model/conditions/condition-roles.js';
import type { PlacedNozzle } from '../../../model/layout/layout.js';
import type { ReportContext, View } from '../../context.js';
import { everyCondition } from '../../words/condition-order.js';

/**
 * Loads on both nozzles in every condition, in plan axes and in the nozzle's own.
 *
 * @param context - results and writer
 * @returns table rows
 */
export function nozzleLoads(context: ReportContext) {
  const { layout, response } = context.subject;
  const conditions = everyCondition(response).map(({ name }) => name);
  return {
    forceUnit: context.write.unit('force'),
    momentUnit: context.write.unit('moment'),
    nozzles: [layout.nozzles.suction, layout.nozzles.discharge].map((nozzle) =>
      nozzleRows(nozzle, conditions, context),
    ),
  } satisfies View;
}

function nozzleRows(nozzle: PlacedNozzle, conditions: readonly string[], context: ReportContext) {
  const rows = nozzleLoadRows(context.subject);
  const force = context.write.scaled(
    'force',
    rows.flatMap((row) => [...row.plan.force]),
  );
  const moment = context.write.scaled(
    'moment',
    rows.flatMap((row) => [...row.plan.moment]),
  );
  const found = conditions.flatMap((condition) =>
    rows.filter((row) => row.nozzle === nozzle.which && row.condition === condition),
  );
  return {
    which: nozzle.which,
    size: `NPS ${nozzle.nps}`,
    axis: context.write.bearing(nozzle.axis),
    cross: context.write.bearing(crossOf(nozzle.axis)),
    rows: found.map(({ condition, plan, own }) => ({
      condition: conditionTitle(condition),
      loads: [
        ...plan.force.map((value) => force(value)),
        force(own.axialForce),
        force(own.crossForce),
        force(own.resultantForce),
        ...plan.moment.map((value) => moment(value)),
        moment(own.axialMoment),
        moment(own.crossMoment),
        moment(own.resultantMoment),
      ],
    })),
  };
}

/** Direction square to the nozzle and to the vertical, right-handed after both. */
function crossOf([east, north]: PlacedNozzle['axis']): PlacedNozzle['axis'] {
  const level = Math.hypot(east, north);
  return level === 0 ? [1, 0, 0] : [north / level, -east / level, 0];
}
