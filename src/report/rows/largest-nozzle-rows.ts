import { analysisOf, type Subject } from '../../analysis/subject.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import { NO_NUMBER, type Writer } from '../writer.js';

/** The largest loads of the pipe on one nozzle as finished text; a dash where there are none. */
export interface LargestNozzleRow {
  readonly nozzle: PlacedNozzle['which'];
  /** Largest resultant force with its unit, its part along the nozzle, and the condition: `426 lb`, `12 lb`, `cold`. */
  readonly force: string;
  readonly axial: string;
  readonly forceIn: string;
  /** Largest resultant moment about the centre of the flange face with its unit, and the condition. */
  readonly moment: string;
  readonly momentIn: string;
}

/**
 * The largest resultant force and moment of the pipe on both nozzles, of all conditions that come to pass with the pump
 * in its place. They need not come from one condition.
 *
 * @param subject - what was solved
 * @param write - writer
 * @returns rows of text, suction first
 */
export function largestNozzleRows(subject: Subject, write: Writer): readonly LargestNozzleRow[] {
  return analysisOf(subject).largestNozzleLoads.map(({ nozzle, force, moment }) => ({
    nozzle,
    force: write.load(force?.load),
    axial: write.load(force?.axial),
    forceIn: titleOf(force?.condition),
    moment: write.quantity(moment?.load, 'moment'),
    momentIn: titleOf(moment?.condition),
  }));
}

const titleOf = (condition: string | undefined): string =>
  condition === undefined ? NO_NUMBER : conditionTitle(condition);
