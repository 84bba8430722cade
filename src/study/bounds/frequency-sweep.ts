/**
 * Natural frequencies over everything that nobody stated. They are swept, since two ends can straddle a resonance.
 *
 * Between two samples next to each other a vibration of the pump is followed by how pump and motor move in it, and passes
 * every frequency between its two values. (A frequency in its place of the list never falls when anything gets stiffer,
 * after Courant and Fischer; but places are exchanged where vibrations of the pipe pass one of the pump.)
 */
import { type PumpMode, pumpModes } from '../../analysis/motion/pump-modes.js';
import type { Subject } from '../../analysis/subject.js';
import { EngineError } from '../../issues/issue.js';
import { refineFrame } from '../../mechanics/frame/refine-frame.js';
import { vibrationsUpTo } from '../../mechanics/modes/find-vibrations.js';
import { ofRole } from '../../model/conditions/condition-roles.js';
import { buildFrameParts } from '../../model/frame/build-frame.js';
import { MOTOR_FOOT, MOTOR_SEAT } from '../../model/frame/pump-body.js';

import { type Amounts, atBounds } from './at-bounds.js';
import { heldBy } from './layout-at-bounds.js';
import type { Unstated } from './unstated.js';

/** A natural frequency at one sample. */
export interface SweptMode {
  /** [Hz] */
  readonly frequency: number;
  /** Part of the energy of motion in pump and motor [-]. */
  readonly share: number;
  readonly counts: boolean;
  /** Movement of the pump's ports and of the motor, scaled to length 1 [-]. */
  readonly motion: readonly number[];
}

/** One sample of the sweep. */
export interface SweepSample {
  /** How far the bracket, all structure together, and friction have gone from what was taken [-]. */
  readonly bracket: number;
  readonly structure: number;
  readonly friction: number;
  /** Natural frequency of the motor on its bracket here; absent where it is rigid [Hz]. */
  readonly bracketFrequency?: number;
  readonly modes: readonly SweptMode[];
}

/** What is swept together. */
export type SweptGroup = 'bracket' | 'structure' | 'friction';
const GROUPS: readonly SweptGroup[] = ['bracket', 'structure', 'friction'];

/** What a frequency passes between two samples next to each other. */
export interface SweptSpan {
  /** [Hz] */
  readonly low: number;
  readonly high: number;
  /** Which groups move on the way. */
  readonly varied: readonly SweptGroup[];
}

/** The whole sweep. */
export interface FrequencySweep {
  readonly samples: readonly SweepSample[];
  /** Spans of the frequencies that count as the pump's at either end. */
  readonly spans: readonly SweptSpan[];
  /** Frequency up to which none is missing in any sample [Hz]. */
  readonly completeTo: number;
  /** Samples that could not be worked out [-]. */
  readonly failed: number;
  /** What was swept, by group. */
  readonly things: {
    readonly bracket?: Unstated;
    readonly structure: readonly Unstated[];
    readonly friction: readonly Unstated[];
  };
}

type Spot = readonly [bracket: number, structure: number, friction: number];

/** Softness of the bracket, and of all structure together: finer where a frequency follows it most [-]. */
const BRACKET = [0, 0.25, 0.5, 0.75, 1];
const STRUCTURE = [0, 0.1, 0.4, 1];

/**
 * Sweeps.
 *
 *     bracket from rigid to soft, with the structure rigid and with it soft
 *     structure from rigid to soft, with the bracket rigid and with it soft
 *     friction at its largest, at the four corners of these
 *
 * @param subject - the installation, solved as stated
 * @param things - what nobody stated
 * @returns samples and spans; nothing where all is stated or frequencies were not worked out
 * @source dynamics
 */
export function sweepFrequencies(subject: Subject, things: readonly Unstated[]): FrequencySweep | undefined {
  const bracket = things.find(({ kind }) => kind === 'bracket');
  const friction = things.filter(({ kind }) => kind === 'friction');
  const structure = things.filter(({ kind }) => kind !== 'bracket' && kind !== 'friction');
  if (things.length === 0 || subject.frequencies === undefined) return undefined;
  const known = new Map<string, SweepSample | undefined>();
  let completeTo = subject.frequencies.completeTo;
  const sampled = sampler(subject, things);
  const at = (spot: Spot): SweepSample | undefined => {
    const key = spot.join();
    if (known.has(key)) return known.get(key);
    const amounts: Amounts = new Map([
      ...(bracket === undefined ? [] : [[bracket.id, spot[0]] as const]),
      ...structure.map(({ id }) => [id, spot[1]] as const),
      ...friction.map(({ id }) => [id, spot[2]] as const),
    ]);
    const found = sampled(amounts);
    completeTo = Math.min(completeTo, found?.completeTo ?? 0);
    const sample = found && {
      ...named(spot),
      ...(bracket !== undefined && spot[0] > 0 && { bracketFrequency: bracket.end / Math.sqrt(spot[0]) }),
      modes: found.modes,
    };
    known.set(key, sample);
    return sample;
  };
  known.set('0,0,0', { ...named([0, 0, 0]), modes: sweptModes(pumpModes(subject)) });
  const paths = pathsOf(bracket !== undefined, structure.length > 0, friction.length > 0);
  const spans = paths.flatMap((path) => spansAlong(path.map(at)));
  const samples = [...known.values()];
  return {
    samples: samples.filter((sample) => sample !== undefined),
    spans,
    completeTo,
    failed: samples.filter((sample) => sample === undefined).length,
    things: { ...(bracket && { bracket }), structure, friction },
  };
}

const named = ([bracket, structure, friction]: Spot) => ({ bracket, structure, friction });

function pathsOf(bracket: boolean, structure: boolean, friction: boolean): readonly (readonly Spot[])[] {
  const overBracket = (at: number): readonly Spot[] => BRACKET.map((amount) => [amount, at, 0] as const);
  const overStructure = (at: number): readonly Spot[] => STRUCTURE.map((amount) => [at, amount, 0] as const);
  const ends = (there: boolean): readonly number[] => (there ? [0, 1] : [0]);
  const rubbing = (b: number, s: number): readonly Spot[] => [
    [b, s, 0],
    [b, s, 1],
  ];
  return [
    ...(bracket ? ends(structure).map(overBracket) : []),
    ...(structure ? ends(bracket).map(overStructure) : []),
    ...(friction ? ends(bracket).flatMap((b) => ends(structure).map((s) => rubbing(b, s))) : []),
  ];
}

/** Modes at one sample, on pipes that were cut once. */
function sampler(
  subject: Subject,
  things: readonly Unstated[],
): (amounts: Amounts) => { readonly modes: readonly SweptMode[]; readonly completeTo: number } | undefined {
  const { installation, layout } = subject;
  const running = ofRole(layout.frame.conditions, 'running');
  if (running === undefined) return () => undefined;
  const { speed, speeds } = installation.pump.motor;
  const margin = installation.limits.frequencyMargin?.value ?? 0;
  const above = (Math.max(speed, speeds?.highest ?? 0) / (2 * Math.PI)) * (1 + margin);
  const refined = refineFrame(layout.frame, running, BEYOND * above);
  return (amounts) => {
    try {
      const frame = heldBy(refined, buildFrameParts(atBounds(installation, things, amounts)).frame);
      const frequencies = vibrationsUpTo(frame, running, above);
      const modes = sweptModes(pumpModes({ layout: { ...layout, frame }, frequencies }));
      return { modes, completeTo: frequencies.completeTo };
    } catch (error) {
      if (error instanceof EngineError) return undefined;
      throw error;
    }
  };
}

/** Pipes are cut for this much more than the highest frequency that matters [-]. */
const BEYOND = 1.3;

const PUMP_POINTS = ['pump suction', 'pump discharge', MOTOR_SEAT] as const;

function sweptModes(modes: readonly PumpMode[]): readonly SweptMode[] {
  return modes.map(({ mode, share, counts }) => {
    const { shape, frequency } = mode;
    const moved = [...PUMP_POINTS, shape[MOTOR_FOOT] === undefined ? MOTOR_SEAT : MOTOR_FOOT].flatMap(
      (point) => shape[point]?.translation ?? [0, 0, 0],
    );
    const size = Math.hypot(...moved) || 1;
    return { frequency, share, counts, motion: moved.map((part) => part / size) };
  });
}

/** Likeness of movements from which on two vibrations are one that was followed [-]. */
const ALIKE = 0.6;

/** How alike pump and motor move in two vibrations: square of the cosine between them [-]. */
function likeness(one: SweptMode, other: SweptMode): number {
  return one.motion.reduce((sum, part, i) => sum + part * (other.motion[i] ?? 0), 0) ** 2;
}

/** Frequencies of the pump's vibrations between samples next to each other, each with the one most like it. */
function spansAlong(path: readonly (SweepSample | undefined)[]): readonly SweptSpan[] {
  return path.slice(1).flatMap((next, index): readonly SweptSpan[] => {
    const before = path[index];
    if (before === undefined || next === undefined) return [];
    const varied = GROUPS.filter((group) => next[group] > 0);
    const others = before.modes.filter(({ counts }) => counts);
    return next.modes
      .filter(({ counts }) => counts)
      .flatMap((mode): readonly SweptSpan[] => {
        const [like] = [...others].sort((a, b) => likeness(mode, b) - likeness(mode, a));
        if (like === undefined || likeness(mode, like) < ALIKE) return [];
        const low = Math.min(mode.frequency, like.frequency);
        return [{ low, high: Math.max(mode.frequency, like.frequency), varied }];
      });
  });
}
