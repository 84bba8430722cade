import { courseOf, isCheckValve } from '../../analysis/pipes/line-course.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const PRACTICE: Citation = {
  source: 'common-practice',
  clause: 'a check valve on the discharge where pumps run side by side or a head remains',
  confidence: 'common practice',
};

/**
 * A check valve stands on the discharge wherever liquid could run back through the pump at rest.
 *
 * Why: a pump that is stopped beside one that runs, or under a column of water, is turned backwards; started in that
 * state its motor draws far more than it should and its shaft takes the blow. Whether liquid can run back is not seen
 * from one pump's piping: where no check valve stands, the file has to say so.
 */
export const checkValve = defineCheck({
  id: 'check-valve',
  title: 'Discharge check valve',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'practice',
  unit: '-',
  basis: [PRACTICE],
  exceeds: 'checks.check-valve.exceeds',
  noPlace: 'checks.check-valve.no-place',
  places: ({ installation }) => installation.lines.filter(({ from }) => from === 'discharge'),
  at: () => 'discharge side',
  demands: (_line, subject): readonly Demand[] => {
    const valve = courseOf(subject, 'discharge').find(({ part }) => isCheckValve(part));
    if (valve !== undefined) {
      const data = { by: valve.part.name };
      return [{ kind: 'forbidden', happens: false, remark: 'checks.check-valve.by', data }];
    }
    const { backflow } = subject.installation.pump;
    if (backflow === 'none') return [{ kind: 'does-not-apply', code: 'checks.check-valve.no-backflow' }];
    return [
      {
        kind: 'forbidden',
        happens: backflow === undefined ? undefined : true,
        missing: 'checks.check-valve.unknown',
      },
    ];
  },
});
