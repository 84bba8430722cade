import { isService, ofRoles } from '../../../model/conditions/condition-roles.js';
import type { ReportContext, View } from '../../context.js';
import { orderedConditions } from '../../words/condition-order.js';
import { supportWord } from '../../words/support-word.js';

/**
 * Movement of nozzles, supports and ends in each condition, from the line as drawn, without load.
 *
 * @param context - results and writer
 * @returns one row per place, one group of three numbers per condition
 */
export function movements(context: ReportContext) {
  const { layout, response } = context.subject;
  const solved = orderedConditions(response);
  const conditions =
    context.reader === 'engineer' ? solved.filter(isService) : ofRoles(solved, ['hot', 'cold']);
  const { suction, discharge } = layout.nozzles;
  const places = [
    { name: 'suction nozzle', kind: 'pump', point: suction.point },
    { name: 'discharge nozzle', kind: 'pump', point: discharge.point },
    ...layout.supports.map((support) => ({
      name: support.mark,
      kind: supportWord(support),
      point: support.point,
    })),
  ];
  const decimals = context.write.system === 'us' ? 3 : 1;
  const show = (value: number | undefined): string => context.write.number(value, 'length', { decimals });
  return {
    unit: context.write.unit('length'),
    conditions: conditions.map((condition) => condition.title),
    rows: places.map((place) => ({
      name: place.name,
      kind: place.kind,
      movements: conditions.flatMap((condition) => {
        const moved = condition.movements[place.point]?.translation;
        return [show(moved?.[0]), show(moved?.[1]), show(moved?.[2])];
      }),
    })),
    hasRows: conditions.length > 0,
    installation: context.write.quantity(layout.frame.installationTemperature, 'temperature'),
  } satisfies View;
}
