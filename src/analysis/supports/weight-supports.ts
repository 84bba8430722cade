import type { FrameSupport } from '../../model/frame/frame.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import type { Subject } from '../subject.js';

/** A direction counts as upright from this vertical share on [-]. */
const UPRIGHT = 0.5;

/**
 * The frame's own record of a placed support.
 *
 * @param subject - layout with its frame
 * @param support - placed support
 * @returns the support of the frame with the same mark, or undefined
 */
export function frameSupport(subject: Subject, support: PlacedSupport): FrameSupport | undefined {
  return subject.layout.frame.supports.find((candidate) => candidate.name === support.mark);
}

/**
 * Supports of a line that carry weight: whatever holds its point upright, rigidly or by a spring. Guides and stops
 * that hold sideways only do not count, nor does the pump.
 *
 * @param subject - layout with its frame
 * @param line - name of the line
 * @returns supports by growing distance from the pump
 */
export function weightSupports(subject: Subject, line: string): readonly PlacedSupport[] {
  return subject.layout.supports
    .filter((support) => support.line === line && carriesWeight(frameSupport(subject, support)))
    .sort((a, b) => a.station - b.station);
}

function carriesWeight(support: FrameSupport | undefined): boolean {
  return (support?.restraints ?? []).some(
    ({ acts, direction, stiffness }) =>
      acts === 'translation' && Math.abs(direction[2]) > UPRIGHT && stiffness > 0,
  );
}
