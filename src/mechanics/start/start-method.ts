import { EngineError } from '../../issues/issue.js';
import type { Citation } from '../../sources/index.js';

/** How a motor is brought onto its supply. Without a changeover speed the worst one is taken. */
export type StartMethod =
  | { readonly kind: 'across the line' }
  | {
      readonly kind: 'wye-delta';
      /** Speed at which delta is connected over the running speed [-]. */
      readonly changeover?: number;
    }
  | {
      readonly kind: 'autotransformer';
      /** Voltage of the tap over that of the supply [-]. */
      readonly tap: number;
      /** Speed at which full voltage is connected over the running speed [-]. */
      readonly changeover?: number;
    }
  | {
      readonly kind: 'soft starter';
      /** Limit of the current over full-load current [-]. */
      readonly currentLimit: number;
      /** Locked-rotor current of the motor over full-load current [-]. */
      readonly lockedRotorCurrent: number;
      /** Time in which the voltage rises evenly from nothing; without it the limit stands at once [s]. */
      readonly ramp?: number;
    }
  | {
      readonly kind: 'variable-speed drive';
      /** Limit of the torque over full-load torque [-]. */
      readonly torqueLimit: number;
      /** Time of the ramp from standstill to running speed [s]. */
      readonly ramp: number;
    };

/** Torque at standstill by the way of starting. */
export interface StartTorqueShare {
  /** Share of the torque named beside it [-]. */
  readonly share: number;
  /** What it is a share of: the motor's own locked-rotor torque, or its full-load torque. */
  readonly of: 'locked rotor' | 'full load';
  readonly citation: Citation;
}

/**
 * Torque a motor gives at standstill, as a share of its own locked-rotor torque; under a variable-speed drive, as a
 * share of full load, at most.
 *
 *     reduced voltage: (V / V_n)²     wye: 1/3     current limit: (I / I_locked)²
 *
 * The surge of a changeover out of phase can exceed all of these, and it is not in here.
 *
 * @param method - how the motor is started
 * @returns share [-], of what, and where from
 * @throws EngineError `mechanics.out-of-range`
 * @source motor-start-pages
 */
export function startTorqueShare(method: StartMethod): StartTorqueShare {
  const cite = (clause: string, confidence: Citation['confidence']): Citation => ({
    source: 'motor-start-pages',
    clause,
    confidence,
  });
  switch (method.kind) {
    case 'across the line':
      return {
        share: 1,
        of: 'locked rotor',
        citation: { source: 'dynamics', clause: 'definition of locked-rotor torque', confidence: 'computed' },
      };
    case 'wye-delta':
      return {
        share: 1 / 3,
        of: 'locked rotor',
        citation: cite('wye-delta, a third of the torque', 'two sources'),
      };
    case 'autotransformer': {
      within(method.tap, 'voltage of the autotransformer tap', 1);
      const confidence = method.tap === 0.5 ? 'read' : 'computed';
      return {
        share: method.tap ** 2,
        of: 'locked rotor',
        citation: cite('autotransformer, square of the tap', confidence),
      };
    }
    case 'soft starter':
      return {
        share: currentShare(method) ** 2,
        of: 'locked rotor',
        citation: cite('soft starter, square of the current', 'two sources'),
      };
    case 'variable-speed drive':
      within(method.torqueLimit, 'torque limit of the drive', Number.POSITIVE_INFINITY);
      return {
        share: method.torqueLimit,
        of: 'full load',
        citation: { source: 'input', clause: 'torque limit of the drive', confidence: 'computed' },
      };
  }
}

/** Limit of the current over locked-rotor current, at most 1. */
function currentShare(method: Extract<StartMethod, { kind: 'soft starter' }>): number {
  within(method.currentLimit, 'current limit of the soft starter', Number.POSITIVE_INFINITY);
  within(method.lockedRotorCurrent, 'locked-rotor current', Number.POSITIVE_INFINITY);
  return Math.min(1, method.currentLimit / method.lockedRotorCurrent);
}

function within(value: number, what: string, most: number): void {
  if (!(value > 0 && value <= most)) throw new EngineError('mechanics.out-of-range', { what, value });
}
