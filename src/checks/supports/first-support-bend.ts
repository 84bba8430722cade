import { citationOf } from '../../analysis/citation-of.js';
import { weightSupports } from '../../analysis/supports/weight-supports.js';
import type { PlacedBend, PlacedSupport } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const GUIDE: Citation = {
  source: 'ufgs-15562a',
  clause: 'a support within 1 ft of the fitting joint at each change of direction',
  confidence: 'read',
};

/** The remark takes the place of the advice: no hanger is asked for where the pump hangs. */
const BESIDE_HUNG_PUMP = {
  comparison: true,
  remark: 'checks.first-support-bend.beside-hung-pump',
  advice: 'checks.first-support-bend.beside-hung-pump',
} as const;

/**
 * Each bend has a support that carries weight within reach, measured along the pipe from the nearer end of the bend.
 *
 * Why: pipe that hangs out past a bend twists the leg before it, and on the first bend that leg is the pump nozzle.
 * The pump itself never counts as the support of a bend. A pump that hangs in its pipe hangs between the first supports
 * of both lines, so for bends between it and the first support the guide's distance is a comparison, and nozzle loads
 * and stress decide. A distance given in the file holds for every bend.
 */
export const firstSupportBend = defineCheck({
  id: 'first-support-bend',
  title: 'Support near each bend',
  trade: 'Pipe fitter',
  section: 'support-loads',
  dependsOn: ['supports'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'start',
  consequence: 'practice',
  unit: 'm',
  basis: [GUIDE],
  exceeds: 'checks.first-support-bend.exceeds',
  noPlace: 'checks.first-support-bend.no-place',
  places: ({ layout }) => layout.bends,
  at: ({ name }) => name,
  demands: (bend, subject): readonly Demand[] => {
    const limit = subject.installation.limits.firstSupport.bend;
    const basis = citationOf(limit, GUIDE);
    const supports = weightSupports(subject, bend.line);
    const [nearest] = supports
      .map((support) => ({ mark: support.mark, distance: distanceTo(bend, support) }))
      .sort((a, b) => a.distance - b.distance);
    if (nearest === undefined) {
      return [{ kind: 'forbidden', happens: true, advice: 'checks.first-support-bend.none', basis }];
    }
    const isBesidePump = bend.end < (supports[0]?.station ?? 0);
    const isHung = subject.installation.pump.mount === 'hung' && limit.origin.kind !== 'given';
    return [
      {
        kind: 'compared',
        demand: nearest.distance,
        limit: limit.value,
        missing: 'checks.first-support-bend.no-limit',
        data: { support: nearest.mark },
        basis,
        ...(isBesidePump && isHung && BESIDE_HUNG_PUMP),
      },
    ];
  },
});

/** Along the pipe from the nearer end of the bend; zero for a support on the bend itself [m]. */
function distanceTo(bend: PlacedBend, support: PlacedSupport): number {
  return Math.max(0, bend.start - support.station, support.station - bend.end);
}
