import { type NozzleLoadRow, nozzleLoadRows } from '../../analysis/nozzles/nozzle-load-rows.js';
import type { Subject } from '../../analysis/subject.js';
import { processPumpTable } from '../../catalog/index.js';
import { loadsMovedTo, nozzleInteraction } from '../../mechanics/stress/combined-nozzle.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const ANNEX: Citation = {
  source: 'api-610',
  clause: 'annex F.1, pumps on a baseplate (8th edition, appendix F)',
  confidence: 'read',
};

/** Largest sum of the two shares of one nozzle [-]. */
const LARGEST_INTERACTION = 2;

/** How far the resultants of both nozzles together may go beyond the sum of the table's [-]. */
const BOTH_NOZZLES = 1.5;

/**
 * The combined rule for the loads of both nozzles, for a pump bolted to its base. Always a comparison.
 *
 * Why: two nozzles loaded at once strain one casing. The rule is made for pumps on a baseplate, and so is not applied
 * to a pump that hangs in its pipe or is free to slide. Its limit on the moment about one axis square to a horizontal
 * shaft has no counterpart on an upright shaft and is left out.
 */
export const nozzleCombined = defineCheck({
  id: 'nozzle-combined',
  title: 'Combined nozzle loads',
  trade: 'Design engineer',
  section: 'nozzle-loads',
  dependsOn: ['supports', 'weights'],
  cost: 'quick',
  standing: 'compares',
  blocks: 'nothing',
  consequence: 'hurt or break',
  unit: '-',
  basis: [ANNEX],
  exceeds: 'checks.nozzle-combined.exceeds',
  noPlace: 'checks.nozzle-combined.no-place',
  places: ({ installation }) => (installation.pump.mount === 'bolted' ? [installation.pump.mark] : []),
  at: () => 'both nozzles',
  demands: (_mark, subject): readonly Demand[] => {
    const { suction, discharge } = subject.layout.nozzles;
    const rows = nozzleLoadRows(subject);
    return rows
      .filter((row) => row.nozzle === 'suction')
      .flatMap((row) => {
        const other = rows.find(
          ({ nozzle, condition }) => nozzle === 'discharge' && condition === row.condition,
        );
        return other === undefined
          ? []
          : [interaction(suction, row), interaction(discharge, other), ...atCentre(row, other, subject)];
      });
  },
});

const MISSING = 'checks.nozzle-loads.not-in-table' as const;

function interaction(nozzle: PlacedNozzle, { condition, plan }: NozzleLoadRow): Demand {
  const table = processPumpTable(nozzle.nps)?.us;
  return {
    kind: 'compared',
    condition,
    label: `${nozzle.which} nozzle by itself`,
    demand: table && nozzleInteraction(plan, { force: table.FR, moment: table.MR }),
    limit: table && LARGEST_INTERACTION,
    missing: MISSING,
    data: { size: nozzle.nps },
  };
}

function atCentre(suction: NozzleLoadRow, discharge: NozzleLoadRow, subject: Subject): readonly Demand[] {
  const { nozzles } = subject.layout;
  const one = processPumpTable(nozzles.suction.nps)?.us;
  const other = processPumpTable(nozzles.discharge.nps)?.us;
  const total = loadsMovedTo(
    [
      { at: nozzles.suction.at, load: suction.plan },
      { at: nozzles.discharge.at, load: discharge.plan },
    ],
    subject.installation.pump.position,
  );
  const common = {
    kind: 'compared' as const,
    condition: suction.condition,
    missing: MISSING,
    data: { size: nozzles.suction.nps },
  };
  return [
    {
      ...common,
      label: 'resultant force at the pump centre',
      unit: 'N',
      demand: Math.hypot(...total.force),
      limit: one && other && BOTH_NOZZLES * (one.FR + other.FR),
    },
    {
      ...common,
      label: 'resultant moment at the pump centre',
      unit: 'N·m',
      demand: Math.hypot(...total.moment),
      limit: one && other && BOTH_NOZZLES * (one.MR + other.MR),
    },
  ];
}
