import { givenIn } from '../../analysis/citation-of.js';
import type { TurnedBox, Vec3 } from '../../geometry/index.js';
import { nearestObstacle, plus, times } from '../../geometry/index.js';
import type { ServiceSpace } from '../../input/installation.js';
import { boxBeside, OVER_FLOOR, spacesFor } from '../../model/room/service-spaces.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { type Access, type AccessSubject, accessOf, clashOf, near } from './access-subject.js';
import { inTheWay, wayWord } from './in-the-way.js';

const CODE: Citation = {
  source: 'imc',
  clause: '306.1, level space of 30 in by 30 in (2015)',
  confidence: 'read',
};

/** Side of the level space [m]: 30 in. */
const SIDE = 0.762;
/** Farthest shift along the pump that is tried, as a share of the width, and how many steps [-]. */
const SHIFTS = [0, 0.25, -0.25, 0.45, -0.45] as const;
/** Largest space that is looked for, over the one asked [-], and the halvings it is found by. */
const LARGEST = 2;
const HALVINGS = 10;

/** A place to stand beside the pump. */
export interface StandingPlace {
  readonly box: TurnedBox;
  readonly side: Vec3;
  /** Share of the size asked for that is free, two at most [-]. */
  readonly share: number;
}

/**
 * There is a level space to stand and work beside the pump, as wide, deep and high as asked.
 *
 * Why: the code of mechanical installations wants it at the side an appliance is served from; here that is the side the
 * file names, or else whichever of the four sides has it.
 */
export const workingSpace = defineCheck({
  id: 'working-space',
  title: 'Working space at pump',
  trade: 'Rigger, and coordination of trades',
  section: 'access',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [CODE],
  exceeds: 'checks.working-space.exceeds',
  noPlace: 'checks.working-space.no-place',
  places: ({ installation }) => [undefined, ...spacesFor(installation, 'working space')],
  at: (space) => (space === undefined ? 'pump' : `pump, by the ${space.owner}`),
  demands: (space, subject): readonly Demand[] => {
    const { room } = subject.installation;
    if (room.floor === undefined) return [{ kind: 'cannot-tell', code: 'checks.working-space.no-floor' }];
    if (!room.objects.some(({ kind }) => kind === 'wall'))
      return [{ kind: 'cannot-tell', code: 'checks.access.no-walls' }];
    const width = space?.width ?? SIDE;
    const found = standingPlace(subject, space);
    if (found === undefined) return [{ kind: 'cannot-tell', code: 'checks.working-space.no-floor' }];
    const basis = space === undefined ? CODE : givenIn(space.source);
    const solids = standingObstacles(accessOf(subject));
    const nearest = nearestObstacle(found.box, solids);
    const short = Math.max(0, width * (1 - found.share));
    const data = {
      ...inTheWay(nearest?.name ?? '', short, undefined, accessOf(subject)),
      side: wayWord(found.side),
    };
    return [
      {
        kind: 'compared',
        sense: 'at least',
        demand: width * found.share,
        limit: width,
        basis,
        remark: 'checks.working-space.free',
        data,
      },
    ];
  },
});

/**
 * The best place to stand beside the pump: that which is free at the largest share of the size asked for.
 *
 * @param subject - pump and room
 * @param space - sizes and side; the code's where left out [m]
 * @returns the place at the size asked for, and the share of it that is free; nothing where there is no floor [m]
 */
export function standingPlace(subject: AccessSubject, space?: ServiceSpace): StandingPlace | undefined {
  const { pump, room } = subject.installation;
  const { floor, headHeight } = room;
  if (floor === undefined || headHeight === undefined) return undefined;
  const height = space?.height ?? headHeight.value;
  const access = accessOf(subject);
  const clear = pump.outline.casingDiameter.value / 2;
  const along = pump.ports.discharge.facing;
  const across: Vec3 = [along[1], -along[0], 0];
  const sides =
    space?.side === undefined ? [across, times(across, -1), along, times(along, -1)] : [space.side];
  const axis: Vec3 = [pump.position[0], pump.position[1], floor + (height + OVER_FLOOR) / 2];
  const boxAt = (side: Vec3, shift: number, share: number): TurnedBox => {
    const width = (space?.width ?? SIDE) * share;
    const sideways: Vec3 = [side[1] * shift * width, -side[0] * shift * width, 0];
    return boxBeside({
      axis: plus(axis, sideways),
      side,
      clear,
      width,
      depth: (space?.depth ?? SIDE) * share,
      height: height - OVER_FLOOR,
    });
  };
  const solids = standingObstacles(access);
  const tried = sides.flatMap((side) => SHIFTS.map((shift) => ({ side, shift })));
  const enough = tried.find(({ side, shift }) => isFree(boxAt(side, shift, 1), solids));
  let best: StandingPlace | undefined;
  for (const { side, shift } of enough === undefined ? tried : [enough]) {
    const box = boxAt(side, shift, 1);
    const share = shareOf((each) => boxAt(side, shift, each), solids, best?.share ?? 0);
    if (best === undefined || share > best.share) best = { box, side, share };
  }
  return best;
}

/** Nothing reaches into a box but by a hair. */
function isFree(box: TurnedBox, solids: Access['obstacles']): boolean {
  return clashOf(box, solids) === undefined;
}

/** Largest share of the size that is free, not looked for where it is no better than one already found. */
function shareOf(boxAt: (share: number) => TurnedBox, solids: Access['obstacles'], least: number): number {
  const around = near(boxAt(LARGEST), solids, 0);
  if (isFree(boxAt(LARGEST), around)) return LARGEST;
  if (least > 0 && !isFree(boxAt(least), around)) return 0;
  let [free, blocked] = [least, LARGEST];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (free + blocked) / 2;
    if (isFree(boxAt(middle), around)) free = middle;
    else blocked = middle;
  }
  return free;
}

/** What stands in the way of somebody who stands on the floor; the casing stays beside him. */
function standingObstacles({ obstacles }: Access): Access['obstacles'] {
  return obstacles.filter(({ kind }) => kind !== 'floor');
}
