import { givenIn } from '../../analysis/citation-of.js';
import { nearestObstacle } from '../../geometry/index.js';
import { aisleBoxes, spacesFor } from '../../model/room/service-spaces.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { accessOf, FAR, near } from './access-subject.js';
import { inTheWay } from './in-the-way.js';

const OWNER: Citation = {
  source: 'common-practice',
  clause: "the owner's width of aisles governs",
  confidence: 'common practice',
};

/** Width of the strip along the centre line [m]. */
const STRIP = 0.001;

/**
 * An aisle the owner keeps open is as wide as asked, up to its height.
 *
 * Why: a rod, a valve or a panel in the aisle is struck by whoever carries the motor out.
 */
export const aisleWidth = defineCheck({
  id: 'aisle-width',
  title: 'Aisle width',
  trade: 'Rigger, and coordination of trades',
  section: 'access',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [OWNER],
  exceeds: 'checks.aisle-width.exceeds',
  noPlace: 'checks.aisle-width.no-place',
  places: ({ installation }) => spacesFor(installation, 'aisle').map((space, index) => ({ space, index })),
  at: ({ index }) => `aisle ${index + 1}`,
  demands: ({ space }, subject): readonly Demand[] => {
    const strip = aisleBoxes(space, subject.installation, STRIP);
    const { width } = space;
    if (strip === undefined || width === undefined)
      return [{ kind: 'cannot-tell', code: 'checks.working-space.no-floor' }];
    const access = accessOf(subject);
    const stages = access.pump.stages.map(({ part, ...solid }) => ({ name: `pump ${part}`, solid }));
    const standing = access.obstacles.filter(({ kind }) => kind !== 'floor');
    const nearest = nearestObstacle(strip, [...near(strip, standing, FAR), ...stages]);
    const basis = givenIn(space.source);
    if (nearest === undefined) return [{ kind: 'cannot-tell', code: 'checks.access.no-room' }];
    const found = nearest.overlap ? 0 : 2 * nearest.distance + STRIP;
    const short = Math.max(0, width - found);
    const asked = short > 0 ? aisleBoxes(space, subject.installation) : undefined;
    const data = inTheWay(nearest.name, short, asked, access);
    return [
      {
        kind: 'compared',
        sense: 'at least',
        demand: found,
        limit: width,
        basis,
        remark: 'checks.aisle-width.free',
        data,
      },
    ];
  },
});
