import type { Catalogued } from './catalogued.js';
import { motorTorqueRows, type PrintedTorques, poleColumns } from './motor-torque-rows.js';
import { HORSEPOWER } from './printed-units.js';

/** Rating of an induction motor. */
export interface MotorRatingQuery {
  /** Shaft power on the nameplate [W]. */
  readonly power: number;
  /** Number of poles: 2, 4, 6 or 8 [-]. */
  readonly poles: number;
}

/** Torques as shares of full-load torque; each `value` is a share [-]. */
export interface MotorTorqueShares {
  /** At standstill with the full voltage. */
  readonly lockedRotor: Catalogued;
  /** The greatest of the torque curve, near running speed. */
  readonly breakdown: Catalogued;
}

/** Metric ratings are the inch ratings rounded, within two in a hundred: 5.5 kW is 7.376 hp. */
const SAME_RATING = 0.02;

/**
 * Least locked-rotor and breakdown torque a design B motor must have, as shares of full-load torque. They are minimums:
 * a real motor pulls harder, so they serve to ask whether a pump starts, never as the greatest reaction.
 * Between two ratings the larger one is taken, whose minimums are the smaller.
 *
 * @param query - power and number of poles
 * @returns two shares, or undefined above 250 hp, below 1 hp or without such a motor in the table
 * @source nema-mg-1 tables 12-2 and 12-3
 */
export function leastMotorTorques(query: MotorRatingQuery): MotorTorqueShares | undefined {
  const { poles } = query;
  const horsepower = query.power / HORSEPOWER;
  const column = poleColumns.indexOf(poles);
  if (column < 0 || !(horsepower >= 1 - SAME_RATING)) return undefined;
  const row = motorTorqueRows.find((each) => horsepower <= each.horsepower * (1 + SAME_RATING));
  const lockedRotor = row?.lockedRotor[column];
  const breakdown = row?.breakdown[column];
  if (row === undefined || lockedRotor === undefined || breakdown === undefined) return undefined;
  return {
    lockedRotor: cell(row, poles, lockedRotor, 'lockedRotor'),
    breakdown: cell(row, poles, breakdown, 'breakdown'),
  };
}

function cell(
  row: PrintedTorques,
  poles: number,
  percent: number,
  kind: 'lockedRotor' | 'breakdown',
): Catalogued {
  const locked = kind === 'lockedRotor';
  return {
    value: percent / 100,
    table: locked ? 'least locked-rotor torque, design B, 60 Hz' : 'least breakdown torque, design B, 60 Hz',
    row: `${row.horsepower} hp, ${poles} poles`,
    citation: {
      source: 'nema-mg-1',
      clause: locked ? 'table 12-2' : 'table 12-3',
      confidence: row.read[kind].includes(poles) ? 'read' : 'memory',
    },
  };
}

/**
 * Locked-rotor current to reckon with where none is given, as a multiple of full-load current: the low end of the range
 * of design B, with which a current limit leaves the most torque. It is an assumption, to be listed as one.
 *
 * @returns multiple of full-load current [-]
 * @source nema-mg-1
 */
export function lockedRotorCurrentAssumed(): Catalogued {
  return {
    value: 6,
    table: 'locked-rotor current of design B, 600 to 700 % of full load',
    row: 'low end of the range',
    citation: { source: 'nema-mg-1', clause: 'range of design B', confidence: 'two sources' },
  };
}

/** Ratings up to which the higher of the two ceilings is taken [hp]. */
const SMALL_MOTOR = 10;

/**
 * Greatest torque to reckon with where neither nameplate nor maker's curve is at hand, as a share of full-load torque:
 * 300 % up to 10 hp and 250 % above. It is an assumption, to be listed as one; the maker's curve replaces it.
 *
 * @param query - power
 * @returns share of full-load torque [-]
 * @source nema-mg-1 range of breakdown torque of design B, 175 to 300 %, the high values at small ratings
 */
export function greatestTorqueAssumed(query: { readonly power: number }): Catalogued {
  const small = query.power <= SMALL_MOTOR * (1 + SAME_RATING) * HORSEPOWER;
  return {
    value: small ? 3 : 2.5,
    table: 'greatest torque of an induction motor without a nameplate value',
    row: small ? `up to ${SMALL_MOTOR} hp` : `above ${SMALL_MOTOR} hp`,
    citation: {
      source: 'nema-mg-1',
      clause: 'range of breakdown torque of design B, 175 to 300 %',
      confidence: 'memory',
    },
  };
}
