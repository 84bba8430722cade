import { beforeShutOff, courseOf, SIDES } from '../../analysis/pipes/line-course.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const MANUAL: Citation = {
  source: 'tm-5-805-4',
  clause: 'flexible connectors are not needed where pipe and pump are isolated together',
  confidence: 'read',
};

/**
 * A pump that hangs in its pipe has no flexible connectors at its ports.
 *
 * Why: pipe and pump hang and move together, so there is nothing between them to take up. A connector there lets the
 * pump sag and turn, passes the thrust of the pressure to the supports, and is the first thing to burst. It is common
 * practice and no rule: it is shown and never decides.
 */
export const connectorNeeded = defineCheck({
  id: 'connector-needed',
  title: 'Flexible connectors at pump',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'compares',
  blocks: 'nothing',
  consequence: 'practice',
  unit: '-',
  basis: [MANUAL],
  exceeds: 'checks.connector-needed.exceeds',
  noPlace: 'checks.connector-needed.no-place',
  places: ({ installation }) =>
    installation.pump.mount === 'hung'
      ? SIDES.filter((side) => installation.lines.some(({ from }) => from === side))
      : [],
  at: (side) => `${side} side`,
  demands: (side, subject): readonly Demand[] => {
    const course = courseOf(subject, side);
    const near = beforeShutOff(course).parts.find(({ part }) => part.kind === 'flexible-connector');
    // Behind the valve a connector may be there for the building, not for the pump.
    const far = course.find(({ part }) => part.kind === 'flexible-connector');
    if (near === undefined && far !== undefined)
      return [{ kind: 'cannot-tell', code: 'checks.connector-needed.behind', data: { by: far.part.name } }];
    return [{ kind: 'forbidden', happens: near !== undefined, data: { by: near?.part.name ?? 'none' } }];
  },
});
