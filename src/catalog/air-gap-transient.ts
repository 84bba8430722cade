import type { Citation } from '../sources/index.js';

/** Torque between stator and rotor in the first cycles on full voltage, over that of the rating [-]. */
export interface AirGapTransient {
  /** Highest peak of the machines worked out, lowest to highest of them. */
  readonly peak: readonly [number, number];
  /** How far it reverses, lowest to highest. */
  readonly reversed: readonly [number, number];
  /** Cycles of the supply until the pulsation is below a quarter of the rating's torque. */
  readonly cycles: readonly [number, number];
  /** Frequency of a twist above which the pieces of the set follow the pulsation, for a supply of 60 Hz [Hz]. */
  readonly followedAbove: number;
  /** That it happens: read. */
  readonly named: Citation;
  /** How large: worked out from published machine data. */
  readonly sized: Citation;
}

/**
 * Order of magnitude of the electrical transient of a start across the line. No limit and no bound of another machine: it
 * comes from the two-axis equations of four published machine records (10, 20, 50 and 100 hp, 4 poles, 460 V, 60 Hz) on
 * a stiff supply, water as the load, a test works it out again. Saturation and a deep-bar rotor are not in them.
 *
 * @source start-transient-paper, motor-records
 */
export const airGapTransient: AirGapTransient = {
  peak: [3.2, 3.9],
  reversed: [1.8, 2.5],
  cycles: [6, 14],
  followedAbove: 20,
  named: {
    source: 'start-transient-paper',
    clause: 'abstract: considerable pulsating torque at once; shafts of fans and pumps have sheared',
    confidence: 'read',
  },
  sized: {
    source: 'motor-records',
    clause: 'two-axis equations on the records of 10, 20, 50 and 100 hp',
    confidence: 'computed',
  },
};
