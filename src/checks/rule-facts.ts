/** What is known of a check beside what it compares: told once, at the check, and asked for by the compiler. */

import type { AskedConditions } from './asked-conditions.js';

/** Trades in the order a list of fixes is worked off. */
export const TRADES = [
  'Design engineer',
  'Pipe fitter',
  'Rigger, and coordination of trades',
  'Electrician',
  'Structural engineer',
] as const;

/** Who acts on a finding. */
export type Trade = (typeof TRADES)[number];

/** What a change of which may turn the outcome. */
export type Dependence =
  /** Where and how the pipe is held, and its legs. */
  | 'supports'
  /** Weights and stiffness of pump, pipe and supports. */
  | 'weights'
  /** Pressure and temperature of the design and of the test. */
  | 'pressure'
  /** Valves, fittings, flanges and gauges in the line. */
  | 'parts'
  /** What stands around the pump. */
  | 'room'
  /** Flow, head, power and speed. */
  | 'duty'
  /** How the motor starts. */
  | 'start'
  /** What is decided or told by those who build and run it. */
  | 'site';

/** Part of the review whose tables it belongs to. */
export type RuleSection =
  | 'nozzle-loads'
  | 'slack'
  | 'fit-up'
  | 'stress'
  | 'support-loads'
  | 'pump-out'
  | 'flanges'
  | 'connectors'
  | 'frequencies'
  | 'start-up'
  | 'access'
  | 'lift'
  | 'electrical'
  | 'practice'
  | 'scope';

/** What may come of a limit that is not kept, the gravest first. */
export const CONSEQUENCES = [
  /** Someone may be hurt, or pump, pipe, support or motor break. */
  'hurt or break',
  /** There is no room to work, to take something out, or to get past. */
  'room',
  /** It is less good than the trade advises. */
  'practice',
] as const;

export type Consequence = (typeof CONSEQUENCES)[number];

/** Facts of a check. */
export interface RuleFacts {
  /** Who acts on it when it exceeds. */
  readonly trade: Trade;
  readonly section: RuleSection;
  readonly dependsOn: readonly [Dependence, ...Dependence[]];
  /** `slow`: solves or searches beyond the conditions of the review, so that trials look at it only where they must. */
  readonly cost: 'quick' | 'slow';
  /**
   * Whether it counts for the verdict of the review, or is only told beside it. `practice` is told beside it unless a
   * document of the owner makes it a limit, or the demand says that the file does.
   */
  readonly standing: 'decides' | 'compares' | 'practice';
  /** What has to wait until it is mended: filling and starting the pump, taking the work over, or nothing. */
  readonly blocks: 'start' | 'acceptance' | 'nothing';
  /** What comes of it when it exceeds: the order in which findings are read. */
  readonly consequence: Consequence;
  /** In which conditions it is asked; left out where it does not turn on conditions, or on one that it names itself. */
  readonly conditions?: AskedConditions;
  /** Where its pascals are a pressure in a pipe rather than a stress in metal. */
  readonly pascals?: 'pressure';
  /** Where no ratio tells how near it is, so that every trial of a change has to look at it. */
  readonly turnsUnannounced?: true;
}
