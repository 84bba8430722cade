import { isDescribed, undescribedOwners } from '../../analysis/flanges/flange-sides.js';
import type { FlangeSide } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const DRILLING: Citation = {
  source: 'asme-b16.5',
  clause: 'tolerance of the bolt circle, 0.06 in (1.5 mm)',
  confidence: 'memory',
};

/** Two bolt circles further apart than this do not go together [m]. */
const BOLT_CIRCLE_TOLERANCE = 0.0015;

/**
 * The two flanges of a joint have the same number of bolts on the same circle.
 *
 * Why: class 150 and class 300 of one size look alike on a drawing and cannot be bolted together; the crew finds out
 * with the pump in the sling. Class 125 iron does go with class 150 steel, and class 250 with 300.
 */
export const flangeDrilling = defineCheck({
  id: 'flange-drilling',
  title: 'Flange drilling',
  trade: 'Pipe fitter',
  section: 'flanges',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: 'm',
  basis: [DRILLING],
  exceeds: 'checks.flange-drilling.exceeds',
  noPlace: 'checks.flange-drilling.no-place',
  places: ({ layout }) => layout.flangeJoints,
  at: ({ name }) => name,
  demands: (joint): readonly Demand[] => {
    if (!joint.sides.every(isDescribed)) {
      const data = { unknown: undescribedOwners(joint) };
      return [{ kind: 'does-not-apply', code: 'checks.flange.not-described', data }];
    }
    return [boltCount(joint.sides), boltCircle(joint.sides)];
  },
});

type Sides = readonly [FlangeSide, FlangeSide];

function boltCount([near, far]: Sides): Demand {
  const [one, other] = [near.dimensions?.bolts, far.dimensions?.bolts];
  const known = one !== undefined && other !== undefined;
  return {
    kind: 'forbidden',
    label: 'number of bolts',
    unit: '-',
    happens: known ? one !== other : undefined,
    ...(known && { demand: Math.abs(one - other) }),
    missing: 'checks.flange-drilling.no-drilling',
    advice: 'checks.flange-drilling.bolts',
    data: { near: near.owner, far: far.owner },
  };
}

function boltCircle([near, far]: Sides): Demand {
  const [one, other] = [near.dimensions?.boltCircle, far.dimensions?.boltCircle];
  return {
    kind: 'compared',
    label: 'bolt circle',
    demand: one !== undefined && other !== undefined ? Math.abs(one - other) : undefined,
    limit: BOLT_CIRCLE_TOLERANCE,
    missing: 'checks.flange-drilling.no-drilling',
    data: { near: near.owner, far: far.owner },
  };
}
