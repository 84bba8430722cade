/** What is known of a check beside what it compares: told once, at the check, and asked for by the compiler. */

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

/** Facts of a check. */
export interface RuleFacts {
  /** Who acts on it when it exceeds. */
  readonly trade: Trade;
  readonly section: RuleSection;
  readonly dependsOn: readonly [Dependence, ...Dependence[]];
  /** `slow`: solves or searches beyond the conditions of the review, so that trials look at it only where they must. */
  readonly cost: 'quick' | 'slow';
  /** Whether it counts for the verdict of the review, or is only told beside it. */
  readonly standing: 'decides' | 'compares';
  /** What has to wait until it is mended: filling and starting the pump, taking the work over, or nothing. */
  readonly blocks: 'start' | 'acceptance' | 'nothing';
  /** Where its pascals are a pressure in a pipe rather than a stress in metal. */
  readonly pascals?: 'pressure';
  /** Where no ratio tells how near it is, so that every trial of a change has to look at it. */
  readonly turnsUnannounced?: true;
}
