import { checkValveDistances } from '../../analysis/pipes/pipe-diameters.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const RULES: Citation = {
  source: 'check-valve-discussion',
  clause: 'three, five and ten diameters are all in use',
  confidence: 'read',
};
/** Rules in use, in diameters of the discharge [-], with the words that are printed. */
const DIAMETERS = [
  [3, 'three'],
  [5, 'five'],
  [10, 'ten'],
] as const;

/**
 * The distance from the discharge port to a check valve, beside the rules in use.
 *
 * Why: a check valve close to the pump stands in a flow that still turns; its disc flutters, wears and may slam. The
 * rules in use contradict each other, so the distance is shown beside them and never decides.
 */
export const checkValveDistance = defineCheck({
  id: 'check-valve-distance',
  title: 'Check valve distance from pump',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'compares',
  blocks: 'nothing',
  consequence: 'practice',
  unit: 'm',
  basis: [RULES],
  exceeds: 'checks.check-valve-distance.exceeds',
  noPlace: 'checks.check-valve-distance.no-place',
  places: checkValveDistances,
  at: ({ name }) => name,
  demands: ({ distance, diameter }): readonly Demand[] => {
    const missed = DIAMETERS.filter(([count]) => distance < count * diameter).map(([, word]) => word);
    const kept = DIAMETERS.filter(([count]) => distance >= count * diameter).map(([, word]) => word);
    const words = (list: readonly string[]): string => (list.length === 0 ? 'none' : list.join(', '));
    return [
      {
        kind: 'forbidden',
        demand: distance,
        happens: missed.length > 0,
        remark: 'checks.check-valve-distance.kept',
        data: { missed: words(missed), kept: words(kept) },
      },
    ];
  },
});
