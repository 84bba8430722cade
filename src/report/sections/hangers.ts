import { isOf } from '../../checks/all-checks.js';
import type { ConditionResponse } from '../../mechanics/frame/response.js';
import { inCondition } from '../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import type { ReportContext, View } from '../context.js';
import { supportEnvelope } from '../rows/support-envelope.js';
import { carriesWeight, rodText, supportWord } from '../words/support-word.js';
import { NO_NUMBER } from '../writer.js';

/** Conditions a fitter meets, as columns: dry, filled, under test, with the pump out. */
const COLUMNS = ['empty', 'filled', 'test', 'pump-out'] as const;

/**
 * What to order and hang: every support with its rods, what hangs on it dry, filled, under test and with the pump
 * out, and the largest load on the structure.
 *
 * @param context - results and writer
 * @returns one row for each support that carries weight, and those that only guide
 */
export function hangers(context: ReportContext) {
  const { layout, response } = context.subject;
  const { write } = context;
  const carrying = layout.supports.filter(carriesWeight);
  const extremes = supportEnvelope(context);
  const down = (name: (typeof COLUMNS)[number], support: PlacedSupport): number | undefined => {
    const load = standing(inCondition(response.conditions, name), support)?.load.force[2];
    return load === undefined ? undefined : -load;
  };
  const show = write.scaled(
    'force',
    carrying.flatMap((support) => COLUMNS.map((name) => down(name, support))),
  );
  const rows = carrying.map((support) => {
    const rods = support.part?.rods;
    const found = context.findings.find(
      (finding) => isOf(finding, 'rod-load') && finding.at === support.mark,
    );
    const extreme = extremes.find(({ mark }) => mark === support.mark);
    return {
      mark: support.mark,
      kind: supportWord(support),
      isEnd: support.kind === 'end',
      distance:
        support.line === 'pump' ? NO_NUMBER : write.quantity(support.station, 'length', { feetInches: true }),
      rods: rodText(support),
      rodLength: write.quantity(rods?.length, 'length', { feetInches: true }),
      loads: COLUMNS.map((name) => ({
        load: show(down(name, support)),
        lifts: standing(inCondition(response.conditions, name), support)?.states.includes('lifted') ?? false,
      })),
      most: extreme?.most ?? NO_NUMBER,
      mostCondition: extreme?.mostCondition ?? NO_NUMBER,
      rating: rods?.rating === undefined ? NO_NUMBER : write.number(rods.rating.value, 'force'),
      ratio: write.ratio(found?.ratio),
      exceeds: found?.verdict === 'exceeds',
    };
  });
  return {
    unit: write.unit('force'),
    rows,
    hasRows: rows.length > 0,
    guides: layout.supports
      .filter((support) => !carriesWeight(support))
      .map((support) => `${support.mark} (${supportWord(support)})`)
      .join(', '),
    hasGuides: layout.supports.some((support) => !carriesWeight(support)),
  } satisfies View;
}

/** The support in a condition, unless it is taken out there. */
function standing(condition: ConditionResponse | undefined, { mark }: PlacedSupport) {
  const own = condition?.supports[mark];
  return own?.states.some((state) => state !== 'absent') ? own : undefined;
}
