import { EngineError } from '../../issues/issue.js';
import type { ConditionLoads } from '../frame/condition-loads.js';
import type { PreparedFrame } from '../frame/prepare-frame.js';
import { restraintForces } from '../frame/respond.js';
import type { JointState } from '../frame/response.js';
import type { BuiltSystem } from '../frame/system/build-system.js';
import type { FreeMovement } from '../frame/system/free-movements.js';
import type { ActiveRestraint } from './active-restraint.js';
import type { Contact, ContactState } from './contact.js';
import { type Converged, iterateContacts } from './iterate-contacts.js';
import { type JointPlay, type JointPlayState, loadsWithPlay, looseJoint, startPlay } from './joint-play.js';
import { judgeJoints, namedJointStates, type PlayChange } from './judge-joints.js';
import { leaningRods } from './leaning-rods.js';

/** A solution in which every support, rod and joint does what it can do. */
export interface ConvergedFrame extends Converged {
  /** What acts, with the play that joints have used up. */
  readonly loads: ConditionLoads;
  readonly joints: Readonly<Record<string, JointState>>;
}

/** What settles besides one-way supports and friction. */
export interface Iterating {
  readonly prepared: PreparedFrame;
  readonly contacts: readonly Contact[];
  readonly plays: readonly JointPlay[];
  readonly loads: ConditionLoads;
  readonly systemFor: (
    activeRestraints: readonly ActiveRestraint[],
    plays: readonly JointPlayState[],
  ) => BuiltSystem;
}

/** Rounds for rods that lean and joints with play; each such joint adds some [-]. */
const ROUNDS = 60;
const ROUNDS_A_JOINT = 10;

/**
 * Finds what supports, leaning rods and joints with play do: the contacts settle for the joints and rod loads at hand,
 * then joints change, then rod loads are taken anew, until nothing changes.
 *
 * Where a set of joint states comes back, joints change one by one from then on.
 *
 * @param settling - contacts, joints with play, what acts [N], and the factored stiffness for given holds and joints
 * @returns the settled solution
 * @throws EngineError as `settleContacts`; `mechanics.joint-alternates`, data: `condition`, `joints`, `rounds`;
 *   `mechanics.swing-unsettled`, data: `condition`, `supports`, `rounds`
 * @source statics
 */
export function iterateFrame(settling: Iterating): ConvergedFrame {
  const { prepared, contacts, plays, loads, systemFor } = settling;
  const states = startPlay(plays);
  const seen = new Set<string>();
  const swings = leaningRods(contacts, loads);
  const limit = ROUNDS + ROUNDS_A_JOINT * plays.length;
  let oneByOne = false;
  let recent: readonly number[] = [];
  let start: readonly ContactState[] | undefined;
  let rounds = 0;
  const apply = (changes: readonly PlayChange[]) => {
    const chosen = oneByOne ? changes.slice(0, 1) : changes;
    for (const { play, to } of chosen) states[play] = to;
    recent = [...recent, ...chosen.map(({ play }) => play)].slice(-2 * plays.length);
    const key = states.map(({ rods, turning }) => `${rods}.${turning}`).join();
    if (seen.has(key)) oneByOne = true;
    seen.add(key);
  };
  for (let round = 1; round <= limit; round++) {
    const acting = loadsWithPlay(loads, prepared, plays, states);
    let free: readonly FreeMovement[] = [];
    const standing = (activeRestraints: readonly ActiveRestraint[]): BuiltSystem => {
      const built = systemFor(activeRestraints, states);
      free = built.free;
      return built;
    };
    let converged: Converged;
    try {
      converged = iterateContacts(contacts, acting, standing, swings.loads, start);
    } catch (error) {
      if (!(error instanceof EngineError)) throw error;
      const loose = firstLoose(plays, states, free);
      if (loose !== undefined && !oneByOne) apply([loose]);
      else if (!swings.ease(restlessSupports(prepared, error))) throw error;
      continue;
    }
    rounds += converged.rounds;
    start = converged.states;
    const { system, activeRestraints, solution } = converged;
    const forces = restraintForces(system, activeRestraints, solution);
    const largest = Math.max(largestOf(forces), largestOf(loads.weight), largestOf(loads.pointForces));
    const tolerances = { force: 1e-9 * largest, step: 1e-9 * largestOf(solution.movements) + 1e-13 };
    const verdict = judgeJoints(plays, states, system, solution, tolerances);
    for (const { play, to } of verdict.ways) states[play] = to;
    if (verdict.changes.length > 0) apply(verdict.changes);
    if (verdict.changes.length > 0 || !verdict.waysFit) continue;
    recent = [];
    if (!swings.take(activeRestraints, forces, largest)) {
      return {
        ...converged,
        rounds,
        loads: acting,
        joints: namedJointStates(plays, states, system, solution),
      };
    }
  }
  const { joints, supports } = prepared.frame;
  const condition = loads.condition.name;
  const limited = plays.flatMap((_, index) => (states[index]!.turning === 'limit' ? [index] : []));
  const restless = recent.length > 0 ? recent : limited;
  if (restless.length > 0) {
    const names = restless.map((play) => joints[plays[play]!.joint]!.name);
    throw new EngineError('mechanics.joint-alternates', {
      condition,
      joints: [...new Set(names)],
      rounds: limit,
    });
  }
  const names = contacts.filter(({ swing }) => swing).map(({ support }) => supports[support]!.name);
  throw new EngineError('mechanics.swing-unsettled', {
    condition,
    supports: [...new Set(names)],
    rounds: limit,
  });
}

/** Numbers of the supports of which an error says that they keep changing. */
function restlessSupports({ frame }: PreparedFrame, error: EngineError): ReadonlySet<number> {
  const named = error.code === 'mechanics.contact-alternates' ? error.data.supports : [];
  const names = new Set<unknown>(Array.isArray(named) ? named : []);
  return new Set(frame.supports.flatMap(({ name }, index) => (names.has(name) ? [index] : [])));
}

/** The first joint with play through which a free movement goes. */
function firstLoose(
  plays: readonly JointPlay[],
  states: readonly JointPlayState[],
  free: readonly FreeMovement[],
): PlayChange | undefined {
  for (const { movements } of free) {
    const loose = looseJoint(plays, states, movements);
    if (loose !== undefined) return loose;
  }
  return undefined;
}

function largestOf(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}
