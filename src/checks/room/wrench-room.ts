import { givenIn } from '../../analysis/citation-of.js';
import { nearestObstacle } from '../../geometry/index.js';
import { spacesFor } from '../../model/room/service-spaces.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { accessOf, FAR, near } from './access-subject.js';
import { inTheWay } from './in-the-way.js';

const MAKER: Citation = {
  source: 'common-practice',
  clause: "the manufacturer's or the owner's room for tools governs",
  confidence: 'common practice',
};

/**
 * Tools reach the bolts of the coupling and the gland all round.
 *
 * Why: four gaps are made even by turning from bolt to bolt; a pipe or a wall a hand's breadth off makes a guess of it.
 */
export const wrenchRoom = defineCheck({
  id: 'wrench-room',
  title: 'Tool clearance at coupling',
  trade: 'Rigger, and coordination of trades',
  section: 'access',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [MAKER],
  exceeds: 'checks.wrench-room.exceeds',
  noPlace: 'checks.wrench-room.no-place',
  places: ({ installation }) => {
    if (installation.pump.build === 'close-coupled') return [];
    const given = spacesFor(installation, 'wrench room');
    return given.length === 0 ? [undefined] : given;
  },
  at: (space) => (space === undefined ? 'coupling' : `coupling, by the ${space.owner}`),
  demands: (space, subject): readonly Demand[] => {
    const access = accessOf(subject);
    const { window } = access.pump;
    if (space?.reach === undefined || window === undefined)
      return [{ kind: 'cannot-tell', code: 'checks.wrench-room.unknown' }];
    if (subject.installation.room.objects.length === 0)
      return [{ kind: 'cannot-tell', code: 'checks.access.no-room' }];
    const nearest = nearestObstacle(window, near(window, access.obstacles, FAR));
    if (nearest === undefined) return [{ kind: 'cannot-tell', code: 'checks.access.no-room' }];
    const short = Math.max(0, space.reach - nearest.distance);
    const asked = { ...window, radius: window.radius + space.reach };
    const data = inTheWay(nearest.name, short, short > 0 ? asked : undefined, access);
    const basis = givenIn(space.source);
    return [
      {
        kind: 'compared',
        sense: 'at least',
        demand: nearest.overlap ? 0 : nearest.distance,
        limit: space.reach,
        basis,
        remark: 'checks.wrench-room.free',
        data,
      },
    ];
  },
});
