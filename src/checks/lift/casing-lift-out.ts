import { givenIn } from '../../analysis/citation-of.js';
import { sweepUp } from '../../geometry/index.js';
import { spacesFor } from '../../model/room/service-spaces.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { accessOf, FAR, wayBefore } from '../room/access-subject.js';
import { inTheWay } from '../room/in-the-way.js';

const MAKER: Citation = {
  source: 'common-practice',
  clause: 'the casing is lifted out between its open flanges, motor off',
  confidence: 'common practice',
};

/**
 * The casing lifts out between both open flanges, with the motor off.
 *
 * Why: casings wear and crack, seldom but for good; a line that has to be cut to change one is a week instead of a day.
 * Studs and gaskets are taken as drawn; raised faces need the lines sprung apart by their own height.
 */
export const casingLiftOut = defineCheck({
  id: 'casing-lift-out',
  title: 'Casing removal clearance',
  trade: 'Rigger, and coordination of trades',
  section: 'access',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [MAKER],
  exceeds: 'checks.casing-lift-out.exceeds',
  noPlace: 'checks.casing-lift-out.no-place',
  places: ({ installation }) => {
    const given = spacesFor(installation, 'casing lift-out');
    return given.length === 0 ? [undefined] : given;
  },
  at: (space) => (space === undefined ? 'casing' : `casing, by the ${space.owner}`),
  demands: (space, subject): readonly Demand[] => {
    const { pump, obstacles } = accessOf(subject);
    const needed = space?.height;
    const way = wayBefore(pump.casingWithPorts, [0, 0, 1], obstacles, FAR);
    const stopped = way.stoppedBy !== undefined;
    const short = Math.max(0, (needed ?? 0) - way.distance);
    const swept = short > 0 && needed !== undefined ? sweepUp(pump.casingWithPorts, needed) : undefined;
    const data = inTheWay(way.stoppedBy ?? '', short, swept, accessOf(subject));
    const basis = space && { basis: givenIn(space.source) };
    if (stopped && !(way.distance > 0) && needed === undefined)
      return [{ kind: 'forbidden', happens: true, data, ...basis }];
    return [
      {
        kind: 'compared',
        sense: 'at least',
        demand: stopped ? Math.max(0, way.distance) : undefined,
        limit: needed,
        missing:
          needed === undefined ? 'checks.casing-lift-out.unknown' : 'checks.casing-lift-out.no-ceiling',
        remark: 'checks.casing-lift-out.free',
        data,
        ...basis,
      },
    ];
  },
});
