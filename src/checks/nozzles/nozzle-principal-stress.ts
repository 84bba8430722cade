import type { NozzleLoadRow } from '../../analysis/nozzles/nozzle-load-rows.js';
import type { Subject } from '../../analysis/subject.js';
import { findPipe } from '../../catalog/index.js';
import type { Calculation } from '../../judging/finding.js';
import { nozzleStress, principalStress } from '../../mechanics/stress/nozzle-stress.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { NOZZLE_CONDITIONS } from '../asked-conditions.js';
import { type Demand, defineCheck } from '../define-check.js';
import { casingRemark } from './casing-remark.js';
import { rowsOf } from './nozzle-demands.js';

const ANNEX: Citation = {
  source: 'api-610',
  clause: 'annex F.2, pumps supported by their piping only',
  confidence: 'memory',
};

/** Largest principal stress the annex allows in a nozzle [Pa]. */
const LARGEST_STRESS = 41e6;

/**
 * Principal stress in each nozzle of a pump that only its pipe carries, taken as schedule 40 pipe of its size.
 *
 * Why: it is the one published rule made for pumps that hang in their pipe. It belongs to steel pumps of the process
 * standard, so it is a comparison unless a document in the file names it for this pump.
 */
export const nozzlePrincipalStress = defineCheck({
  id: 'nozzle-principal-stress',
  title: 'Nozzle principal stress',
  trade: 'Design engineer',
  section: 'nozzle-loads',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  conditions: NOZZLE_CONDITIONS,
  unit: 'Pa',
  basis: [ANNEX],
  exceeds: 'checks.nozzle-principal-stress.exceeds',
  noPlace: 'checks.nozzle-principal-stress.no-place',
  places: ({ layout }) => [layout.nozzles.suction, layout.nozzles.discharge],
  at: ({ which }) => `${which} nozzle`,
  demands: (nozzle, subject): readonly Demand[] => {
    const { limits, pump } = subject.installation;
    const comparison = limits.nozzle.basis !== 'nozzle principal stress';
    if (comparison && pump.mount !== 'hung') {
      return [{ kind: 'does-not-apply', comparison, code: 'checks.nozzle-principal-stress.not-hung' }];
    }
    return rowsOf(nozzle, subject).map((row) => principalStressDemand(nozzle, row, comparison, subject));
  },
});

/**
 * Principal stress of a nozzle under one row of loads.
 *
 * @param nozzle - the nozzle, for its size
 * @param row - its loads in one condition
 * @param comparison - true where another basis decides
 * @param subject - for the casing
 * @returns the demand [Pa]
 */
export function principalStressDemand(
  nozzle: PlacedNozzle,
  row: NozzleLoadRow,
  comparison: boolean,
  subject: Subject,
): Demand {
  const pipe = findPipe({ nps: nozzle.nps, schedule: '40', material: 'carbon steel' });
  const casing = subject.installation.pump.casing.material;
  const common = {
    kind: 'compared' as const,
    condition: row.condition,
    comparison,
    limit: LARGEST_STRESS,
    missing: 'checks.nozzle-principal-stress.no-section' as const,
    data: { nozzle: nozzle.which, size: nozzle.nps, casing },
    remark: casingRemark(casing),
  };
  if (pipe === undefined) return { ...common, demand: undefined };
  const load = {
    outsideDiameter: pipe.outsideDiameter,
    insideDiameter: pipe.outsideDiameter - 2 * pipe.wall,
    axialForce: row.own.axialForce,
    crossForce: Math.hypot(row.own.verticalForce, row.own.crossForce),
    bendingMoment: Math.hypot(row.own.verticalMoment, row.own.crossMoment),
    torsion: row.own.axialMoment,
  };
  const stress = nozzleStress(load);
  const calculation: Calculation = {
    symbol: 'Sp',
    formula: 'S / 2 + sqrt(S^2 / 4 + T^2)',
    unit: 'Pa',
    values: [
      { symbol: 'S', value: stress.normal, unit: 'Pa', meaning: 'stress from pull and bending' },
      { symbol: 'T', value: stress.shear, unit: 'Pa', meaning: 'shear stress from cross force and torsion' },
    ],
  };
  return { ...common, demand: principalStress(stress), calculation };
}
