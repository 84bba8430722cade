import { nozzleLimits } from '../../analysis/nozzles/nozzle-limits.js';
import { connectorsOf, type PlacedConnector } from '../../analysis/pipes/connectors.js';
import type { Subject } from '../../analysis/subject.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const STATICS: Citation = {
  source: 'statics',
  clause: 'pressure times the effective area of the connector pushes its two sides apart',
  confidence: 'computed',
};

/**
 * The thrust of a flexible connector that neither rods nor an anchor take is within what the maker allows along the
 * nozzle.
 *
 * Why: the pressure stretches a connector with tons of force; beside a pump that hangs in its pipe that force goes into
 * the nozzle and shoves the pump along. No standard says how much is too much, so the maker's allowance is the limit
 * and without one it cannot be told. Whether a connector belongs there at all is another question, asked in
 * `connector-needed`.
 */
export const flexibleConnector = defineCheck({
  id: 'flexible-connector',
  title: 'Flexible connector thrust',
  trade: 'Pipe fitter',
  section: 'connectors',
  dependsOn: ['supports', 'weights', 'pressure', 'parts'],
  cost: 'slow',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: 'N',
  basis: [STATICS],
  exceeds: 'checks.flexible-connector.exceeds',
  noPlace: 'checks.flexible-connector.no-place',
  places: connectorsOf,
  at: ({ part }) => part.name,
  demands: (place, subject): readonly Demand[] => {
    const { part, side, anchoredBy, effects } = place;
    if (anchoredBy !== undefined) {
      const data = { anchor: anchoredBy };
      return [{ kind: 'does-not-apply', code: 'checks.flexible-connector.anchored', data }];
    }
    if (part.rods === 'taut')
      return [{ kind: 'does-not-apply', code: 'checks.flexible-connector.tied', data: { side } }];
    const limits = axialLimit(place, subject);
    return effects.map(({ condition, pressure, thrust, rods, unheld }) => ({
      kind: 'compared',
      condition,
      demand: unheld,
      limit: limits?.limit,
      missing: 'checks.flexible-connector.no-limit',
      data: { side },
      ...(limits && { basis: limits.basis }),
      ...(rods === 'none' && thrust > 0 && { calculation: worked(pressure, part.thrustArea.value) }),
    }));
  },
});

function axialLimit({ side }: PlacedConnector, { installation, layout }: Subject) {
  const limits = nozzleLimits('maker', layout.nozzles[side], installation);
  return limits && { limit: limits.allowance.axialForce, basis: limits.basis };
}

function worked(pressure: number, area: number) {
  return {
    formula: 'p * A',
    symbol: 'F',
    values: [
      { symbol: 'p', value: pressure, unit: 'Pa' as const, meaning: 'gauge pressure' },
      { symbol: 'A', value: area, unit: 'm²' as const, meaning: 'effective area of the connector' },
    ],
    unit: 'N' as const,
  };
}
