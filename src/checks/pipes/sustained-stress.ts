import { linesOf, placeOnLine } from '../../analysis/pipes/lines-of.js';
import { type SustainedStress, sustainedStresses } from '../../analysis/pipes/sustained-stresses.js';
import type { Subject } from '../../analysis/subject.js';
import type { Calculation } from '../../judging/finding.js';
import { insideDiameter, metalArea, modulusOf } from '../../mechanics/stress/code-stress.js';
import { conditionId } from '../../model/conditions/condition-roles.js';
import type { Citation } from '../../sources/index.js';
import { SUSTAINED_CONDITIONS } from '../asked-conditions.js';
import { type Demand, defineCheck } from '../define-check.js';
import { editionNotHeld, factorGrounds } from './code-edition.js';

const BUILDING: Citation = { source: 'asme-b31.9', clause: 'para 902.3.2(d) and (e)', confidence: 'read' };
const POWER: Citation = { source: 'asme-b31.1', clause: 'para 104.8.1', confidence: 'memory' };

/**
 * Longitudinal stress from pressure and weight stays within the allowable stress at the hot temperature.
 *
 * Why: sustained stress does not ease as the pipe yields, so it is held below the full allowable. It is read in the
 * filled condition, where no expansion acts, with the design pressure. One finding per line names its worst part.
 */
export const sustainedStress = defineCheck({
  id: 'sustained-stress',
  title: 'Sustained stress',
  trade: 'Design engineer',
  section: 'stress',
  dependsOn: ['supports', 'weights', 'pressure'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  conditions: SUSTAINED_CONDITIONS,
  unit: 'Pa',
  basis: [BUILDING, POWER],
  exceeds: 'checks.sustained-stress.exceeds',
  noPlace: 'checks.sustained-stress.no-place',
  places: (subject) => linesOf(subject, sustainedStresses(subject)),
  at: ({ line }) => line,
  demands: ({ line, rows }, subject): readonly Demand[] => {
    const open = editionNotHeld(subject);
    if (open !== undefined) return open;
    const { stress } = subject.installation.limits;
    return rows.map((row): Demand => {
      return {
        kind: 'compared',
        at: placeOnLine(row),
        condition: conditionId('filled'),
        demand: row.stress,
        limit: stress.hot?.value,
        missing: 'checks.stress.no-allowable',
        data: { part: row.part, line },
        rests: factorGrounds(row.state.intensification),
        basis: stress.code === 'B31.1' ? POWER : BUILDING,
        calculation: calculation(row, subject),
      };
    });
  },
});

function calculation({ state }: SustainedStress, subject: Subject): Calculation {
  const { tube, pressure, moment, intensification, axialForce } = state;
  const pipe = [
    { symbol: 'P', value: pressure, unit: 'Pa', meaning: 'design pressure' },
    { symbol: 'D', value: tube.outsideDiameter, unit: 'm', meaning: 'outside diameter' },
  ] as const;
  const bending = [
    { symbol: 'i', value: intensification, unit: '-', meaning: 'stress intensification' },
    { symbol: 'M', value: moment, unit: 'N·m', meaning: 'resultant moment' },
    { symbol: 'Z', value: modulusOf(state), unit: 'm³', meaning: 'section modulus' },
  ] as const;
  if (subject.installation.limits.stress.code === 'B31.1') {
    const wall = { symbol: 't', value: tube.wall, unit: 'm', meaning: 'wall' } as const;
    const formula = 'P * D / (4 * t) + max(0.75 * i, 1) * M / Z';
    return { symbol: 'SL', formula, unit: 'Pa', values: [...pipe, wall, ...bending] };
  }
  return {
    symbol: 'SL',
    formula: 'P * d^2 / (D^2 - d^2) + max(0.75 * i, 1) * M / Z + N / A',
    unit: 'Pa',
    values: [
      ...pipe,
      { symbol: 'd', value: insideDiameter(tube), unit: 'm', meaning: 'inside diameter' },
      ...bending,
      { symbol: 'N', value: Math.abs(axialForce), unit: 'N', meaning: 'axial force in either sense' },
      { symbol: 'A', value: metalArea(tube), unit: 'm²', meaning: 'metal area' },
    ],
  };
}
