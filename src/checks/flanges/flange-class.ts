import { ratedPressure, testPressureAllowed } from '../../analysis/flanges/flange-rating.js';
import { describedJoints, isDescribed, undescribedOwners } from '../../analysis/flanges/flange-sides.js';
import type { Subject } from '../../analysis/subject.js';
import { conditionId } from '../../model/conditions/condition-roles.js';
import type { FlangeSide } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const RATINGS: Citation = {
  source: 'asme-b16.5',
  clause: 'pressure-temperature ratings; system test at 1.5 times the rating',
  confidence: 'memory',
};

/**
 * Design pressure stays within the rating of both flanges at the hottest temperature, and test pressure within one and
 * a half times the rating at the temperature of installation.
 *
 * Why: a class is not a pressure. Class 150 loses a fifth of its rating between cold and hot heating water, and the
 * iron flange of the pump may be rated lower than the steel flange bolted to it.
 */
export const flangeClass = defineCheck({
  id: 'flange-class',
  title: 'Flange pressure-temperature rating',
  trade: 'Design engineer',
  section: 'flanges',
  dependsOn: ['pressure', 'parts'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  pascals: 'pressure',
  unit: 'Pa',
  basis: [RATINGS],
  exceeds: 'checks.flange-class.exceeds',
  noPlace: 'checks.flange-class.no-place',
  places: describedJoints,
  at: ({ name }) => name,
  demands: (joint, subject) => {
    const unknown = undescribedOwners(joint);
    return joint.sides
      .filter(isDescribed)
      .flatMap((side) => sideDemands(side, subject))
      .map((demand) =>
        unknown === ''
          ? demand
          : { ...demand, remark: 'checks.flange.one-side', data: { ...demand.data, unknown } },
      );
  },
});

function sideDemands(side: FlangeSide, { installation }: Subject): readonly Demand[] {
  const { service } = installation;
  const rating = side.dimensions?.rating;
  const common = {
    kind: 'compared' as const,
    missing: 'checks.flange.no-rating' as const,
    data: { owner: side.owner, class: side.class },
    ...(side.dimensions?.ratingCitation && { basis: side.dimensions.ratingCitation }),
  };
  return [
    {
      ...common,
      label: `${side.owner} at design pressure`,
      condition: conditionId('hot'),
      demand: service.designPressure.value,
      limit: ratedPressure(rating, service.hotTemperature.value),
    },
    {
      ...common,
      label: `${side.owner} at test pressure`,
      condition: conditionId('test'),
      demand: service.testPressure.value,
      limit: testPressureAllowed(rating, service.installationTemperature.value),
    },
  ];
}
