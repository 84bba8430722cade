import { givenIn } from '../../analysis/citation-of.js';
import type { Vec3 } from '../../geometry/index.js';
import type { ServiceSpace } from '../../input/installation.js';
import { boxBeside, spacesFor } from '../../model/room/service-spaces.js';
import type { Citation } from '../../sources/index.js';
import { type Demand, defineCheck } from '../define-check.js';
import { type Access, type AccessSubject, accessOf, FAR, wayBefore } from './access-subject.js';
import { inTheWay, wayWord } from './in-the-way.js';

const MAKER: Citation = {
  source: 'common-practice',
  clause: "the manufacturer's dimension for drawing coupling and seal governs",
  confidence: 'common practice',
};

/** Thickness of the sheet that feels how far a side is free [m]. */
const SHEET = 0.001;

/** How far one side of the coupling is free. */
export interface FreeSide {
  readonly side: Vec3;
  /** From the guard outward [m]. */
  readonly depth: number;
  readonly stoppedBy?: string;
}

/**
 * Coupling, guard and seal come out sideways, on at least one side.
 *
 * Why: both halves of the guard, the spacer and the seal are drawn by hand through the side of the bracket. The side is
 * the one the file names, or else the freest of the four along and across the ports.
 */
export const couplingSpace = defineCheck({
  id: 'coupling-space',
  title: 'Coupling and seal removal clearance',
  trade: 'Rigger, and coordination of trades',
  section: 'access',
  dependsOn: ['room'],
  cost: 'quick',
  standing: 'decides',
  blocks: 'acceptance',
  consequence: 'room',
  unit: 'm',
  basis: [MAKER],
  exceeds: 'checks.coupling-space.exceeds',
  noPlace: 'checks.coupling-space.no-place',
  places: ({ installation }) => {
    if (installation.pump.build === 'close-coupled') return [];
    const given = spacesFor(installation, 'coupling and seal');
    return given.length === 0 ? [undefined] : given;
  },
  at: (space) => (space === undefined ? 'coupling' : `coupling, by the ${space.owner}`),
  demands: (space, subject): readonly Demand[] => {
    if (space === undefined || subject.installation.pump.dimensions?.spacer === undefined)
      return [{ kind: 'cannot-tell', code: 'checks.coupling-space.unknown' }];
    if (subject.installation.room.objects.length === 0)
      return [{ kind: 'cannot-tell', code: 'checks.access.no-room' }];
    const access = accessOf(subject);
    const free = freeSideOf(space, subject, access);
    if (free === undefined) return [{ kind: 'cannot-tell', code: 'checks.coupling-space.unknown' }];
    const { depth: needed = 0 } = space;
    const short = needed - free.depth;
    const blocked = short > 0 ? boxOf(space, access, free.side, needed) : undefined;
    const data = inTheWay(free.stoppedBy ?? '', Math.max(0, short), blocked, access);
    const words = { ...data, side: wayWord(free.side) };
    return [
      {
        kind: 'compared',
        sense: 'at least',
        demand: Math.max(0, free.depth),
        limit: needed,
        basis: givenIn(space.source),
        remark: 'checks.coupling-space.free',
        data: words,
      },
    ];
  },
});

/**
 * The side of the coupling on which a box of the width asked for can be drawn farthest.
 *
 * @param space - width and, where they are given, height and side [m]
 * @param subject - pump
 * @param access - window and obstacles
 * @returns side and depth; nothing where the pump has no window [m]
 */
export function freeSideOf(
  space: ServiceSpace,
  subject: AccessSubject,
  access: Access,
): FreeSide | undefined {
  if (access.pump.window === undefined) return undefined;
  const along = subject.installation.pump.ports.discharge.facing;
  const across: Vec3 = [along[1], -along[0], 0];
  const back = ([x, y]: Vec3): Vec3 => [0 - x, 0 - y, 0];
  const sides = space.side === undefined ? [across, back(across), along, back(along)] : [space.side];
  let best: FreeSide | undefined;
  for (const side of sides) {
    const sheet = boxOf(space, access, side, SHEET);
    if (sheet === undefined) continue;
    const way = wayBefore(sheet, side, access.obstacles, FAR);
    const free = { side, depth: way.distance === 0 ? 0 : way.distance + SHEET };
    const named = way.stoppedBy === undefined ? free : { ...free, stoppedBy: way.stoppedBy };
    if (best === undefined || named.depth > best.depth) best = named;
  }
  return best;
}

/**
 * The box beside the coupling that must be free.
 *
 * @param space - width and, where it is given, height [m]
 * @param access - window of the pump
 * @param side - level unit vector [-]
 * @param depth - from the guard outward [m]
 * @returns the box; nothing where the pump has no window [m]
 */
export function boxOf(space: ServiceSpace, { pump }: Access, side: Vec3, depth: number) {
  const { window } = pump;
  if (window === undefined) return undefined;
  const { from, to, radius } = window;
  const axis: Vec3 = [from[0], from[1], (from[2] + to[2]) / 2];
  const height = space.height ?? to[2] - from[2];
  return boxBeside({ axis, side, clear: radius, width: space.width ?? 0, depth, height });
}
