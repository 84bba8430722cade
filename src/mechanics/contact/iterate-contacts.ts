import { EngineError } from '../../issues/issue.js';
import { norm, scale } from '../../model/vector.js';
import type { ConditionLoads } from '../frame/condition-loads.js';
import { movementAlong } from '../frame/elements/element-forces.js';
import { type Conflict, conflictError, pointOffsets } from '../frame/recovery/point-offsets.js';
import { restraintForces } from '../frame/respond.js';
import { type Solution, solveCondition } from '../frame/solve-condition.js';
import type { BuiltSystem } from '../frame/system/build-system.js';
import type { FreeMovement } from '../frame/system/free-movements.js';
import { mechanismError } from '../frame/system/mechanism.js';
import type { System } from '../frame/system/system.js';
import type { ActiveRestraint } from './active-restraint.js';
import { type Contact, type ContactState, slideOf, startStates } from './contact.js';
import { activeRestraintsOf } from './contact-restraints.js';
import { type Change, judgeContacts } from './judge-contacts.js';
import { slipNormals } from './slip-normals.js';

/** A solution in which every support does what it can do. */
export interface Converged {
  readonly system: System;
  readonly activeRestraints: readonly ActiveRestraint[];
  readonly states: readonly ContactState[];
  readonly solution: Solution;
  readonly rounds: number;
}

/**
 * Finds what one-way supports, gaps and friction do, by solving, judging and changing until nothing changes.
 *
 * All contacts that do not fit change at once; when a set of states comes back, or leaves the frame loose, only the
 * first that does not fit changes from then on (the least-index rule, which ends for contacts without friction).
 * Friction holds against the place where the point was set, not against its path. Where no steady state is found from
 * sticking, friction is brought on in steps from the solution without it.
 *
 * @param contacts - restraints that are there
 * @param loads - what acts [N]
 * @param systemFor - factored stiffness for given holds
 * @param swings - load with which the rod of each contact holds sideways [N]
 * @param start - states to begin with; left out, everything that can push does
 * @returns the settled solution
 * @throws EngineError `mechanics.mechanism`, `mechanics.supports-conflict`; `mechanics.contact-alternates` when no
 *   steady state is found; data: `condition`, `supports` that keep changing, `rounds`
 * @source statics
 */
export function iterateContacts(
  contacts: readonly Contact[],
  loads: ConditionLoads,
  systemFor: (activeRestraints: readonly ActiveRestraint[]) => BuiltSystem,
  swings: Float64Array = new Float64Array(contacts.length),
  start: readonly ContactState[] = startStates(contacts),
): Converged {
  const first = iterateFrom(contacts, start, loads, systemFor, swings);
  if (!(first instanceof EngineError)) return first;
  if (first.code !== 'mechanics.contact-alternates' || !contacts.some(hasFriction)) throw first;
  const smooth = contacts.map((contact) => ({ ...contact, friction: 0, tangents: [] }));
  const sliding = iterateFrom(smooth, startStates(smooth), loads, systemFor, swings);
  if (sliding instanceof EngineError) throw first;
  let { rounds } = sliding;
  let states: readonly ContactState[] = slidStates(contacts, sliding);
  for (let step = 1; ; step++) {
    const eased = contacts.map((contact) => ({ ...contact, friction: (contact.friction * step) / EASING }));
    const converged = iterateFrom(eased, states, loads, systemFor, swings);
    if (converged instanceof EngineError) throw first;
    rounds += converged.rounds;
    if (step === EASING) return { ...converged, rounds };
    states = converged.states;
  }
}

/** Steps in which friction is brought on where it does not settle at once [-]. */
const EASING = 8;

const hasFriction = (contact: Contact) => contact.tangents.length > 0;

/** States of a solution without friction, with every contact that slid in it slipping that way. */
function slidStates(contacts: readonly Contact[], sliding: Converged): ContactState[] {
  return contacts.map((contact, index) => {
    const state = sliding.states[index]!;
    if (!hasFriction(contact) || state.where !== 'held') return state;
    const slide = slideOf(contact, sliding.solution.movements);
    const distance = norm(slide);
    if (distance < 1e-12) return state;
    return { ...state, slip: { direction: scale(slide, 1 / distance), normal: 0, distance } };
  });
}

function iterateFrom(
  contacts: readonly Contact[],
  start: readonly ContactState[],
  loads: ConditionLoads,
  systemFor: (activeRestraints: readonly ActiveRestraint[]) => BuiltSystem,
  swings: Float64Array,
): Converged | EngineError {
  const name = loads.condition.name;
  const states = [...start];
  const oneWay = contacts.filter(
    (contact) => !contact.always || hasFriction(contact) || contact.travel !== undefined,
  ).length;
  const limit = 40 + 20 * oneWay;
  const load = sizeOfLoad(loads);
  const seen = new Map<string, number>();
  const recent: Change[][] = [];
  let oneByOne = false;
  let before: ContactState[] | undefined;
  let firstLoose: EngineError | undefined;

  const apply = (changes: readonly Change[]) => {
    const chosen = oneByOne ? changes.slice(0, 1) : changes;
    before = [...states];
    for (const { contact, to } of chosen) states[contact] = to;
    recent.push([...chosen]);
    const key = states
      .map(({ where, side, slip, end }) => `${where[0]}${side}${slip === undefined ? '' : 's'}${end ?? ''}`)
      .join();
    const times = (seen.get(key) ?? 0) + 1;
    seen.set(key, times);
    if (times > 1) oneByOne = true;
  };

  for (let rounds = 1; rounds <= limit; rounds++) {
    const activeRestraints = activeRestraintsOf(contacts, states, swings);
    const { system, free } = systemFor(activeRestraints);
    if (free.length > 0) {
      const centred = gapToCentre(contacts, states, free);
      if (centred === undefined) firstLoose ??= mechanismError(system, activeRestraints, free, name);
      if (centred !== undefined) apply([centred]);
      else if (before !== undefined && !oneByOne) {
        // Too many let go at once: go back and let them go one by one.
        oneByOne = true;
        states.splice(0, states.length, ...before);
      } else return firstLoose ?? mechanismError(system, activeRestraints, free, name);
      continue;
    }
    const { offsets, conflict } = pointOffsets(system, loads, activeRestraints);
    if (conflict !== undefined) {
      const yielding = contactToYield(contacts, states, system, activeRestraints, conflict);
      if (yielding === undefined) return conflictError(system, activeRestraints, conflict, name);
      apply([yielding]);
      continue;
    }
    const solution = solveCondition(system, loads, activeRestraints, offsets);
    if (oneWay === 0) return { system, activeRestraints, states, solution, rounds };
    const forces = restraintForces(system, activeRestraints, solution);
    const normals = slipNormals(system, loads, contacts, states, activeRestraints, forces);
    const verdict = judgeContacts(contacts, states, activeRestraints, forces, normals, solution, load);
    if (verdict.changes.length === 0 && verdict.slipsFit)
      return { system, activeRestraints, states, solution, rounds };
    for (const { contact, to } of verdict.slips) states[contact] = to;
    if (verdict.changes.length > 0) apply(verdict.changes);
  }
  const { supports } = systemFor(activeRestraintsOf(contacts, states, swings)).system.prepared.frame;
  const restless = recent.slice(-2 * oneWay - 2).flat();
  const names = restless.map(({ contact }) => supports[contacts[contact]!.support]!.name);
  const slipping = contacts.filter((_, index) => states[index]!.slip !== undefined);
  const listed = names.length > 0 ? names : slipping.map((contact) => supports[contact.support]!.name);
  return new EngineError('mechanics.contact-alternates', {
    condition: name,
    supports: [...new Set(listed)],
    rounds: limit,
  });
}

/** Largest force that acts, so that forces far smaller count as none. */
function sizeOfLoad(loads: ConditionLoads): number {
  const largest = (values: Float64Array) =>
    values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return Math.max(largest(loads.weight), largest(loads.pointForces));
}

/** The first open gap along which a free movement goes: it is held in its middle, and released if it is pressed. */
function gapToCentre(
  contacts: readonly Contact[],
  states: readonly ContactState[],
  free: readonly FreeMovement[],
): Change | undefined {
  for (const { movements } of free) {
    const largest = movements.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    const index = contacts.findIndex(
      (contact, at) =>
        states[at]!.where === 'free' &&
        Number.isFinite(contact.high) &&
        Math.abs(movementAlong(contact, movements)) > 1e-6 * largest,
    );
    if (index !== -1) return { contact: index, to: { where: 'centred', side: 0 } };
  }
  return undefined;
}

/** Among contacts that hold one rigid part against itself, the one that is furthest from where it could be. */
function contactToYield(
  contacts: readonly Contact[],
  states: readonly ContactState[],
  system: System,
  activeRestraints: readonly ActiveRestraint[],
  conflict: Conflict,
): Change | undefined {
  let best: Change | undefined;
  let most = 0;
  for (const { row, beyond } of conflict.rows) {
    const { of } = system.unknowns.rows[row]!;
    if (of.kind !== 'hold' || Math.abs(beyond) <= most) continue;
    const activeRestraint = activeRestraints[of.activeRestraint]!;
    const state = states[activeRestraint.contact]!;
    const { always } = contacts[activeRestraint.contact]!;
    if (activeRestraint.role === 'friction') {
      if (state.slip !== undefined) continue;
      const direction = activeRestraint.direction.map((part) => part * Math.sign(beyond)) as [
        number,
        number,
        number,
      ];
      best = {
        contact: activeRestraint.contact,
        to: { ...state, slip: { direction, normal: 0, distance: 0 } },
      };
    } else if (state.end !== undefined && beyond > 0 === (state.end === 'bottom')) {
      // A spring pressed on from the end of its travel goes back to being a spring.
      const { end: _, ...without } = state;
      best = { contact: activeRestraint.contact, to: without };
    } else if (state.where === 'centred' || (!always && beyond * -state.side > 0)) {
      best = { contact: activeRestraint.contact, to: { where: 'free', side: 0 } };
    } else continue;
    most = Math.abs(beyond);
  }
  return best;
}
