import type { JointClosing, MisfitWay } from '../../mechanics/what-ifs/fit-up.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import { isNotWorkedOut } from '../memoized.js';
import type { Subject } from '../subject.js';
import { closedJoints } from './closed-joints.js';
import { type NozzleComponent, nozzleComponents } from './nozzle-components.js';
import { nozzleLimits } from './nozzle-limits.js';
import { type NozzleAxisLoads, nozzleAxisLoads, nozzleLoadRows } from './nozzle-load-rows.js';

/** The six ways in the order they are printed. */
export const MISFIT_WAYS: readonly MisfitWay[] = [
  'gap',
  'rise',
  'offset',
  'tilt-sideways',
  'tilt-upright',
  'twist',
];

/** Loads on a nozzle, filled, and what a unit of misfit in every way adds when it is pulled shut. */
export interface MisfitLoads {
  readonly nozzle: PlacedNozzle;
  /** With the line filled and the joint made without misfit. */
  readonly filled: NozzleAxisLoads;
  /** Per metre or radian; the resultants are those of the added loads alone. */
  readonly perUnit: Readonly<Record<MisfitWay, NozzleAxisLoads>>;
  /** What a given misfit [m] or [rad] adds, supports letting go and taking hold as they then do. */
  readonly added: (way: MisfitWay, misfit: number) => NozzleAxisLoads;
}

/**
 * What each nozzle bears filled, and what misfit adds.
 *
 * @param subject - layout and response
 * @returns one entry for each nozzle with a line; empty where it could not be worked out
 */
export function misfitLoads(subject: Subject): readonly MisfitLoads[] {
  const closed = closedJoints(subject);
  if (isNotWorkedOut(closed)) return [];
  const rows = nozzleLoadRows(subject);
  return closed.joints.flatMap((joint) => {
    const nozzle = subject.layout.nozzles[joint.which];
    const row = rows.find(({ role, nozzle: at }) => role.kind === 'filled' && at === joint.which);
    const added = (way: MisfitWay, misfit: number) => nozzleAxisLoads(joint.pulled(way, misfit), nozzle);
    return row === undefined ? [] : [{ nozzle, filled: row.own, perUnit: inAxes(joint, nozzle), added }];
  });
}

function inAxes(joint: JointClosing, nozzle: PlacedNozzle): MisfitLoads['perUnit'] {
  const on = (way: MisfitWay) => nozzleAxisLoads(joint.loads[way].own, nozzle);
  return {
    gap: on('gap'),
    rise: on('rise'),
    offset: on('offset'),
    twist: on('twist'),
    'tilt-upright': on('tilt-upright'),
    'tilt-sideways': on('tilt-sideways'),
  };
}

/** How much misfit of one way, either sense, brings the first component to its limit. */
export interface UsedUp {
  readonly way: MisfitWay;
  /** [m] or [rad]; 0 where the limit is reached without any. */
  readonly misfit: number;
  readonly component: NozzleComponent;
}

/**
 * The misfit of each way that, pulled shut on the filled line, brings a nozzle to the limit of the basis of the verdict.
 *
 *     component:  |F + K m| = limit          resultant:  |F⃗ + K⃗ m| = limit
 *
 * @param loads - filled, and per unit of misfit
 * @param subject - for the basis
 * @returns one entry per way that ever reaches a limit; undefined where no basis gives limits
 */
export function misfitUsedUp(loads: MisfitLoads, subject: Subject): readonly UsedUp[] | undefined {
  const { basis } = subject.installation.limits.nozzle;
  const limits = basis === undefined ? undefined : nozzleLimits(basis, loads.nozzle, subject.installation);
  if (limits === undefined) return undefined;
  return MISFIT_WAYS.flatMap((way) => {
    const reached = nozzleComponents.flatMap((component): readonly UsedUp[] => {
      const limit = limits.allowance[component.key];
      if (limit === undefined) return [];
      const misfit = firstReached(
        partsOf(loads.filled, component),
        partsOf(loads.perUnit[way], component),
        limit,
      );
      return misfit === undefined ? [] : [{ way, misfit, component }];
    });
    return reached.length === 0
      ? []
      : [reached.reduce((least, next) => (next.misfit < least.misfit ? next : least))];
  });
}

/** What a component is made of: itself, or three for a resultant. */
function partsOf(own: NozzleAxisLoads, { key }: NozzleComponent): readonly number[] {
  if (key === 'resultantForce') return [own.axialForce, own.verticalForce, own.crossForce];
  if (key === 'resultantMoment') return [own.axialMoment, own.verticalMoment, own.crossMoment];
  return [own[key]];
}

/** Smallest size of x at which |start + x per| is the limit: the nearer root of a x² + 2 b x + c = 0. */
function firstReached(start: readonly number[], per: readonly number[], limit: number): number | undefined {
  const product = (p: readonly number[], q: readonly number[]) =>
    p.reduce((sum, value, index) => sum + value * (q[index] ?? 0), 0);
  const [a, b, c] = [product(per, per), product(start, per), product(start, start) - limit ** 2];
  if (c >= 0) return 0;
  if (!(a > 0)) return undefined;
  const root = Math.sqrt(b * b - a * c);
  return (root - Math.abs(b)) / a;
}
