/** In which conditions a rule is asked, as its definition declares; picking, comparing and the table of the review follow from it. */

import { type SolvedCondition, solvedConditions } from '../analysis/conditions.js';
import type { Subject } from '../analysis/subject.js';
import { kindOf, type RoleKind, roleOfId } from '../model/conditions/condition-roles.js';

/** What a rule may be asked in: the conditions of a frame by kind, and a misfit of the flanges pulled shut. */
export const ASKED_STATES = [
  'empty',
  'filled',
  'test',
  'running',
  'hot',
  'cold',
  'lateral',
  'start',
  'pump-out',
  'motor-off',
  'slack',
  'misfit',
] as const satisfies readonly (RoleKind | 'misfit')[];

export type AskedState = (typeof ASKED_STATES)[number];

/** Whether a rule counts in a condition, is only told beside it, or is not asked, and then why. */
export type Asking = 'judged' | 'compared' | { readonly not: string };

/** One declaration for every condition: the compiler asks for each. */
export type AskedConditions = Readonly<Record<AskedState, Asking>>;

/** Something that has this declaration, or none where it does not turn on conditions. */
interface Declares {
  readonly conditions?: AskedConditions;
}

/**
 * How a rule is asked in the condition of an id.
 *
 * @param rule - rule with its declaration
 * @param condition - id of a condition
 * @returns the declaration; `judged` for a condition of a frame written by hand
 */
export function askedIn({ conditions }: Declares, condition: string): Asking {
  const kind = kindOf({ role: roleOfId(condition) });
  const state = ASKED_STATES.find((one) => one === kind);
  return state === undefined || conditions === undefined ? 'judged' : conditions[state];
}

/**
 * Solved conditions in which a rule is judged or compared.
 *
 * @param conditions - its declaration
 * @param subject - layout with its frame, and response
 * @returns those that are there, in the order of the frame
 */
export function askedConditions(conditions: AskedConditions, subject: Subject): readonly SolvedCondition[] {
  return solvedConditions(subject).filter(({ name }) => typeof askedIn({ conditions }, name) === 'string');
}

const PLAIN = {
  empty: 'judged',
  filled: 'judged',
  test: 'judged',
  running: 'judged',
  hot: 'judged',
  cold: 'judged',
  lateral: 'judged',
  start: 'judged',
} as const;
const OF_PUMP = { not: 'the pump or its motor is out: no load of service passes the nozzles' } as const;
const MISFIT_ELSEWHERE = { not: 'what misfit adds is worked out at the nozzles alone' } as const;

/** What holds the line carries it in every state, also with the pump out; one support unloaded is a question beside. */
export const SUPPORT_CONDITIONS: AskedConditions = {
  ...PLAIN,
  'pump-out': 'judged',
  'motor-off': 'judged',
  slack: 'compared',
  misfit: MISFIT_ELSEWHERE,
};

/** What the nozzles bear with the whole pump in place; an unloaded support and misfit have checks of their own. */
export const NOZZLE_CONDITIONS: AskedConditions = {
  ...PLAIN,
  'pump-out': OF_PUMP,
  'motor-off': OF_PUMP,
  slack: { not: 'has a check of its own, with a support unloaded' },
  misfit: { not: 'has a check of its own, with the misfit pulled shut' },
};

/** A closed joint under pressure, with what bends and pulls it; empty and open lines have no pressure to hold. */
export const JOINT_CONDITIONS: AskedConditions = {
  ...PLAIN,
  empty: { not: 'no pressure' },
  'pump-out': { not: 'the joints at the pump are open and the line has no pressure' },
  'motor-off': { not: 'lighter than filled, at the same pressure' },
  slack: 'compared',
  misfit: MISFIT_ELSEWHERE,
};

const NO_RANGE = { not: 'no range of temperature' } as const;
const LASTING = { not: 'sustained stress is that of pressure and weight, line filled' } as const;
const RARE = { not: 'judged as occasional stress' } as const;
const NEVER_LASTING = { not: 'lasts no time, and no sideways load or start acts' } as const;
const HYPOTHETICAL = {
  not: 'the code judges what comes to pass; loads of nozzles and rods are compared',
} as const;
const STRESS_MISFIT = { not: 'strain of assembly, once: the code sets it no limit' } as const;

/** Pressure and weight. */
export const SUSTAINED_CONDITIONS: AskedConditions = {
  empty: { not: 'lighter, and without pressure' },
  filled: 'judged',
  test: { not: 'the code sets stress along the pipe in the test no limit; it is printed' },
  running: LASTING,
  hot: LASTING,
  cold: LASTING,
  lateral: RARE,
  start: RARE,
  'pump-out': { not: 'without pressure and open; whether the line stands has a check of its own' },
  'motor-off': { not: 'lighter than filled' },
  slack: HYPOTHETICAL,
  misfit: STRESS_MISFIT,
};

/** The range between any two states of service. */
export const RANGE_CONDITIONS: AskedConditions = {
  empty: NO_RANGE,
  filled: 'judged',
  test: NO_RANGE,
  running: 'judged',
  hot: 'judged',
  cold: 'judged',
  lateral: RARE,
  start: RARE,
  'pump-out': NO_RANGE,
  'motor-off': NO_RANGE,
  slack: HYPOTHETICAL,
  misfit: STRESS_MISFIT,
};

/** Loads that last seconds, on top of the lasting ones. */
export const OCCASIONAL_CONDITIONS: AskedConditions = {
  empty: NEVER_LASTING,
  filled: { not: 'the lasting part, judged as sustained stress' },
  test: { not: 'not together with the test' },
  running: { not: 'the lasting part of a start' },
  hot: NEVER_LASTING,
  cold: NEVER_LASTING,
  lateral: 'judged',
  start: 'judged',
  'pump-out': NEVER_LASTING,
  'motor-off': NEVER_LASTING,
  slack: HYPOTHETICAL,
  misfit: STRESS_MISFIT,
};
