import { citationOf } from '../../analysis/citation-of.js';
import { courseOf } from '../../analysis/pipes/line-course.js';
import {
  portDiameter,
  type StraightRun,
  straightRunFrom,
  suctionRun,
} from '../../analysis/pipes/pipe-diameters.js';
import type { Subject } from '../../analysis/subject.js';
import type { DiffuserPart } from '../../input/installation.js';
import type { PlacedPart } from '../../model/layout/place-parts.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const FIVE_DIAMETERS: Citation = {
  source: 'api-686',
  clause:
    'chapter 6, 3.1.2.6: five diameters between the suction flange and the first elbow, tee, valve, reducer or strainer',
  confidence: 'read',
};
const BY_FITTING: Citation = {
  source: 'hi-9.6.6',
  clause: 'straight lengths by fitting, table not obtained; a straightener or a model test as the way out',
  confidence: 'read',
};
/** Diameters of straight pipe asked for where nobody gave a number [-]. */
const DIAMETERS = 5;

/**
 * Enough straight pipe stands before the suction port for what disturbs the flow there.
 *
 * Why: an impeller wants an even flow. Behind an elbow the flow leans, behind two elbows out of plane or a tee it
 * turns, behind a butterfly valve it is split. The pump standard has lengths by fitting, which were not obtained; five
 * diameters are widely quoted and rarely built, so they are shown and never decide. A number given in the file does.
 * Ahead of a suction diffuser with vanes its maker's number holds, and without one it cannot be told.
 */
export const straightRun = defineCheck({
  id: 'straight-run',
  title: 'Straight pipe at suction',
  trade: 'Pipe fitter',
  section: 'practice',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'practice',
  blocks: 'acceptance',
  consequence: 'practice',
  unit: 'm',
  basis: [FIVE_DIAMETERS, BY_FITTING],
  exceeds: 'checks.straight-run.exceeds',
  noPlace: 'checks.straight-run.no-place',
  places: (subject) => [suctionRun(subject)].filter((run) => run !== undefined),
  at: () => 'suction nozzle',
  demands: (run, subject): readonly Demand[] => {
    const diffuser = run.by?.part;
    if (run.by !== undefined && diffuser?.kind === 'suction-diffuser' && diffuser.straightens !== false)
      return [diffuserDemand(subject, run.by, diffuser, run)];
    return [plainDemand(subject, run)];
  },
});

function plainDemand({ installation }: Subject, run: StraightRun): Demand {
  const given = installation.limits.straightRun;
  const wanted = (given?.value ?? DIAMETERS) * run.diameter;
  const isShort = run.length < wanted;
  return {
    kind: 'forbidden',
    demand: run.length,
    // Where the description ends first, what lies beyond is not known.
    happens: isShort && run.by === undefined ? undefined : isShort,
    missing: 'checks.straight-run.ends',
    remark: 'checks.straight-run.by',
    data: { by: run.by?.part.name ?? 'the end of the line', disturbs: run.disturbs },
    ...(given === undefined
      ? { comparison: true }
      : { comparison: false, basis: citationOf(given, FIVE_DIAMETERS) }),
  };
}

function diffuserDemand(subject: Subject, at: PlacedPart, diffuser: DiffuserPart, run: StraightRun): Demand {
  const beyond = courseOf(subject, 'suction').filter(
    ({ start, part }) => start >= at.end && part !== diffuser,
  );
  const ahead = straightRunFrom(beyond, portDiameter(subject, 'suction'));
  const asked = diffuser.straightAsked;
  const data = { by: diffuser.name, disturbs: run.disturbs };
  const length = ahead?.length ?? 0;
  if (asked === undefined) {
    const missing = 'checks.straight-run.diffuser-unsaid';
    return { kind: 'forbidden', happens: undefined, comparison: true, demand: length, missing, data };
  }
  return {
    kind: 'forbidden',
    comparison: false,
    happens: length < asked.value,
    demand: length,
    advice: 'checks.straight-run.diffuser-short',
    remark: 'checks.straight-run.diffuser',
    basis: citationOf(asked, BY_FITTING),
    data,
  };
}
