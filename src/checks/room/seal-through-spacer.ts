import { citationOf } from '../../analysis/citation-of.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const GEOMETRY: Citation = {
  source: 'common-practice',
  clause: 'the seal passes between the shaft ends once the spacer is out',
  confidence: 'common practice',
};

/**
 * The seal comes out through the window of the coupling, so that the motor need not be lifted to change it.
 *
 * Why: this is what a split-coupled pump is bought for. The rotor is lowered and propped first, and what it is lowered by
 * is not counted here: the maker's drawing says whether the window is measured before or after.
 */
export const sealThroughSpacer = defineCheck({
  id: 'seal-through-spacer',
  title: 'Seal replacement with motor in place',
  trade: 'Rigger, and coordination of trades',
  section: 'access',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [GEOMETRY],
  exceeds: 'checks.seal-through-spacer.exceeds',
  noPlace: 'checks.seal-through-spacer.no-place',
  places: ({ installation }) => (installation.pump.build === 'split-coupled' ? [installation.pump.mark] : []),
  at: () => 'coupling',
  demands: (_mark, { installation }): readonly Demand[] => {
    const spacer = installation.pump.dimensions?.spacer;
    if (spacer?.sealLength === undefined)
      return [{ kind: 'cannot-tell', code: 'checks.seal-through-spacer.unknown' }];
    return [
      {
        kind: 'compared',
        sense: 'at least',
        demand: spacer.length.value,
        limit: spacer.sealLength.value,
        remark: 'checks.seal-through-spacer.passes',
        basis: citationOf(spacer.length, GEOMETRY),
        data: { obstacle: 'shaft ends', short: Math.max(0, spacer.sealLength.value - spacer.length.value) },
      },
    ];
  },
});
