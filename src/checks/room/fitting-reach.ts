import { givenIn } from '../../analysis/citation-of.js';
import type { Vec3 } from '../../geometry/index.js';
import { boxAtFitting, spacesFor } from '../../model/room/service-spaces.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { accessOf, FAR, wayBefore } from './access-subject.js';
import { inTheWay } from './in-the-way.js';

const OWNER: Citation = {
  source: 'common-practice',
  clause: 'drains, vents and gauges are reached and read from where a person stands',
  confidence: 'common practice',
};

/** Thickness of the sheet that feels how far a side is free [m]. */
const SHEET = 0.001;

/**
 * Drain, vent and gauge are reached: the room in front of them is free as deep as asked.
 *
 * Why: a vent that nobody reaches is not opened before the start, and a seal that runs dry is the next one to change.
 */
export const fittingReach = defineCheck({
  id: 'fitting-reach',
  title: 'Access to drains, vents and gauges',
  trade: 'Pipe fitter',
  section: 'access',
  dependsOn: ['room', 'parts'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [OWNER],
  exceeds: 'checks.fitting-reach.exceeds',
  noPlace: 'checks.fitting-reach.no-place',
  places: ({ installation }) =>
    (['drain', 'vent', 'gauge'] as const).flatMap((purpose) => spacesFor(installation, purpose)),
  at: (space) => `${space.purpose}, ${space.at ?? ''}`,
  demands: (space, subject): readonly Demand[] => {
    const place = space.at === undefined ? undefined : subject.layout.partPlaces?.[space.at];
    const side: Vec3 | undefined = space.side;
    const sheet = place && boxAtFitting(space, place, SHEET);
    if (place === undefined || sheet === undefined || side === undefined || space.depth === undefined)
      return [{ kind: 'cannot-tell', code: 'checks.fitting-reach.unknown' }];
    const { obstacles } = accessOf(subject);
    const others = obstacles.filter(({ parts }) => space.at === undefined || !parts.includes(space.at));
    const way = wayBefore(sheet, side, others, FAR);
    const short = Math.max(0, space.depth - way.distance);
    const asked = short > 0 ? boxAtFitting(space, place) : undefined;
    const data = inTheWay(way.stoppedBy ?? '', short, asked, accessOf(subject), others);
    const basis = givenIn(space.source);
    return [
      {
        kind: 'compared',
        sense: 'at least',
        demand: Math.max(0, way.distance),
        limit: space.depth,
        basis,
        remark: 'checks.fitting-reach.free',
        data,
      },
    ];
  },
});
