import type { ConditionResponse } from '../../mechanics/frame/response.js';
import { inCondition } from '../../model/conditions/condition-roles.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import { springLoads } from '../../model/frame/spring-group.js';
import type { ReportContext, View } from '../context.js';

/** Conditions in which the springs under a pump are told, in printed order. */
const READ = ['empty', 'filled', 'running', 'hot', 'cold'] as const;

/**
 * The springs under the pump one by one, and what they are set to beside what stands on them.
 *
 * @param responses - by condition, with the supports as set
 * @param context - pump and writer
 * @returns finished text of one group; nothing where the pump stands on no springs
 */
export function underPump(
  responses: Readonly<Record<string, ConditionResponse>>,
  context: ReportContext,
): readonly View[] {
  const { pump, service } = context.subject.installation;
  const { springs, inertiaBase } = pump.base ?? {};
  if (springs === undefined) return [];
  const { write } = context;
  const byCondition = READ.map((name) => {
    const moved = inCondition(responses, name)?.movements['pump base'];
    return moved === undefined ? undefined : springLoads(springs, moved);
  });
  const show = write.scaled('force', [springs.load.value, ...byCondition.flatMap((loads) => loads ?? [])]);
  const mass =
    pump.casing.mass.value +
    pump.motor.mass.value +
    pump.contents.value * service.density.filled.value +
    (inertiaBase?.mass.value ?? 0);
  const places = springs.places ?? [];
  const least = Math.min(...byCondition.flatMap((loads) => loads ?? []));
  return [
    {
      count: String(springs.count),
      set: write.quantity(springs.count * springs.load.value, 'force'),
      stands: write.quantity(mass * STANDARD_GRAVITY, 'force'),
      hasInertiaBase: inertiaBase !== undefined,
      hasPlaces: places.length > 0,
      hasSide: springs.side !== undefined,
      pulls: least < 0,
      rows: places.map(([east, north], index) => {
        const [dry, filled, running, hot, cold] = byCondition.map((loads) => show(loads?.[index]));
        return {
          east: write.quantity(east, 'length'),
          north: write.quantity(north, 'length'),
          set: show(springs.load.value),
          dry: dry ?? '',
          filled: filled ?? '',
          running: running ?? '',
          hot: hot ?? '',
          cold: cold ?? '',
          exceeds: byCondition.some((loads) => (loads?.[index] ?? 0) < 0),
        };
      }),
    },
  ];
}
