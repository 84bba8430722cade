import { givenIn } from '../../analysis/citation-of.js';
import { nozzleLimits } from '../../analysis/nozzles/nozzle-limits.js';
import type { NozzleBasis } from '../../input/installation.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import { type Demand, defineCheck } from '../define-check.js';
import { casingRemark, isWeakerThanSteel } from './casing-remark.js';
import { largestLoad, nozzleDemands } from './nozzle-demands.js';

/** How a basis is named behind "against". */
const WORDS: Readonly<Record<NozzleBasis, string>> = {
  maker: "the manufacturer's limits",
  'process-pump table': 'the process-pump table',
  'process-pump table doubled': 'twice the process-pump table',
  'nozzle principal stress': 'the principal stress of the nozzle',
};

interface Compared {
  readonly nozzle: PlacedNozzle;
  readonly basis: NozzleBasis;
}

/**
 * Loads on each nozzle beside every other basis the file asks for. Never the verdict.
 *
 * Why: makers of building-services pumps often publish no limits, and engineers compare with the process-pump table.
 * That table is for steel pumps of another trade; what it means for this casing is said beside it.
 * The principal stress of the nozzle has a check of its own.
 */
export const nozzleComparison = defineCheck({
  id: 'nozzle-comparison',
  title: 'Nozzle loads, other limits',
  trade: 'Design engineer',
  section: 'nozzle-loads',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'compares',
  blocks: 'nothing',
  consequence: 'hurt or break',
  unit: 'N',
  basis: [givenIn('comparisons of the nozzle loads')],
  exceeds: 'checks.nozzle-comparison.exceeds',
  noPlace: 'checks.nozzle-comparison.no-place',
  places: ({ installation, layout }): readonly Compared[] => {
    const { basis, comparisons } = installation.limits.nozzle;
    const others = [...new Set(comparisons)].filter(
      (other) => other !== basis && other !== 'nozzle principal stress',
    );
    return others.flatMap((other) =>
      [layout.nozzles.suction, layout.nozzles.discharge].map((nozzle) => ({ nozzle, basis: other })),
    );
  },
  at: ({ nozzle, basis }) => `${nozzle.which} nozzle against ${WORDS[basis]}`,
  demands: ({ nozzle, basis }, subject): readonly Demand[] => {
    const limits = nozzleLimits(basis, nozzle, subject.installation);
    if (limits === undefined) {
      const missing =
        basis === 'maker' ? 'checks.nozzle-loads.no-maker-limits' : 'checks.nozzle-loads.not-in-table';
      return largestLoad(nozzle, subject, missing);
    }
    const demands = nozzleDemands(nozzle, limits, subject);
    if (basis === 'maker') return demands;
    const { material } = subject.installation.pump.casing;
    const advice = isWeakerThanSteel(material) && {
      advice: 'checks.nozzle-comparison.iron-exceeds' as const,
    };
    return demands.map((demand) => ({ ...demand, remark: casingRemark(material), ...advice }));
  },
});
