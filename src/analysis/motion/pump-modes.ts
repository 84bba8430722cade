import { bodyShare } from '../../mechanics/frame/recovery/body-share.js';
import type { Mode } from '../../mechanics/modes/frequencies.js';
import { conditionOf } from '../conditions.js';
import type { Subject } from '../subject.js';

/**
 * Part of a vibration's energy of motion in pump and motor from which on it counts as one of the pump. Below it, what
 * shakes the pump moves the vibration less than a tenth as much as one of the pump alone, and the pipe is what moves.
 */
const OF_THE_PUMP = 0.1;

/** A natural vibration and how far it is one of the pump. */
export interface PumpMode {
  readonly mode: Mode;
  /** Place in the list, counted from 1. */
  readonly number: number;
  /** Part of its energy of motion that is in pump and motor [-]. */
  readonly share: number;
  /** Whether it is held against what shakes the pump. */
  readonly counts: boolean;
}

/**
 * The natural vibrations of an installation with the part pump and motor have in each.
 *
 * @param subject - layout with its frame, and frequencies
 * @returns vibrations, lowest first; none where they were not worked out
 * @source dynamics
 */
export function pumpModes(subject: Pick<Subject, 'layout' | 'frequencies'>): readonly PumpMode[] {
  const { frequencies, layout } = subject;
  const running = conditionOf(subject, 'running');
  if (frequencies === undefined || running === undefined) return [];
  return frequencies.modes.map((mode, index) => {
    const share = bodyShare(layout.frame, running, mode, ['pump', 'motor']);
    return { mode, number: index + 1, share, counts: share >= OF_THE_PUMP };
  });
}

/** Something that shakes the pump so many times in each turn of its shaft. */
export interface Excitation {
  readonly name: 'running speed' | 'twice running speed' | 'blade passing';
  readonly timesPerTurn: number;
}

/**
 * What shakes a pump in step with its shaft: unbalance, misalignment, and the blades where their number is given.
 *
 * @param subject - number of blades
 * @returns running speed first
 * @source common-practice
 */
export function excitations(subject: Subject): readonly Excitation[] {
  const { blades } = subject.installation.pump;
  return [
    { name: 'running speed', timesPerTurn: 1 },
    { name: 'twice running speed', timesPerTurn: 2 },
    ...(blades === undefined ? [] : [{ name: 'blade passing' as const, timesPerTurn: blades }]),
  ];
}
