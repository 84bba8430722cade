import { citationOf } from '../../analysis/citation-of.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { supportFacts } from '../../model/support-parts.js';
import type { Citation } from '../../sources/index.js';
import { askedConditions, SUPPORT_CONDITIONS } from '../asked-conditions.js';
import { defineCheck } from '../define-check.js';

const BASIS: Citation = { source: 'mss-sp-58', clause: 'table of hanger rod ratings', confidence: 'memory' };

/**
 * The load of each rod stays within its rating.
 *
 * Why: a hung pump and the water in its pipe hang on a few threaded rods, and the pressure test with cold water is
 * often the heaviest day of their life, so every condition counts. Rods of one support are taken to share evenly;
 * a trapeze that is loaded off its middle needs a look of its own.
 */
export const rodLoad = defineCheck({
  id: 'rod-load',
  title: 'Hanger rod load',
  trade: 'Pipe fitter',
  section: 'support-loads',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  conditions: SUPPORT_CONDITIONS,
  unit: 'N',
  basis: [BASIS],
  exceeds: 'checks.rod-load.exceeds',
  noPlace: 'checks.rod-load.no-place',
  places: ({ layout }) =>
    layout.supports.filter((support) => support.part?.rods !== undefined || supportFacts(support).hangs),
  at: (support) => support.mark,
  demands: (support, subject) => {
    const rods = support.part?.rods;
    const count = rods?.count ?? 1;
    const rating = rods?.rating;
    return askedConditions(SUPPORT_CONDITIONS, subject).map((condition) => {
      const load = supportLoadIn(condition.solved, support.mark)?.resultant;
      return {
        kind: 'compared' as const,
        condition: condition.name,
        demand: load === undefined ? undefined : load / count,
        limit: rating?.value,
        missing: load === undefined ? 'checks.support-not-solved' : 'checks.rod-load.no-rating',
        data: { rods: count, ...(rods?.size !== undefined && { size: rods.size }) },
        ...(rating !== undefined && { basis: citationOf(rating, BASIS) }),
        ...(load !== undefined && {
          calculation: {
            symbol: 'FR',
            formula: 'F / n',
            unit: 'N' as const,
            values: [
              { symbol: 'F', value: load, unit: 'N' as const, meaning: 'pull on the support' },
              { symbol: 'n', value: count, unit: '-' as const, meaning: 'rods that share it' },
            ],
          },
        }),
      };
    });
  },
});
