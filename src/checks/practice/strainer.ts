import { courseOf, isStrainer } from '../../analysis/pipes/line-course.js';
import type { Subject } from '../../analysis/subject.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const PRACTICE: Citation = {
  source: 'common-practice',
  clause: 'a strainer ahead of a pump in an open system; start-up screens taken out after flushing',
  confidence: 'common practice',
};

/**
 * In an open system a strainer stands ahead of the pump; start-up screens are pointed out.
 *
 * Why: a tower washes dust and leaves into the water, and a pump passes them on to valves and exchangers or keeps them.
 * A closed system is flushed once, and there a strainer is a matter of taste: it is shown and never decides. A screen
 * for the first weeks that nobody takes out clogs and starves the pump.
 */
export const strainer = defineCheck({
  id: 'strainer',
  title: 'Suction strainer',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'start',
  consequence: 'practice',
  unit: '-',
  basis: [PRACTICE],
  exceeds: 'checks.strainer.exceeds',
  noPlace: 'checks.strainer.no-place',
  places: (subject) => [
    'suction side',
    ...courseOf(subject, 'suction')
      .filter(({ part }) => part.kind === 'fitting' && part.fitting === 'start-up-screen')
      .map(({ part }) => part.name),
  ],
  at: (place) => place,
  demands: (place, subject): readonly Demand[] =>
    place === 'suction side'
      ? [demandAt(subject)]
      : [{ kind: 'cannot-tell', comparison: true, code: 'checks.strainer.screen' }],
});

function demandAt(subject: Subject): Demand {
  const course = courseOf(subject, 'suction');
  const found = course.find(
    ({ part }) => isStrainer(part) || (part.kind === 'suction-diffuser' && part.strainer === true),
  );
  const { system } = subject.installation.service;
  if (found !== undefined) {
    const data = { by: found.part.name };
    return { kind: 'forbidden', happens: false, remark: 'checks.strainer.by', data };
  }
  if (system === 'closed') return { kind: 'does-not-apply', code: 'checks.strainer.closed' };
  const unsaid = course.find(({ part }) => part.kind === 'suction-diffuser' && part.strainer === undefined);
  const isOpen = system === 'open' && unsaid === undefined;
  return {
    kind: 'forbidden',
    happens: isOpen ? true : undefined,
    missing: system === 'open' ? 'checks.strainer.unsaid' : 'checks.strainer.unknown',
    data: { diffuser: unsaid?.part.name ?? 'none' },
  };
}
