import { linesOf, placeOnLine } from '../../analysis/pipes/lines-of.js';
import {
  type OccasionalStress,
  occasionalConditions,
  occasionalStresses,
} from '../../analysis/pipes/occasional-stresses.js';
import type { Subject } from '../../analysis/subject.js';
import type { Calculation } from '../../judging/finding.js';
import { insideDiameter, metalArea, modulusOf } from '../../mechanics/stress/code-stress.js';
import type { Citation } from '../../sources/index.js';
import { OCCASIONAL_CONDITIONS } from '../asked-conditions.js';
import { type Demand, defineCheck } from '../define-check.js';
import { editionNotHeld, factorGrounds } from './code-edition.js';

const BUILDING: Citation = { source: 'asme-b31.9', clause: 'para 902.3.3', confidence: 'read' };
const POWER: Citation = { source: 'asme-b31.1', clause: 'para 104.8.2 and 102.2.4', confidence: 'memory' };

/**
 * Lasting and occasional stress together stay within the allowable stress times the factor of the code.
 *
 * Why: an earthquake and the jerk of a start last seconds, so the codes let the pipe be stressed somewhat higher than
 * by weight. The two are not taken together. Whether the building and the bracing hold is not judged here.
 */
export const occasionalStress = defineCheck({
  id: 'occasional-stress',
  title: 'Occasional stress',
  trade: 'Design engineer',
  section: 'stress',
  dependsOn: ['supports', 'weights', 'pressure'],
  cost: 'slow',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  conditions: OCCASIONAL_CONDITIONS,
  unit: 'Pa',
  basis: [BUILDING, POWER],
  exceeds: 'checks.occasional-stress.exceeds',
  noPlace: 'checks.occasional-stress.no-place',
  places: (subject) =>
    occasionalConditions(subject).length === 0 ? [] : linesOf(subject, occasionalStresses(subject)),
  at: ({ line }) => line,
  demands: ({ line, rows }, subject): readonly Demand[] => {
    const open = editionNotHeld(subject);
    if (open !== undefined) return open;
    const allowed = occasionalAllowable(subject);
    const { stress } = subject.installation.limits;
    return rows.map(
      (row): Demand => ({
        kind: 'compared',
        at: placeOnLine(row),
        condition: row.condition,
        demand: row.stress,
        limit: allowed,
        missing:
          stress.hot === undefined ? 'checks.stress.no-allowable' : 'checks.occasional-stress.no-factor',
        data: { part: row.part, line },
        rests: factorGrounds(row.state.intensification),
        basis: stress.code === 'B31.1' ? POWER : BUILDING,
        calculation: calculation(row, subject),
      }),
    );
  },
});

/**
 * What lasting and occasional stress together may come to: the hot allowable times the factor for occasional loads.
 *
 * @param subject - installation
 * @returns stress [Pa], or undefined where allowable or factor is not known
 */
export function occasionalAllowable({ installation }: Subject): number | undefined {
  const { stress, lateral } = installation.limits;
  const factor = stress.occasionalFactor ?? lateral?.occasionalFactor;
  return stress.hot && factor && stress.hot.value * factor.value;
}

function calculation(
  { state, moment, axialForce, without }: OccasionalStress,
  subject: Subject,
): Calculation {
  const { tube, pressure, intensification } = state;
  const pipe = [
    { symbol: 'P', value: pressure, unit: 'Pa', meaning: 'design pressure' },
    { symbol: 'D', value: tube.outsideDiameter, unit: 'm', meaning: 'outside diameter' },
  ] as const;
  const bending = [
    { symbol: 'i', value: intensification, unit: '-', meaning: 'stress intensification' },
    { symbol: 'MA', value: state.moment, unit: 'N·m', meaning: 'resultant moment of lasting loads' },
    {
      symbol: 'MB',
      value: moment,
      unit: 'N·m',
      meaning: `resultant of the change of moment from ${without}`,
    },
    { symbol: 'Z', value: modulusOf(state), unit: 'm³', meaning: 'section modulus' },
  ] as const;
  if (subject.installation.limits.stress.code === 'B31.1') {
    const wall = { symbol: 't', value: tube.wall, unit: 'm', meaning: 'wall' } as const;
    const formula = 'P * D / (4 * t) + max(0.75 * i, 1) * (MA + MB) / Z';
    return { symbol: 'SO', formula, unit: 'Pa', values: [...pipe, wall, ...bending] };
  }
  return {
    symbol: 'SO',
    formula: 'P * d^2 / (D^2 - d^2) + max(0.75 * i, 1) * (MA + MB) / Z + (NA + NB) / A',
    unit: 'Pa',
    values: [
      ...pipe,
      { symbol: 'd', value: insideDiameter(tube), unit: 'm', meaning: 'inside diameter' },
      ...bending,
      { symbol: 'NA', value: Math.abs(state.axialForce), unit: 'N', meaning: 'lasting axial force' },
      { symbol: 'NB', value: axialForce, unit: 'N', meaning: `change of axial force from ${without}` },
      { symbol: 'A', value: metalArea(tube), unit: 'm²', meaning: 'metal area' },
    ],
  };
}
