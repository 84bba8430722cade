import type { Movement, Vec3 } from '../../model/conventions.js';
import { motorPoint } from '../../model/frame/pump-body.js';
import { norm, subtract } from '../../model/vector.js';
import { movedMovement } from '../frame/elements/rigid-arm.js';
import type { LoadHistory } from '../start/load-history.js';
import type { FoundVibrations } from './find-vibrations.js';
import { modalHistory } from './modal-history.js';

/** A natural vibration that a moment about the shaft excites. */
export interface TwistingMode {
  /** Place in the list of frequencies, counted from 0. */
  readonly number: number;
  /** [Hz] */
  readonly frequency: number;
  /** Its part of the turn of the set under a moment put on slowly [-]. */
  readonly share: number;
}

/** A mode of unit modal mass with what it does to the motor. */
export interface SwayingMode {
  /** [Hz] */
  readonly frequency: number;
  /** Turn of the set [rad/√(kg·m²)]. */
  readonly participation: number;
  /** Sway of the motor top east and north, and turn about the shaft, by name. */
  readonly outputs: { readonly east: number; readonly north: number; readonly turn: number };
}

/** A set in its pipes under a moment about the shaft. */
export interface TwistedSet {
  /** Those that twist it, the most first. */
  readonly modes: readonly TwistingMode[];
  /** All modes with what they do to the motor top. */
  readonly loaded: readonly SwayingMode[];
  /** Sway of the motor top on the shaft axis under 1 N·m put on slowly, east, north, up [m/(N·m)]. */
  readonly unitTop: Vec3;
  /** Turn of the set under 1 N·m [rad/(N·m)]. */
  readonly unitTurn: number;
  /** From the shaft axis to the rim of the motor [m]. */
  readonly radius: number;
  /** Movement of the rim: sway and turn together [m/(N·m)]. */
  readonly topUnderUnit: number;
}

/**
 * How a moment about the upright through the shaft moves a set: in the modes, and put on slowly.
 *
 *     share = p² / (ω² θ),  p turn of the set in the mode of unit modal mass, θ turn under 1 N·m
 *
 * @param found - vibrations and small movements of a frame with a point `motor seat`
 * @param motor - top of the motor on the shaft axis, and its radius [m]
 * @returns modes and movement under a unit moment
 * @source dynamics
 */
export function twistedSet(
  found: FoundVibrations,
  motor: { readonly top: Vec3; readonly radius: number },
): TwistedSet {
  const { top, radius } = motor;
  const { frame, under } = found.movements;
  const foot = motorPoint(frame.points);
  const arm = subtract(top, frame.points[foot]!);
  const atTop = (seat: Movement): Vec3 => movedMovement(seat, arm).translation;
  const seat = under(foot, { force: [0, 0, 0], moment: [0, 0, 1] })[foot]!;
  const turn = seat.rotation[2];
  const unitTop = atTop(seat);
  const loaded = found.frequencies.modes.map(({ frequency, shape, modalMass }): SwayingMode => {
    const own = shape[foot]!;
    const unit = 1 / Math.sqrt(modalMass);
    const [east, north] = atTop(own);
    return {
      frequency,
      participation: own.rotation[2] * unit,
      outputs: { east: east * unit, north: north * unit, turn: own.rotation[2] * unit },
    };
  });
  const modes = loaded
    .map(({ frequency, participation }, number) => ({
      number,
      frequency,
      share: turn > 0 ? participation ** 2 / ((2 * Math.PI * frequency) ** 2 * turn) : 0,
    }))
    .sort((a, b) => b.share - a.share);
  return { modes, loaded, unitTop, unitTurn: turn, radius, topUnderUnit: rimMovement(unitTop, turn, radius) };
}

/** Part of all modes' movement of the top, under which a mode is taken to follow the load without delay [-]. */
const UNFELT = 0.002;

/** Modes that move the motor top at all under a moment about the shaft. */
function felt({ loaded, radius }: TwistedSet): readonly SwayingMode[] {
  const parts = loaded.map(
    ({ frequency, participation, outputs }) =>
      (Math.abs(participation) * rimMovement([outputs.east, outputs.north, 0], outputs.turn, radius)) /
      frequency ** 2,
  );
  const all = parts.reduce((sum, part) => sum + part, 0);
  return loaded.filter((_, i) => parts[i]! > UNFELT * all);
}

/**
 * How far the rim of a motor's top moves at most: its sway, and its turn about the shaft times the radius.
 *
 * @param sway - movement of the top on the shaft axis [m]
 * @param turn - turn about the shaft [rad]
 * @param radius - radius of the motor [m]
 * @returns size [m]
 * @source statics
 */
export function rimMovement(sway: Vec3, turn: number, radius: number): number {
  return norm(sway) + Math.abs(turn) * radius;
}

/** Movement of the motor top at its rim in one start, magnitudes. */
export interface TopMovement {
  /** Under the largest twist put on slowly [m]. */
  readonly quasiStatic: number;
  /** That times the dynamic factor [m]. */
  readonly byFactor: number;
  /** By time history on the modes [m]. */
  readonly byHistory: number;
}

/**
 * Movement of the motor top in one start, by the dynamic factor and by time history on all modes.
 *
 * @param twisted - modes and unit movement
 * @param start - twist against time [N·m], damping [-], dynamic factor [-] and largest twist [N·m]
 * @returns magnitudes [m]
 * @source dynamics
 */
export function topMovement(
  twisted: TwistedSet,
  start: {
    readonly history: LoadHistory;
    readonly dampingRatio: number;
    readonly factor: number;
    readonly largest: number;
  },
): TopMovement {
  const { unitTop, unitTurn, radius, topUnderUnit } = twisted;
  const loaded = felt(twisted);
  const { history, dampingRatio } = start;
  const quasiStatic = topUnderUnit * start.largest;
  const unitStatic = { east: unitTop[0], north: unitTop[1], turn: unitTurn };
  let byHistory = quasiStatic;
  if (loaded.length > 0) {
    const modes = loaded.map((mode) => ({ ...mode, outputs: { ...mode.outputs } }));
    const { time, outputs } = modalHistory({ modes, unitStatic, history, dampingRatio });
    const valuesOf = (name: 'east' | 'north' | 'turn') => outputs[name]!.values;
    const [east, north, turn] = [valuesOf('east'), valuesOf('north'), valuesOf('turn')];
    byHistory = 0;
    for (let sample = 0; sample < time.length; sample++) {
      const sway: Vec3 = [east[sample]!, north[sample]!, 0];
      byHistory = Math.max(byHistory, rimMovement(sway, turn[sample]!, radius));
    }
  }
  return { quasiStatic, byFactor: quasiStatic * start.factor, byHistory };
}
