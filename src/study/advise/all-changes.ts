import type { OpenedFile } from '../../input/open-for-trials.js';
import type { Change, ChangeKind } from './change.js';
import { legChanges } from './leg-changes.js';
import { guideChanges, hangerChanges, standChanges } from './new-supports.js';
import { roomForSupports } from './room-for-supports.js';
import type { Situation } from './situation.js';
import { rodChanges, springChanges, springForRodChanges } from './spring-changes.js';
import { stretchesOf } from './stretches.js';
import { heightChanges, moveChanges, type Workshop } from './support-changes.js';
import { unitsOfFile } from './units-of-file.js';

/** What must stay as it is. */
export interface Kept {
  /** Marks of supports. */
  readonly marks: readonly string[];
  /** Kinds of change that are not wanted. */
  readonly kinds: readonly ChangeKind[];
}

/**
 * Every change that can be made from a situation.
 *
 * @param situation - the installation and its loads
 * @param opened - the file it was read from
 * @param kept - what must stay as it is
 * @param extra - further distances to move supports and legs by [m]
 * @returns changes, always in the same order
 */
export function allChanges(
  situation: Situation,
  opened: OpenedFile,
  kept: Kept,
  extra: readonly number[] = [],
): readonly Change[] {
  const units = unitsOfFile(situation.installation.review.units);
  const workshop: Workshop = {
    situation,
    stretches: stretchesOf(situation),
    room: roomForSupports(situation),
    units: { ...units, moves: [...units.moves, ...extra], legs: [...units.legs, ...extra] },
  };
  const wanted = (kind: ChangeKind) => !kept.kinds.includes(kind);
  const changes = [
    ...heightChanges(workshop),
    ...springChanges(workshop),
    ...rodChanges(workshop),
    ...moveChanges(workshop),
    ...guideChanges(workshop),
    ...hangerChanges(workshop),
    ...standChanges(workshop),
    ...springForRodChanges(workshop),
    ...(wanted('lengthen-leg') ? legChanges(workshop, opened) : []),
  ];
  return changes.filter(({ kind, target }) => wanted(kind) && !kept.marks.includes(target));
}
