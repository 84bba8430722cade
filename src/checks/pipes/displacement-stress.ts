import { type DisplacementStress, displacementStresses } from '../../analysis/pipes/displacement-stresses.js';
import { linesOf, placeOnLine } from '../../analysis/pipes/lines-of.js';
import { sustainedStressAt } from '../../analysis/pipes/sustained-stresses.js';
import type { Subject } from '../../analysis/subject.js';
import {
  type AllowableStresses,
  allowableDisplacementRange,
  allowableRangeWithLeftOver,
  modulusOf,
} from '../../mechanics/stress/code-stress.js';
import type { Citation } from '../../sources/index.js';
import { RANGE_CONDITIONS } from '../asked-conditions.js';
import { type Demand, defineCheck } from '../define-check.js';
import { editionNotHeld, factorGrounds } from './code-edition.js';

const BUILDING: Citation = {
  source: 'asme-b31.9',
  clause: 'para 902.3.2(d), with B31.1 para 102.3.2(C) eq (1)',
  confidence: 'read',
};
const POWER: Citation = { source: 'asme-b31.1', clause: 'para 104.8.3 and 102.3.2(C)', confidence: 'memory' };

/**
 * Stress range from expansion stays within the allowable range.
 *
 * Why: pipe between two points that do not give is bent anew at every warm-up, and breaks by fatigue at an elbow or a
 * tee. The allowable is f (1.25 Sc + 0.25 Sh); only where that is not enough is the unused part of the sustained
 * allowance at the same section added, as the code permits.
 */
export const displacementStress = defineCheck({
  id: 'displacement-stress',
  title: 'Displacement stress range',
  trade: 'Design engineer',
  section: 'stress',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  conditions: RANGE_CONDITIONS,
  unit: 'Pa',
  basis: [BUILDING, POWER],
  exceeds: 'checks.displacement-stress.exceeds',
  noPlace: 'checks.displacement-stress.no-place',
  places: (subject) => linesOf(subject, displacementStresses(subject)),
  at: ({ line }) => line,
  demands: ({ line, rows }, subject): readonly Demand[] => {
    const open = editionNotHeld(subject);
    if (open !== undefined) return open;
    const basis = subject.installation.limits.stress.code === 'B31.1' ? POWER : BUILDING;
    return rows.map((row): Demand => {
      const allowed = allowedRange(row, subject);
      return {
        kind: 'compared',
        at: placeOnLine(row),
        condition: row.between,
        demand: row.stress,
        limit: allowed?.range,
        missing: 'checks.stress.no-allowable',
        data: { part: row.part, line },
        rests: factorGrounds(row.intensification),
        basis,
        ...(allowed?.withLeftOver === true && { remark: 'checks.displacement-stress.left-over' }),
        calculation: {
          symbol: 'SE',
          formula: 'i * M / Z',
          unit: 'Pa',
          values: [
            { symbol: 'i', value: row.intensification, unit: '-', meaning: 'stress intensification' },
            { symbol: 'M', value: row.moment, unit: 'N·m', meaning: `range of the moment, ${row.between}` },
            { symbol: 'Z', value: modulusOf(row), unit: 'm³', meaning: 'section modulus' },
          ],
        },
      };
    });
  },
});

function allowedRange(
  row: DisplacementStress,
  subject: Subject,
): { readonly range: number; readonly withLeftOver: boolean } | undefined {
  const { hot, cold, cycles } = subject.installation.limits.stress;
  if (hot === undefined || cold === undefined || !(cycles.value > 0)) return undefined;
  const allowables: AllowableStresses = { hot: hot.value, cold: cold.value, cycles: cycles.value };
  const range = allowableDisplacementRange(allowables);
  if (!(row.stress > range)) return { range, withLeftOver: false };
  // The code lets what the sustained stress leaves over at the very section be added.
  const sustained = sustainedStressAt(subject, row);
  if (sustained === undefined || !(sustained < hot.value)) return { range, withLeftOver: false };
  return { range: allowableRangeWithLeftOver(allowables, sustained), withLeftOver: true };
}
