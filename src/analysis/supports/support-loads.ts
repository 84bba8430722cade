/**
 * The load of the pipe on what holds it: every support, every end of a line, and the base of the pump. What is printed
 * of it anywhere, on a page, a terminal, a picture or in a spreadsheet, is taken from here.
 *
 * As the pipe acts on the support, with F = (Fx east, Fy north, Fz up) [N]:
 *
 *     down      = max(0, −Fz)             what hangs from a hanger or rests on a stand
 *     up        = max(0, Fz)              what an anchor has to hold down
 *     sideways  = √(Fx² + Fy²)            level, whichever way
 *     resultant = √(Fx² + Fy² + Fz²)      of a hanger the pull along its rods, which lean with it
 *
 * The largest of each is taken over the conditions that come to pass; one that only asks what would be, such as a
 * hanger taken to be slack, is told by itself. Of loads that differ by less than a billionth the first in printing order
 * is named. The direction that governs is that whose largest is the largest of all; of equals down before up before
 * sideways.
 */
import type {
  ConditionResponse,
  RestraintState,
  SupportResponse,
  UndeterminedShare,
} from '../../mechanics/frame/response.js';
import {
  inPrintedOrder,
  isHypothetical,
  kindOf,
  type RoleKind,
} from '../../model/conditions/condition-roles.js';
import type { Vec3, Wrench } from '../../model/conventions.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import { dot, norm } from '../../model/vector.js';
import { type SolvedCondition, solvedConditions } from '../conditions.js';
import type { Facts } from '../facts.js';

/** Direction in which a load acts on a support, seen from the pipe. */
export type LoadDirection = 'down' | 'up' | 'sideways';

/** Directions in the order in which they are named, and in which the first of equals governs. */
export const LOAD_DIRECTIONS: readonly LoadDirection[] = ['down', 'up', 'sideways'];

/** What of a load is told: a direction, or the whole. */
export type LoadMeasure = LoadDirection | 'resultant';

/** The four measures, in the order in which they are printed. */
export const LOAD_MEASURES: readonly LoadMeasure[] = [...LOAD_DIRECTIONS, 'resultant'];

/** Load of the pipe on one support in one condition. */
export interface SupportLoad extends Readonly<Record<LoadMeasure, number>> {
  readonly at: string;
  readonly condition: string;
  /** Down less up: negative where the support is pulled up [N]. */
  readonly downward: number;
  /** Level parts with their signs [N]. */
  readonly east: number;
  readonly north: number;
  /** Size of the moment about the point of the support [N·m]. */
  readonly moment: number;
  /** False where it is taken out in this condition. */
  readonly isThere: boolean;
  /** True where it can act one way only and the pipe leaves it. */
  readonly isLifted: boolean;
  /** What of it nothing determines: it is one share of many. */
  readonly undetermined: readonly UndeterminedShare[];
}

/** The largest of one measure, and the condition it comes from. */
export interface LargestLoad {
  /** [N] */
  readonly load: number;
  readonly condition: string;
}

/** The largest loads on one support; a measure that is nothing in every condition is absent. */
export interface LargestSupportLoads {
  readonly at: string;
  readonly largest: Readonly<Partial<Record<LoadMeasure, LargestLoad>>>;
  /** Direction of the largest of all; absent where the support carries nothing. */
  readonly governs?: LoadDirection;
  /** What of the load nothing determines in some condition: what is given of it is one share of many. */
  readonly undetermined: readonly UndeterminedShare[];
}

/** Below this share of the weight of everything a load is noise of the arithmetic [-]. */
export const NOISE = 1e-9;
/** Loads and movements that differ by less than this share are equal: the first in order is named [-]. */
export const SAME = 1e-9;

/**
 * The load on one support in one condition.
 *
 * @param condition - as solved
 * @param mark - mark of the support
 * @returns the load [N], or undefined where it was not solved
 * @source statics
 */
export function supportLoadIn(
  condition: ConditionResponse | undefined,
  mark: string,
): SupportLoad | undefined {
  const solved = condition?.supports[mark];
  if (condition === undefined || solved === undefined) return undefined;
  return {
    at: mark,
    condition: condition.name,
    ...partsOf(solved),
    ...statesOf(solved.states),
    undetermined: solved.undetermined ?? [],
  };
}

/**
 * Force and moment of the pipe on a support in one condition, for balances of many forces.
 *
 * @param condition - as solved
 * @param mark - mark of the support
 * @returns force [N] and moment about its point [N·m] in plan axes; undefined where it was not solved
 */
export function supportWrenchIn(condition: ConditionResponse | undefined, mark: string): Wrench | undefined {
  return condition?.supports[mark]?.load;
}

/**
 * Part of the load on a support along a direction.
 *
 * @param condition - as solved
 * @param mark - mark of the support
 * @param direction - unit vector [-]
 * @returns positive where the pipe pulls the support that way [N]; undefined where it was not solved
 */
export function supportLoadAlong(
  condition: ConditionResponse,
  mark: string,
  direction: Vec3,
): number | undefined {
  const load = supportWrenchIn(condition, mark);
  return load && dot(load.force, direction);
}

function partsOf({ load }: SupportResponse) {
  const [east, north, up] = load.force;
  return {
    down: Math.max(0, -up),
    up: Math.max(0, up),
    sideways: Math.hypot(east, north),
    resultant: Math.hypot(east, north, up),
    downward: 0 - up,
    east,
    north,
    moment: norm(load.moment),
  };
}

function statesOf(states: readonly RestraintState[]) {
  return {
    isThere: states.some((state) => state !== 'absent'),
    isLifted: states.includes('lifted'),
  };
}

/**
 * The largest of some conditions, by the one rule of which of equals is named.
 *
 * @param rows - in the order in which the first of equals is taken
 * @param measure - what is compared, never negative [N] or [N·m]; undefined and what is no number are passed over
 * @returns the row with the largest, or undefined where there is none above zero
 */
export function largestOf<Row>(
  rows: readonly Row[],
  measure: (row: Row) => number | undefined,
): Row | undefined {
  let best: Row | undefined;
  let size = 0;
  for (const row of rows) {
    const next = measure(row);
    if (next === undefined || !Number.isFinite(next) || !(next > size * (1 + SAME))) continue;
    best = row;
    size = next;
  }
  return best;
}

/**
 * Conditions over which the largest load is taken, in printing order: all that come to pass.
 *
 * @param facts - layout with its frame, and response
 * @returns conditions with what acts and what came of it
 */
export function conditionsThatCount(facts: Facts): readonly SolvedCondition[] {
  return inPrintedOrder(solvedConditions(facts).filter((condition) => !isHypothetical(condition)));
}

/**
 * The largest loads on one support over some conditions.
 *
 * @param mark - mark of the support
 * @param conditions - in printing order
 * @returns the largest down, up, sideways and as a whole [N], and the direction that governs
 */
export function largestLoadsOn(mark: string, conditions: readonly SolvedCondition[]): LargestSupportLoads {
  const loads = conditions.flatMap(({ solved }) => {
    const load = supportLoadIn(solved, mark);
    return load?.isThere ? [{ load, noise: NOISE * solved.weight }] : [];
  });
  const largest: Partial<Record<LoadMeasure, LargestLoad>> = {};
  for (const measure of LOAD_MEASURES) {
    const most = largestOf(loads, ({ load, noise }) => (load[measure] > noise ? load[measure] : undefined));
    if (most !== undefined) {
      largest[measure] = { load: most.load[measure], condition: most.load.condition };
    }
  }
  const governs = largestOf(LOAD_DIRECTIONS, (direction) => largest[direction]?.load);
  const undetermined = [...new Set(loads.flatMap(({ load }) => load.undetermined))];
  return { at: mark, largest, ...(governs && { governs }), undetermined };
}

/**
 * The largest loads on one support by what the conditions stand for.
 *
 * @param mark - mark of the support
 * @param conditions - in printing order
 * @returns one entry for each role there is, in printing order
 */
export function largestLoadsByRole(
  mark: string,
  conditions: readonly SolvedCondition[],
): ReadonlyMap<RoleKind, LargestSupportLoads> {
  const roles = new Set(conditions.map(kindOf));
  return new Map(
    [...roles].map((role) => [
      role,
      largestLoadsOn(
        mark,
        conditions.filter((condition) => kindOf(condition) === role),
      ),
    ]),
  );
}

/** The largest loads on every support, in the order of the layout. */
export function largestSupportLoads(
  supports: readonly PlacedSupport[],
  conditions: readonly SolvedCondition[],
): readonly LargestSupportLoads[] {
  return supports.map(({ mark }) => largestLoadsOn(mark, conditions));
}
