import { courseOf, isCheckValve, mayShut } from '../../analysis/pipes/line-course.js';
import { canShut } from '../../model/layout/contents-group.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const PRACTICE: Citation = {
  source: 'common-practice',
  clause: 'the check valve between the pump and the valve that shuts',
  confidence: 'common practice',
};

/**
 * A check valve on the discharge stands between the pump and a valve that shuts.
 *
 * Why: check valves stick, leak and wear. One behind the shut-off valve, on the system's side, can be opened only with
 * the system drained. A valve that checks and shuts in one body is its own answer and is left out.
 */
export const valveOrder = defineCheck({
  id: 'valve-order',
  title: 'Check valve between pump and isolation valve',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'acceptance',
  consequence: 'practice',
  unit: '-',
  basis: [PRACTICE],
  exceeds: 'checks.valve-order.exceeds',
  noPlace: 'checks.valve-order.no-place',
  places: (subject) =>
    courseOf(subject, 'discharge').filter(({ part }) => isCheckValve(part) && !canShut(part)),
  at: ({ part }) => part.name,
  demands: (check, subject): readonly Demand[] => {
    const beyond = courseOf(subject, 'discharge').filter(({ start }) => start >= check.end);
    const shut = beyond.find(({ part }) => canShut(part));
    const unsure = beyond.find(({ part }) => mayShut(part));
    return [
      {
        kind: 'forbidden',
        happens: shut !== undefined ? false : unsure !== undefined ? undefined : true,
        missing: 'checks.valve-order.unknown',
        remark: 'checks.valve-order.by',
        data: { by: (shut ?? unsure)?.part.name ?? 'none' },
      },
    ];
  },
});
