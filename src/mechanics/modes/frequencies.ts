import { type LowestModes, lowestModes } from '../../algebra/lowest-modes.js';
import { factorProfile } from '../../algebra/profile-factor.js';
import type { ProfileMatrix } from '../../algebra/profile-matrix.js';
import { EngineError } from '../../issues/issue.js';
import type { Movement, Vec3, Wrench } from '../../model/conventions.js';
import type { Frame, FrameCondition } from '../../model/frame/frame.js';
import type { ActiveRestraint } from '../contact/active-restraint.js';
import { conditionLoads } from '../frame/condition-loads.js';
import { prepareFrame } from '../frame/prepare-frame.js';
import { pointOffsets } from '../frame/recovery/point-offsets.js';
import { solveCondition } from '../frame/solve-condition.js';
import { frameSolver } from '../frame/solve-frame.js';
import { assembleStiffness } from '../frame/system/assemble.js';
import type { System } from '../frame/system/system.js';
import { spreadMovements } from '../frame/system/unknowns.js';
import { assembleMass, type MassBlock, massBlocks, momentumOf } from './mass-matrix.js';

/** One natural vibration. */
export interface Mode {
  /** [Hz] */
  readonly frequency: number;
  /** Movement of every point, scaled so that the largest translation is 1 m; without one, the largest rotation 1 rad. */
  readonly shape: Readonly<Record<string, Movement>>;
  /**
   * What `shape` squares to over the mass, xᵀ M x: divided by its root, the shape has unit modal mass. In kg where the
   * shape is scaled by a translation, in kg·m² where by a rotation.
   */
  readonly modalMass: number;
  /** Share of the whole mass that moves with it east, north and up [-]. */
  readonly massShare: Vec3;
}

/** Natural vibrations of a frame in one condition. */
export interface Frequencies {
  /** Lowest first; fewer than asked for where the frame has no more. */
  readonly modes: readonly Mode[];
  /** Vibrations at or under the highest given, counted on their own by the signs of K − ω² M; equal to `modes.length`. */
  readonly counted: number;
  /** Frequency up to which none is missing: the highest, without end where the frame has no more [Hz]. */
  readonly completeTo: number;
  /** Mass that stands [kg]. */
  readonly mass: number;
}

/**
 * Lowest natural frequencies of a frame, small vibrations about a condition: supports act as they do there (a lifted
 * rest stays lifted, a sticking one sticks), mass is consistent along members and lumped with rotary inertia on bodies.
 *
 *     K x = ω² M x,   f = ω / 2π
 *
 * That none is missing is checked by counting the negative pivots of K − ω² M just above the highest (Sylvester).
 *
 * @param frame - the frame
 * @param condition - contents, covering, bodies and supports that are there
 * @param count - how many are wanted [-]
 * @returns frequencies [Hz], shapes and mass shares, and the count that confirms them
 * @throws EngineError as `solveFrame`; `algebra.not-converged` when frequencies are missing after widening the search
 * @source beam-theory
 */
export function naturalFrequencies(frame: Frame, condition: FrameCondition, count: number): Frequencies {
  return smallMovements(frame, condition).vibrations(count);
}

/** What a frame does in small movements about a condition: its supports stay in the state they have there. */
export interface SmallMovements {
  /** The frame that moves. */
  readonly frame: Frame;
  /** As `naturalFrequencies`. */
  readonly vibrations: (count: number) => Frequencies;
  /** How many vibrations lie below a frequency [Hz], counted without finding them [-]. */
  readonly countBelow: (frequency: number) => number;
  /** Movement of every point under a further load put on slowly [m], [rad]. */
  readonly under: (point: string, wrench: Wrench) => Readonly<Record<string, Movement>>;
}

/**
 * Small movements of a frame about a condition, so that vibrations and movements under a small load come from one
 * stiffness.
 *
 * @param frame - the frame
 * @param condition - contents, covering, bodies and supports that are there
 * @returns vibrations, and movements under a load [m], [rad]
 * @throws EngineError as `solveFrame`
 * @source beam-theory
 */
export function smallMovements(frame: Frame, condition: FrameCondition): SmallMovements {
  // The condition need not be one of the frame's own, so it is checked with the rest.
  const prepared = prepareFrame({ ...frame, conditions: [condition] });
  const { converged } = frameSolver(prepared)(condition);
  const { system, activeRestraints } = converged;
  const still: FrameCondition = {
    ...condition,
    gravity: [0, 0, 0],
    temperature: frame.installationTemperature,
    pressure: 0,
    loads: [],
    imposed: {},
  };
  let known: SystemMass | undefined;
  const mass = (): SystemMass => {
    known ??= systemMass(system, condition);
    return known;
  };
  const unset = activeRestraints.map((activeRestraint) => ({ ...activeRestraint, at: 0, preload: 0 }));
  return {
    frame,
    vibrations: (count) => vibrationsOf(system, activeRestraints, mass(), count),
    countBelow: (frequency) =>
      system.unknowns.size === 0
        ? 0
        : countBelow(system, activeRestraints, mass().matrix, (2 * Math.PI * frequency) ** 2),
    under: (point, wrench) => {
      const loads = conditionLoads(prepared, system.clusters, { ...still, loads: [{ point, wrench }] });
      const { offsets } = pointOffsets(system, loads, unset);
      const { movements } = solveCondition(system, loads, unset, offsets);
      return namedMovements(prepared.pointNames, movements, 1);
    },
  };
}

interface SystemMass {
  readonly blocks: readonly MassBlock[];
  readonly matrix: ProfileMatrix;
  /** [kg] */
  readonly total: number;
}

function systemMass(system: System, condition: FrameCondition): SystemMass {
  const { blocks, total } = massBlocks(system, condition);
  return { blocks, total, matrix: assembleMass(system, blocks) };
}

function vibrationsOf(
  system: System,
  activeRestraints: readonly ActiveRestraint[],
  mass: SystemMass,
  count: number,
): Frequencies {
  const { prepared } = system;
  const { blocks, total } = mass;
  const { found, counted } = countedModes(system, activeRestraints, mass.matrix, count);
  const size = 6 * prepared.places.length;
  const modes = found.values.map((value, index): Mode => {
    const z = found.vectors[index]!.map((part, i) => part * system.scale[i]!);
    const movements = spreadMovements(system.unknowns, z, new Float64Array(size), new Float64Array(size));
    const momentum = momentumOf(blocks, movements);
    // Vectors have xᵀ K x = 1, so that xᵀ M x = 1/ω².
    const share = (part: number) => (total > 0 ? (part * part * value) / total : 0);
    const factor = shapeFactor(movements);
    return {
      frequency: Math.sqrt(value) / (2 * Math.PI),
      shape: namedMovements(prepared.pointNames, movements, factor),
      modalMass: factor ** 2 / value,
      massShare: [share(momentum[0]), share(momentum[1]), share(momentum[2])],
    };
  });
  const highest = modes[modes.length - 1]?.frequency ?? 0;
  const completeTo = modes.length < count ? Number.POSITIVE_INFINITY : highest;
  return { modes, counted, completeTo, mass: total };
}

/** Searches with more spare vectors until the count agrees. */
function countedModes(
  system: System,
  activeRestraints: readonly ActiveRestraint[],
  mass: ProfileMatrix,
  count: number,
): { readonly found: LowestModes; readonly counted: number } {
  if (system.unknowns.size === 0) return { found: { values: [], vectors: [], rounds: 0 }, counted: 0 };
  for (const further of [1, 9, 25]) {
    // The next above the wanted ones is found too, so that the count is taken in the gap between.
    const wide = lowestModes(system.factor, mass, count + further);
    const values = wide.values.slice(0, count);
    const highest = values[values.length - 1];
    if (highest === undefined) return { found: wide, counted: 0 };
    const next = wide.values[count] ?? highest * 1.01;
    const isApart = next > highest * (1 + 1e-6);
    const among = isApart
      ? values.length
      : wide.values.filter((value) => value <= highest * (1 + 1e-6)).length;
    const counted = countBelow(
      system,
      activeRestraints,
      mass,
      isApart ? Math.min((highest + next) / 2, highest * 1.01) : highest * (1 + 2e-6),
    );
    const found = { values, vectors: wide.vectors.slice(0, values.length), rounds: wide.rounds };
    if (counted === among) return { found, counted: values.length };
    // A pair as close as that at the edge: both belong together, and more may follow them.
    if (!isApart && counted > among) continue;
  }
  throw new EngineError('algebra.not-converged', { what: 'natural frequencies', rounds: 3 });
}

/** How many eigenvalues lie below a value. */
function countBelow(
  system: System,
  activeRestraints: readonly ActiveRestraint[],
  mass: ProfileMatrix,
  value: number,
): number {
  const { prepared, clusters, unknowns, scale } = system;
  const shifted = assembleStiffness(prepared, clusters, unknowns, activeRestraints);
  for (let j = 0; j < shifted.size; j++) {
    const base = shifted.diagonal[j]! - j;
    for (let i = shifted.first[j]!; i <= j; i++) {
      const stiff = shifted.values[base + i]! * scale[i]! * scale[j]!;
      shifted.values[base + i] = stiff - value * mass.values[base + i]!;
    }
  }
  return factorProfile(shifted, Number.NEGATIVE_INFINITY).negative;
}

/** Makes the largest translation 1, or the largest rotation where nothing is displaced. */
function shapeFactor(movements: Float64Array): number {
  const largest = (offset: number) => {
    let most = 0;
    let sign = 1;
    for (let i = 0; i < movements.length; i++) {
      if (i % 6 < 3 !== (offset === 0) || Math.abs(movements[i]!) <= most * (1 + 1e-9)) continue;
      most = Math.abs(movements[i]!);
      sign = Math.sign(movements[i]!);
    }
    return { most, sign };
  };
  const moved = largest(0);
  const turned = largest(3);
  const by = moved.most > 1e-9 * turned.most ? moved : turned;
  return by.most > 0 ? by.sign / by.most : 1;
}

function namedMovements(
  names: readonly string[],
  movements: Float64Array,
  factor: number,
): Record<string, Movement> {
  const shape: Record<string, Movement> = {};
  names.forEach((name, point) => {
    const part = (i: number) => movements[6 * point + i]! * factor;
    shape[name] = { translation: [part(0), part(1), part(2)], rotation: [part(3), part(4), part(5)] };
  });
  return shape;
}
