import { citationOf } from '../../analysis/citation-of.js';
import { STANDARD_GRAVITY } from '../../model/conventions.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { accessOf } from '../room/access-subject.js';

const PLUMB: Citation = {
  source: 'common-practice',
  clause: 'anchor over the centre line of the motor, straight pull',
  confidence: 'common practice',
};

const OWNER: Citation = {
  source: 'common-practice',
  clause: "rating of the anchor against the weight times the owner's factor",
  confidence: 'common practice',
};

/**
 * The anchor stands over the centre line of the motor, and is rated for its weight times the owner's factor.
 *
 * Why: a pull off the centre line jams the motor in its register and then swings it. The structure the anchor hangs on
 * is not judged here at all: that is for a competent person.
 */
export const liftAnchor = defineCheck({
  id: 'lift-anchor',
  title: 'Lifting point',
  trade: 'Rigger, and coordination of trades',
  section: 'lift',
  dependsOn: ['room', 'weights'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'hurt or break',
  unit: 'm',
  basis: [PLUMB, OWNER],
  exceeds: 'checks.lift-anchor.off-centre',
  noPlace: 'checks.lift-anchor.no-place',
  places: () => ['place', 'rating'] as const,
  at: (what) => (what === 'place' ? 'anchor' : 'anchor, rating'),
  demands: (what, subject): readonly Demand[] => {
    const { room, pump } = subject.installation;
    const { lift } = accessOf(subject);
    if (lift === undefined || room.lift === undefined)
      return what === 'place' ? [{ kind: 'cannot-tell', code: 'checks.lift-anchor.unknown' }] : [NO_RATING];
    if (what === 'place') {
      const { offCentre } = room.lift;
      const short = Math.max(0, lift.offCentre - offCentre.value);
      const data = { obstacle: 'anchor', short };
      if (offCentre.value === 0)
        return [{ kind: 'forbidden', happens: lift.offCentre > 0, demand: lift.offCentre, data }];
      const basis = citationOf(offCentre, PLUMB);
      return [{ kind: 'compared', demand: lift.offCentre, limit: offCentre.value, basis, data }];
    }
    const { rating, factor } = room.lift;
    if (rating === undefined || factor === undefined) return [NO_RATING];
    const weight = pump.motor.mass.value * STANDARD_GRAVITY;
    const allowed = rating.value * STANDARD_GRAVITY;
    return [
      {
        kind: 'compared',
        unit: 'N',
        demand: weight * factor.value,
        limit: allowed,
        basis: citationOf(factor, OWNER),
        advice: 'checks.lift-anchor.exceeds',
        data: { factor: factor.value },
      },
    ];
  },
});

const NO_RATING: Demand = { kind: 'cannot-tell', unit: 'N', code: 'checks.lift-anchor.no-factor' };
