import { courseOf } from '../../analysis/pipes/line-course.js';
import type { Subject } from '../../analysis/subject.js';
import { weightSupports } from '../../analysis/supports/weight-supports.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const FAULTS: Citation = {
  source: 'isolation-faults',
  clause: 'first hangers rigid beside isolated equipment',
  confidence: 'read',
};

/**
 * Where the pump or its pipe stands on springs, no rigid support comes between the pump and the first spring.
 *
 * Why: a rigid hanger or stand beside the pump hands the vibration to the building that the springs behind it were
 * bought to keep out, and takes the weight off them. How quiet a building must be is for its acoustician: the finding
 * is shown and never decides.
 */
export const isolationBridged = defineCheck({
  id: 'isolation-bridged',
  title: 'Vibration isolation bridged',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['supports', 'parts'],
  cost: 'quick',
  standing: 'compares',
  blocks: 'nothing',
  consequence: 'practice',
  unit: '-',
  basis: [FAULTS],
  exceeds: 'checks.isolation-bridged.exceeds',
  noPlace: 'checks.isolation-bridged.no-place',
  places: (subject) =>
    subject.installation.lines.filter(
      ({ name }) => subject.installation.pump.mount === 'sprung' || sprungAt(subject, name) !== undefined,
    ),
  at: ({ name }) => name,
  demands: (line, subject): readonly Demand[] => {
    const rigid = weightSupports(subject, line.name)
      .filter(({ kind }) => kind !== 'spring-hanger')
      .at(0);
    const reach = Math.min(
      sprungAt(subject, line.name) ?? Number.POSITIVE_INFINITY,
      courseOf(subject, line.from).find(({ part }) => part.kind === 'flexible-connector')?.start ??
        Number.POSITIVE_INFINITY,
    );
    if (rigid === undefined && !Number.isFinite(reach))
      return [{ kind: 'cannot-tell', code: 'checks.isolation-bridged.nothing' }];
    return [
      {
        kind: 'forbidden',
        happens: rigid !== undefined && rigid.station < reach,
        data: { by: rigid?.mark ?? 'none' },
      },
    ];
  },
});

/** Where the first spring hanger of a line hangs, along it from the pump [m]. */
function sprungAt(subject: Subject, line: string): number | undefined {
  const isSpring = ({ kind }: PlacedSupport): boolean => kind === 'spring-hanger';
  return weightSupports(subject, line).find(isSpring)?.station;
}
