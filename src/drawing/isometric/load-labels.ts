/** Words for the picture: what each support and each nozzle carries, and which parts exceed something. */

import type { UnitSystem } from '../../input/installation.js';
import type { Finding } from '../../judging/finding.js';
import type { Response, Vec3 } from '../../mechanics/frame/response.js';
import { conditionTitle, isHypothetical } from '../../model/conditions/condition-roles.js';
import type { Layout, PlacedNozzle, PlacedSupport } from '../../model/layout/layout.js';
import { dot } from '../../model/vector.js';
import { formatQuantity } from '../../units/index.js';
import type { LabelRow } from '../labels/label.js';

/** What the words are made from. */
export interface LoadSubject {
  readonly layout: Layout;
  readonly response: Response;
  readonly findings: readonly Finding[];
  readonly units: UnitSystem;
  /** Only this condition; without it the largest of all. */
  readonly condition?: string;
}

/** Sizes of letters [1/72 in]. */
export const MARK_SIZE = 8.5;
export const NOTE_SIZE = 7.2;

/** Loads nearer than this to each other are the same. */
const SAME_SHARE = 1e-6;
/** A vertical load under this share of the whole load is not what the support is for. */
const SIDEWAYS = 0.1;

interface Loaded {
  readonly condition: string;
  readonly force: Vec3;
}

/** Solved conditions in question, in the order of the frame; slack hangers are told in a table of their own. */
export function conditionNames(subject: LoadSubject): readonly string[] {
  if (subject.condition !== undefined)
    return subject.response.conditions[subject.condition] === undefined ? [] : [subject.condition];
  return subject.layout.frame.conditions
    .filter((condition) => !isHypothetical(condition))
    .map(({ name }) => name)
    .filter((name) => subject.response.conditions[name] !== undefined);
}

function largestBy(loads: readonly Loaded[], measure: (force: Vec3) => number): Loaded | undefined {
  return loads.reduce<Loaded | undefined>(
    (best, next) =>
      best === undefined || measure(next.force) > measure(best.force) * (1 + SAME_SHARE) ? next : best,
    undefined,
  );
}

/** Whether some finding at a place exceeds its limit; comparisons do not count. */
export function exceedsAt(findings: readonly Finding[], at: string): boolean {
  return findings.some((f) => f.at === at && f.verdict === 'exceeds' && !f.comparison);
}

/**
 * Rows of a support's label: its mark, and its largest vertical load with the condition; a support that holds
 * sideways shows its largest sideways load.
 *
 * @param support - the support
 * @param subject - response, findings and units
 * @returns rows, the mark first
 */
export function supportRows(support: PlacedSupport, subject: LoadSubject): readonly LabelRow[] {
  const exceeds = exceedsAt(subject.findings, support.mark);
  const ink = exceeds ? 'accent' : 'black';
  const mark: LabelRow = {
    text: exceeds ? `${support.mark} exceeds` : support.mark,
    size: MARK_SIZE,
    weight: 'bold',
    ink,
  };
  const names = conditionNames(subject);
  const loads = names.flatMap((condition): readonly Loaded[] => {
    const load = subject.response.conditions[condition]?.supports[support.mark]?.load;
    return load === undefined || !load.force.every(Number.isFinite) ? [] : [{ condition, force: load.force }];
  });
  const lifted = names.find((name) =>
    subject.response.conditions[name]?.supports[support.mark]?.states.includes('lifted'),
  );
  const note = (text: string, arrow?: LabelRow['arrow']): LabelRow => ({
    text,
    size: NOTE_SIZE,
    weight: 'regular',
    ink,
    ...(arrow && { arrow }),
  });
  const upright = largestBy(loads, (f) => Math.abs(f[2]));
  const whole = largestBy(loads, (f) => Math.hypot(...f));
  if (upright === undefined || whole === undefined) return [mark, note('no load worked out')];
  const sideways = Math.abs(upright.force[2]) < SIDEWAYS * Math.hypot(...whole.force);
  const shown = sideways ? whole : upright;
  const size = sideways ? Math.hypot(...whole.force) : Math.abs(upright.force[2]);
  const arrow = sideways ? 'across' : upright.force[2] > 0 ? 'up' : 'down';
  const rows = [
    mark,
    note(
      `${formatQuantity(size, 'force', subject.units)} ${conditionTitle(shown.condition)}`,
      size < 1e-6 ? undefined : arrow,
    ),
  ];
  return lifted === undefined ? rows : [...rows, note(`lifts off: ${conditionTitle(lifted)}`)];
}

/**
 * Rows of a nozzle's label: largest resultant force with its axial share, and largest resultant moment.
 *
 * @param nozzle - the nozzle
 * @param subject - response, findings and units
 * @param wrenches - nozzle loads by condition, as the pipe acts on the pump
 * @returns rows, the name first
 */
export function nozzleRows(
  nozzle: PlacedNozzle,
  subject: LoadSubject,
  wrenches: Readonly<Record<string, NozzleLoad>>,
): readonly LabelRow[] {
  const name = `${nozzle.which} nozzle`;
  const exceeds = exceedsAt(subject.findings, name);
  const ink = exceeds ? 'accent' : 'black';
  const rows: LabelRow[] = [
    { text: exceeds ? `${name} exceeds` : name, size: MARK_SIZE - 0.5, weight: 'bold', ink },
  ];
  const note = (text: string): void => {
    rows.push({ text, size: NOTE_SIZE, weight: 'regular', ink });
  };
  const loads = conditionNames(subject).flatMap((condition) => {
    const load = wrenches[condition];
    return load === undefined ? [] : [{ condition, ...load }];
  });
  const force = largestBy(loads, (f) => Math.hypot(...f));
  const moment = largestBy(
    loads.map((l) => ({ condition: l.condition, force: l.moment })),
    (m) => Math.hypot(...m),
  );
  if (force === undefined || moment === undefined)
    return [...rows, { text: 'no load worked out', size: NOTE_SIZE, weight: 'regular', ink }];
  const axial = Math.abs(dot(force.force, nozzle.axis));
  note(
    `force ${formatQuantity(Math.hypot(...force.force), 'force', subject.units)} ${conditionTitle(force.condition)}`,
  );
  note(`(axial ${formatQuantity(axial, 'force', subject.units)})`);
  note(
    `moment ${formatQuantity(Math.hypot(...moment.force), 'moment', subject.units)} ${conditionTitle(moment.condition)}`,
  );
  return rows;
}

/** A nozzle load [N, N·m]. */
export interface NozzleLoad {
  readonly force: Vec3;
  readonly moment: Vec3;
}
