/** Words for the picture: what each support and each nozzle carries, and which parts exceed something. */

import { type SolvedCondition, solvedConditions } from '../../analysis/conditions.js';
import { largestNozzleLoads } from '../../analysis/nozzles/largest-nozzle-loads.js';
import { analysisOf, type Subject } from '../../analysis/subject.js';
import { largestLoadsOn, supportLoadIn } from '../../analysis/supports/support-loads.js';
import type { UnitSystem } from '../../input/installation.js';
import type { Finding } from '../../judging/finding.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import type { PlacedNozzle, PlacedSupport } from '../../model/layout/layout.js';
import { formatLoad, formatQuantity } from '../../units/index.js';
import type { LabelRow } from '../labels/label.js';

/** What the words are made from. */
export interface LoadSubject extends Subject {
  readonly findings: readonly Finding[];
  readonly units: UnitSystem;
  /** Only this condition; without it the largest of all. */
  readonly condition?: string;
}

/** Sizes of letters [1/72 in]. */
export const MARK_SIZE = 8.5;
export const NOTE_SIZE = 7.2;

/** Whether some finding at a place exceeds its limit; comparisons do not count. */
export function exceedsAt(findings: readonly Finding[], at: string): boolean {
  return findings.some((f) => f.at === at && f.verdict === 'exceeds' && !f.comparison);
}

/** The one condition asked for; nothing where it is the largest of all. */
function askedFor(subject: LoadSubject): readonly SolvedCondition[] | undefined {
  const { condition } = subject;
  return condition === undefined
    ? undefined
    : solvedConditions(subject).filter(({ name }) => name === condition);
}

const ARROWS = { down: 'down', up: 'up', sideways: 'across' } as const;

/**
 * Rows of a support's label: its mark, and its largest load in the direction that governs, with the condition.
 *
 * @param support - the support
 * @param subject - response, findings and units
 * @returns rows, the mark first
 */
export function supportRows({ mark }: PlacedSupport, subject: LoadSubject): readonly LabelRow[] {
  const exceeds = exceedsAt(subject.findings, mark);
  const ink = exceeds ? 'accent' : 'black';
  const title: LabelRow = {
    text: exceeds ? `${mark} exceeds` : mark,
    size: MARK_SIZE,
    weight: 'bold',
    ink,
  };
  const asked = askedFor(subject);
  const conditions = asked ?? analysisOf(subject).conditions;
  const own =
    asked === undefined
      ? analysisOf(subject).supportLoads.find(({ at }) => at === mark)
      : largestLoadsOn(mark, asked);
  const loads = conditions.flatMap(({ solved }) => supportLoadIn(solved, mark) ?? []);
  const lifted = loads.find(({ isLifted }) => isLifted);
  const note = (text: string, arrow?: LabelRow['arrow']): LabelRow => ({
    text,
    size: NOTE_SIZE,
    weight: 'regular',
    ink,
    ...(arrow && { arrow }),
  });
  if (!loads.some(({ resultant }) => Number.isFinite(resultant))) return [title, note('no load worked out')];
  const { governs } = own ?? {};
  const most = governs && own?.largest[governs];
  const row =
    governs === undefined || most === undefined
      ? note('carries nothing')
      : note(`${formatLoad(most.load, subject.units)} ${conditionTitle(most.condition)}`, ARROWS[governs]);
  return lifted === undefined
    ? [title, row]
    : [title, row, note(`lifts off: ${conditionTitle(lifted.condition)}`)];
}

/**
 * Rows of a nozzle's label: largest resultant force with its axial share, and largest resultant moment.
 *
 * @param nozzle - the nozzle
 * @param subject - response, findings and units
 * @returns rows, the name first
 */
export function nozzleRows(nozzle: PlacedNozzle, subject: LoadSubject): readonly LabelRow[] {
  const name = `${nozzle.which} nozzle`;
  const exceeds = exceedsAt(subject.findings, name);
  const ink = exceeds ? 'accent' : 'black';
  const note = (text: string): LabelRow => ({ text, size: NOTE_SIZE, weight: 'regular', ink });
  const title: LabelRow = {
    text: exceeds ? `${name} exceeds` : name,
    size: MARK_SIZE - 0.5,
    weight: 'bold',
    ink,
  };
  const asked = askedFor(subject);
  const { nozzleLoads, largestNozzleLoads: all } = analysisOf(subject);
  const largest = asked === undefined ? all : largestNozzleLoads(nozzleLoads, asked);
  const { force, moment } = largest.find((each) => each.nozzle === nozzle.which) ?? {};
  if (force === undefined || moment === undefined) return [title, note('no load worked out')];
  return [
    title,
    note(`force ${formatLoad(force.load, subject.units)} ${conditionTitle(force.condition)}`),
    note(`(axial ${formatLoad(force.axial, subject.units)})`),
    note(
      `moment ${formatQuantity(moment.load, 'moment', subject.units)} ${conditionTitle(moment.condition)}`,
    ),
  ];
}
