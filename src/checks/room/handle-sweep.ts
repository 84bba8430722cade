import { givenIn } from '../../analysis/citation-of.js';
import { nearestObstacle } from '../../geometry/index.js';
import type { ServiceSpace } from '../../input/installation.js';
import type { PartPlace } from '../../model/layout/layout.js';
import type { Obstacle } from '../../model/room/obstacles.js';
import { spacesFor, handleSweep as sweepOf } from '../../model/room/service-spaces.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { accessOf, clashOf, FAR, near } from './access-subject.js';
import { inTheWay } from './in-the-way.js';

const MAKER: Citation = {
  source: 'common-practice',
  clause: 'a handle sweeps free, with room for the hand',
  confidence: 'common practice',
};

/** Halvings by which the free radius is found. */
const HALVINGS = 12;

/**
 * A handle or wheel turns through its whole sweep, with room for the hand.
 *
 * Why: a valve that cannot be shut all the way is found out with the pump already open.
 */
export const handleSweep = defineCheck({
  id: 'handle-sweep',
  title: 'Valve handle clearance',
  trade: 'Pipe fitter',
  section: 'access',
  dependsOn: ['room', 'parts'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [MAKER],
  exceeds: 'checks.handle-sweep.exceeds',
  noPlace: 'checks.handle-sweep.no-place',
  places: ({ installation }) => spacesFor(installation, 'handle'),
  at: (space) => space.at ?? 'valve',
  demands: (space, subject): readonly Demand[] => {
    const place = space.at === undefined ? undefined : subject.layout.partPlaces?.[space.at];
    const sweep = place && sweepOf(space, place);
    if (place === undefined || sweep === undefined || space.reach === undefined)
      return [{ kind: 'cannot-tell', code: 'checks.handle-sweep.unknown' }];
    const { obstacles } = accessOf(subject);
    // The stem leaves its own valve; every other part may be struck.
    const others = obstacles.filter(({ parts }) => space.at === undefined || !parts.includes(space.at));
    const basis = givenIn(space.source);
    const clash = clashOf(sweep, others);
    if (clash === undefined) {
      const nearest = nearestObstacle(sweep, near(sweep, others, FAR / 10));
      return [
        {
          kind: 'compared',
          sense: 'at least',
          demand: space.reach + (nearest?.distance ?? FAR / 10),
          limit: space.reach,
          basis,
          remark: nearest === undefined ? 'checks.handle-sweep.alone' : 'checks.handle-sweep.free',
          data: { obstacle: nearest?.name ?? '', short: 0 },
        },
      ];
    }
    const free = freeReach(space, place, others);
    const data = inTheWay(clash.name, space.reach - free, sweep, accessOf(subject), others);
    return [{ kind: 'compared', sense: 'at least', demand: free, limit: space.reach, basis, data }];
  },
});

/** Largest radius that sweeps free, by halving [m]. */
function freeReach(space: ServiceSpace, place: PartPlace, obstacles: readonly Obstacle[]): number {
  let [free, struck] = [0, space.reach ?? 0];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (free + struck) / 2;
    const sweep = sweepOf(space, place, middle);
    if (sweep === undefined || clashOf(sweep, obstacles) !== undefined) struck = middle;
    else free = middle;
  }
  return free;
}
