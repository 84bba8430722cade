import { isDescribed, undescribedOwners } from '../../analysis/flanges/flange-sides.js';
import type { FlangeSide, PlacedFlangeJoint } from '../../model/layout/layout.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';

const FLAT_ON_FLAT: Citation = {
  source: 'asme-b31.1',
  clause: 'para 108.3, steel flanges bolted to class 125 cast iron',
  confidence: 'memory',
};

/**
 * No raised-face flange is bolted to a flat-faced cast-iron one.
 *
 * Why: the bolts pull the rim of the brittle iron flange across the gap beside the raised face and crack it, on the
 * pump as on a valve. Flat goes to flat with a full-face gasket. Class 250 iron has a raised face of its own.
 */
export const raisedFaceOnFlatIron = defineCheck({
  id: 'raised-face-on-flat-iron',
  title: 'Raised face on flat-face cast iron',
  trade: 'Pipe fitter',
  section: 'flanges',
  dependsOn: ['parts'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'start',
  consequence: 'hurt or break',
  unit: '-',
  basis: [FLAT_ON_FLAT],
  exceeds: 'checks.raised-face-on-flat-iron.exceeds',
  noPlace: 'checks.raised-face-on-flat-iron.no-place',
  places: ({ layout }) => layout.flangeJoints.filter(mayBeFlatIron),
  at: ({ name }) => name,
  demands: (joint) => [demandAt(joint)],
});

/** Steel on steel is no place of this check. */
function mayBeFlatIron({ sides }: PlacedFlangeJoint): boolean {
  return sides.some((side) => isIron(side) !== false && side.face !== 'raised');
}

/** Whether a flange is of cast iron; undefined where the file does not say. */
function isIron({ material, standard }: FlangeSide): boolean | undefined {
  if (material === 'cast iron' || standard === 'B16.1') return true;
  return material === 'unknown' ? undefined : false;
}

function demandAt(joint: PlacedFlangeJoint): Demand {
  const [near, far] = joint.sides;
  if (!isDescribed(near) || !isDescribed(far)) {
    const data = { unknown: undescribedOwners(joint) };
    return { kind: 'does-not-apply', code: 'checks.flange.not-described', data };
  }
  const outcomes = [raisedOnto(near, far), raisedOnto(far, near)];
  const happens = outcomes.includes(true) ? true : outcomes.includes(undefined) ? undefined : false;
  return {
    kind: 'forbidden',
    happens,
    missing: 'checks.raised-face-on-flat-iron.unknown',
    data: { near: near.owner, far: far.owner },
  };
}

/** Whether `raised` puts a raised face on flat iron of `iron`; undefined where that hangs on something not known. */
function raisedOnto(raised: FlangeSide, iron: FlangeSide): boolean | undefined {
  const parts = [
    raised.face === 'unknown' ? undefined : raised.face === 'raised',
    iron.face === 'unknown' ? undefined : iron.face === 'flat',
    isIron(iron),
  ];
  if (parts.includes(false)) return false;
  return parts.includes(undefined) ? undefined : true;
}
