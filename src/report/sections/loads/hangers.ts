import { supportLoadIn } from '../../../analysis/supports/support-loads.js';
import { isOf } from '../../../checks/all-checks.js';
import { inCondition } from '../../../model/conditions/condition-roles.js';
import type { ReportContext, View } from '../../context.js';
import { largestLoadRows } from '../../rows/largest-load-rows.js';
import { carriesWeight, rodText, supportWord } from '../../words/support-word.js';
import { NO_NUMBER } from '../../writer.js';

/** Conditions a fitter meets, as columns: dry, filled, under test, with the pump out. */
const COLUMNS = ['empty', 'filled', 'test', 'pump-out'] as const;

/**
 * What to order and hang: every support with its rods, what hangs on it dry, filled, under test and with the pump
 * out, and the largest load on the structure down, up and sideways; the ends of the lines and the base of the pump with
 * them.
 *
 * @param context - results and writer
 * @returns one row for each support, end and base that carries weight, and words for those that only guide
 */
export function hangers(context: ReportContext) {
  const { layout, response } = context.subject;
  const { write } = context;
  const largest = largestLoadRows(context.subject, write);
  const rows = layout.supports.filter(carriesWeight).map((support) => {
    const rods = support.part?.rods;
    const found = context.findings.find(
      (finding) => isOf(finding, 'rod-load') && finding.at === support.mark,
    );
    const most = largest.find(({ mark }) => mark === support.mark);
    const loads = COLUMNS.map((name) => supportLoadIn(inCondition(response.conditions, name), support.mark));
    return {
      mark: support.mark,
      kind: supportWord(support),
      isNamed: support.part === undefined,
      distance:
        support.line === 'pump' ? NO_NUMBER : write.quantity(support.station, 'length', { feetInches: true }),
      // The unit stands in the head of the column.
      rods: rodText(support).replace(/ in$/u, ''),
      hasRods: rods !== undefined,
      rodLength: write.quantity(rods?.length, 'length', { feetInches: true }),
      loads: loads.map((load) => ({
        load: write.loadNumber(load?.isThere && carriesWeight(support) ? load.downward : undefined),
        lifts: load?.isLifted ?? false,
      })),
      down: most?.down ?? NO_NUMBER,
      up: most?.up ?? NO_NUMBER,
      sideways: most?.sideways ?? NO_NUMBER,
      governs: most?.governs ?? NO_NUMBER,
      governingIn: (most?.governingIn ?? NO_NUMBER).replaceAll(' ', '\u00a0'),
      isDown: most?.governs === 'down',
      isUp: most?.governs === 'up',
      isSideways: most?.governs === 'sideways',
      rating: write.loadNumber(rods?.rating?.value),
      ratio: write.ratio(found?.ratio),
      exceeds: found?.verdict === 'exceeds',
    };
  });
  return {
    unit: write.unit('force'),
    rows,
    hasRows: rows.length > 0,
    // What only guides has one load to hold, and no row of its own.
    guides: layout.supports
      .filter((support) => !carriesWeight(support))
      .map((support) => {
        const most = largest.find(({ mark }) => mark === support.mark);
        const load = most?.governs === NO_NUMBER ? '' : ` ${most?.governing} ${most?.governs}`;
        return `${support.mark} (${supportWord(support)})${load}`;
      })
      .join(', '),
    hasGuides: layout.supports.some((support) => !carriesWeight(support)),
  } satisfies View;
}
