import { citationOf } from '../../analysis/citation-of.js';
import { weightSupports } from '../../analysis/supports/weight-supports.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const PRACTICE: Citation = {
  source: 'common-practice',
  clause: 'first support as close to the pump as practical',
  confidence: 'common practice',
};

/**
 * The first support that carries weight stands near enough to each nozzle, measured along the pipe.
 *
 * Why: whatever pipe, water and valves stand between the nozzle and the first support hang on the nozzle or balance on
 * it. Published advice is "as close as practical", which is no number: without one in the file it cannot be told.
 */
export const firstSupportPump = defineCheck({
  id: 'first-support-pump',
  title: 'First support from pump',
  trade: 'Pipe fitter',
  section: 'support-loads',
  dependsOn: ['supports'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'start',
  consequence: 'practice',
  unit: 'm',
  basis: [PRACTICE],
  exceeds: 'checks.first-support-pump.exceeds',
  noPlace: 'checks.first-support-pump.no-place',
  places: ({ layout }) => [layout.nozzles.suction, layout.nozzles.discharge],
  at: ({ which }) => `${which} nozzle`,
  demands: ({ which }, subject): readonly Demand[] => {
    const line = subject.installation.lines.find((candidate) => candidate.from === which);
    const limit = subject.installation.limits.firstSupport.pump;
    const basis = limit && { basis: citationOf(limit, PRACTICE) };
    const first = line && weightSupports(subject, line.name)[0];
    if (first === undefined && limit !== undefined) {
      return [{ kind: 'forbidden', happens: true, advice: 'checks.first-support-pump.none', ...basis }];
    }
    return [
      {
        kind: 'compared',
        demand: first?.station,
        limit: limit?.value,
        missing: 'checks.first-support-pump.no-limit',
        data: { support: first?.mark ?? 'none' },
        ...basis,
      },
    ];
  },
});
