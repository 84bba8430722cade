import type { Frame, FrameCondition } from '../../model/frame/frame.js';
import { refineFrame } from '../frame/refine-frame.js';
import { type Frequencies, type SmallMovements, smallMovements } from './frequencies.js';

/** How many are found at least, and at most where more lie near an exciting frequency [-]. */
const FEWEST = 10;
const MOST = 40;
/** How often pipes are cut finer at most [-]. */
const ROUNDS = 4;

/** Vibrations of an installation, and the small movements they belong to. */
export interface FoundVibrations {
  readonly frequencies: Frequencies;
  readonly movements: SmallMovements;
}

/**
 * The lowest ten natural frequencies, and more until one lies above a frequency that matters, so that whoever asks for
 * the nearest to it has seen those on both sides. Long pipes are cut into pieces short enough for it.
 *
 * @param frame - the frame
 * @param condition - contents, covering and supports, for example running
 * @param above - frequency that matters [Hz]
 * @returns vibrations of the cut frame; its further points are named after the pipe they stand in
 * @throws EngineError as `naturalFrequencies`
 * @source beam-theory
 */
export function findVibrations(frame: Frame, condition: FrameCondition, above: number): FoundVibrations {
  let reach = above;
  for (let round = 1; ; round++) {
    const movements = smallMovements(refineFrame(frame, condition, reach), condition);
    const count = Math.min(MOST, Math.max(FEWEST, movements.countBelow(above) + 1));
    const frequencies = movements.vibrations(count);
    const tenth = frequencies.modes[FEWEST - 1]?.frequency ?? 2 * reach;
    // The ten are as fine as the pipes are cut for them.
    if (tenth <= reach || round === ROUNDS) return { frequencies, movements };
    reach = tenth;
  }
}

/**
 * The natural frequencies up to one above a frequency that matters, of a frame whose pipes are cut already: for the same
 * line again and again with other supports.
 *
 * @param refined - frame with pipes cut for that frequency
 * @param condition - contents, covering and supports
 * @param above - frequency that matters [Hz]
 * @returns frequencies [Hz]
 * @throws EngineError as `naturalFrequencies`
 * @source beam-theory
 */
export function vibrationsUpTo(refined: Frame, condition: FrameCondition, above: number): Frequencies {
  const movements = smallMovements(refined, condition);
  return movements.vibrations(Math.min(MOST, movements.countBelow(above) + 1));
}
