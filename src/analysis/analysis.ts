import { kindOf, type RoleKind } from '../model/conditions/condition-roles.js';
import type { SolvedCondition } from './conditions.js';
import type { Facts } from './facts.js';
import {
  type LargestNozzleLoads,
  largestNozzleLoads,
  largestNozzleLoadsByRole,
} from './nozzles/largest-nozzle-loads.js';
import { type NozzleLoadRow, nozzleLoadRows } from './nozzles/nozzle-load-rows.js';
import {
  conditionsThatCount,
  type LargestSupportLoads,
  largestLoadsByRole,
  largestSupportLoads,
} from './supports/support-loads.js';

/** What follows from what was solved and is no rule. Each part is worked out when it is first asked for, and kept. */
export interface Analysis {
  /** Conditions over which the largest loads are taken: those that come to pass, in printing order. */
  readonly conditions: readonly SolvedCondition[];
  /** The largest loads on every support, end and base, in the order of the layout. */
  readonly supportLoads: readonly LargestSupportLoads[];
  /** The same by what the conditions stand for, by mark. */
  readonly supportLoadsByRole: ReadonlyMap<string, ReadonlyMap<RoleKind, LargestSupportLoads>>;
  /** Loads on both nozzles in every condition with the pump in its place. */
  readonly nozzleLoads: readonly NozzleLoadRow[];
  /** The largest loads on both nozzles, suction first. */
  readonly largestNozzleLoads: readonly LargestNozzleLoads[];
  /** The same by what the conditions stand for. */
  readonly nozzleLoadsByRole: ReadonlyMap<RoleKind, readonly LargestNozzleLoads[]>;
  /** Whether it was made of these facts, and not of others that look alike. */
  readonly isOf: (facts: Facts) => boolean;
}

/** How it is worked out. */
export interface AnalysisOptions {
  /** Conditions by what they stand for that the largest loads leave away; none where not said. */
  readonly leftAway?: readonly RoleKind[];
}

/**
 * The analysis of what was solved.
 *
 * @param facts - installation, layout and response
 * @param options - what to leave away
 * @returns parts that are worked out once, when they are asked for
 */
export function analyse(facts: Facts, options: AnalysisOptions = {}): Analysis {
  const { layout, response } = facts;
  const { leftAway = [] } = options;
  const counted = once(() =>
    conditionsThatCount(facts).filter((condition) => !leftAway.includes(kindOf(condition))),
  );
  const supportLoads = once(() => largestSupportLoads(layout.supports, counted()));
  const byRole = once(
    () => new Map(layout.supports.map(({ mark }) => [mark, largestLoadsByRole(mark, counted())])),
  );
  const nozzleLoads = once(() => nozzleLoadRows(facts));
  const largestOnNozzles = once(() => largestNozzleLoads(nozzleLoads(), counted()));
  const nozzlesByRole = once(() => largestNozzleLoadsByRole(nozzleLoads(), counted()));
  return {
    get conditions() {
      return counted();
    },
    get supportLoads() {
      return supportLoads();
    },
    get supportLoadsByRole() {
      return byRole();
    },
    get nozzleLoads() {
      return nozzleLoads();
    },
    get largestNozzleLoads() {
      return largestOnNozzles();
    },
    get nozzleLoadsByRole() {
      return nozzlesByRole();
    },
    isOf: (other) => other.layout === layout && other.response === response,
  };
}

/** A piece of work that is done at the first call and remembered. */
function once<Answer>(work: () => Answer): () => Answer {
  let known: { readonly answer: Answer } | undefined;
  return () => {
    known ??= { answer: work() };
    return known.answer;
  };
}
