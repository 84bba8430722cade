import type { SolvedCondition } from '../../analysis/conditions.js';
import { ratedPressure, testPressureAllowed } from '../../analysis/flanges/flange-rating.js';
import { describedJoints, isDescribed, undescribedOwners } from '../../analysis/flanges/flange-sides.js';
import { type GasketDiameter, gasketDiameter } from '../../analysis/flanges/gasket-diameter.js';
import { type JointLoad, jointLoad } from '../../analysis/nozzles/joint-load.js';
import type { Subject } from '../../analysis/subject.js';
import type { IssueCode } from '../../issues/issue.js';
import type { Calculation } from '../../judging/finding.js';
import { equivalentPressure } from '../../mechanics/stress/flange-equivalent-pressure.js';
import type { FlangeSide, PlacedFlangeJoint } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { askedConditions, JOINT_CONDITIONS } from '../asked-conditions.js';
import { type Demand, defineCheck, type LeastDemand } from '../define-check.js';

const METHOD: Citation = {
  source: 'asme-bpvc-iii',
  clause: 'NC-3658, equivalent pressure of moment and axial force',
  confidence: 'two sources',
};

/**
 * Pressure plus the pressure that would open the joint as much as its bending moment and pull stays within the rating.
 *
 * Why: bolts and gasket do not know whether water or a sagging pipe pulls the faces apart. The design pressure goes
 * with every service condition, with starts and sideways loads, and the test pressure with the test, against one and a
 * half times the rating; with a support unloaded it is compared. Torsion
 * opens no joint and a push is not counted. Where the gasket is not described its reaction lies between the outside of
 * the pipe and the bolt circle: the joint meets if it does with the one, exceeds if it does with the other, and between
 * the two it cannot be told. The method is on the safe side.
 */
export const flangeEquivalentPressure = defineCheck({
  id: 'flange-equivalent-pressure',
  title: 'Flange joint equivalent pressure',
  trade: 'Pipe fitter',
  section: 'flanges',
  dependsOn: ['supports', 'weights', 'pressure'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  conditions: JOINT_CONDITIONS,
  pascals: 'pressure',
  unit: 'Pa',
  basis: [METHOD],
  exceeds: 'checks.flange-equivalent-pressure.exceeds',
  noPlace: 'checks.flange-equivalent-pressure.no-place',
  places: describedJoints,
  at: ({ name }) => name,
  demands: (joint, subject) =>
    askedConditions(JOINT_CONDITIONS, subject).flatMap((condition) =>
      joint.sides.filter(isDescribed).map((side) => sideDemand(joint, side, condition, subject)),
    ),
});

function sideDemand(
  joint: PlacedFlangeJoint,
  side: FlangeSide,
  condition: SolvedCondition,
  subject: Subject,
): Demand {
  const { service } = subject.installation;
  const rating = side.dimensions?.rating;
  const isTest = condition.role.kind === 'test';
  const pressure = (isTest ? service.testPressure : service.designPressure).value;
  const load = jointLoad(joint, condition, subject);
  const gasket = gasketDiameter(joint, subject);
  const unknown = undescribedOwners(joint);
  const remark =
    unknown !== ''
      ? 'checks.flange.one-side'
      : gasket?.given === false
        ? 'checks.flange.gasket-safe'
        : undefined;
  return {
    kind: 'compared',
    condition: condition.name,
    label: side.owner,
    demand: load && gasket && pressure + equivalentPressure({ ...load, gasketDiameter: gasket.diameter }),
    ...(load && gasket?.given === false && { least: leastDemand(pressure, load, gasket) }),
    limit: isTest
      ? testPressureAllowed(rating, condition.acts.temperature)
      : ratedPressure(rating, condition.acts.temperature),
    missing: rating === undefined ? 'checks.flange.no-rating' : missing(load, gasket),
    rests: side.dimensions?.ratingCitation ? [side.dimensions.ratingCitation] : [],
    data: { owner: side.owner, class: side.class, ...(unknown !== '' && { unknown }) },
    ...(remark !== undefined && { remark }),
    ...(load && gasket && { calculation: calculation(pressure, load, gasket.diameter) }),
  };
}

function missing(load: JointLoad | undefined, gasket: object | undefined): IssueCode {
  if (load === undefined) return 'checks.flange-equivalent-pressure.no-load';
  return gasket === undefined ? 'checks.flange-equivalent-pressure.no-gasket' : 'checks.flange.no-rating';
}

/** With the gasket reaction as far out as the bolts; without a drilling there is no such bound. */
function leastDemand(pressure: number, load: JointLoad, { largest }: GasketDiameter): LeastDemand {
  return {
    demand: largest && pressure + equivalentPressure({ ...load, gasketDiameter: largest }),
    code: 'checks.flange-equivalent-pressure.gasket-decides',
  };
}

function calculation(pressure: number, load: JointLoad, diameter: number): Calculation {
  return {
    symbol: 'PT',
    formula: 'P + 16 * M / (pi * G^3) + 4 * F / (pi * G^2)',
    unit: 'Pa',
    values: [
      { symbol: 'P', value: pressure, unit: 'Pa', meaning: 'pressure in the pipe' },
      { symbol: 'M', value: load.bendingMoment, unit: 'N·m', meaning: 'bending moment at the gasket' },
      { symbol: 'F', value: load.tension, unit: 'N', meaning: 'pull at the gasket, a push counts as zero' },
      { symbol: 'G', value: diameter, unit: 'm', meaning: 'diameter of the gasket reaction' },
    ],
  };
}
