/** The supports of a review as rows of numbers, to order from: every support of the file, with its loads. */

import { operatingOnly, solvedOf } from '../../analysis/conditions.js';
import { analysisOf } from '../../analysis/subject.js';
import { type LoadDirection, supportLoadIn } from '../../analysis/supports/support-loads.js';
import type { UnitSystem } from '../../input/installation.js';
import { conditionTitle, type RoleKind } from '../../model/conditions/condition-roles.js';
import type { PlacedSupport } from '../../model/layout/layout.js';
import { loadNumber, printUnits, unitFactor } from '../../units/index.js';
import type { ReviewedSubject } from '../summary.js';
import { findingSentence } from '../words/finding-row.js';
import { carriesWeight, supportWord } from '../words/support-word.js';

/** One support, end of a line or base of the pump. Numbers are in the units of `scheduleUnits`; what is not known or does not apply is undefined. */
export interface ScheduleRow {
  readonly pump: string;
  readonly mark: string;
  readonly kind: string;
  /** False for the end of a line and the base of the pump. */
  readonly isBought: boolean;
  readonly rods: number | undefined;
  /** Size of the rod as the trade calls it: `5/8`. */
  readonly rod: string | undefined;
  readonly rodLength: number | undefined;
  /** Load with the line empty, filled, and under test; down positive. */
  readonly empty: number | undefined;
  readonly filled: number | undefined;
  readonly test: number | undefined;
  /** Largest loads upon the structure of all conditions that come to pass, each with its condition. */
  readonly down: number | undefined;
  readonly downIn: string | undefined;
  readonly up: number | undefined;
  readonly upIn: string | undefined;
  readonly sideways: number | undefined;
  readonly sidewaysIn: string | undefined;
  /** Of a hanger the pull along its rods. */
  readonly resultant: number | undefined;
  readonly resultantIn: string | undefined;
  /** Direction of the largest of all. */
  readonly governs: LoadDirection | undefined;
  readonly rate: number | undefined;
  readonly set: number | undefined;
  readonly least: number | undefined;
  readonly most: number | undefined;
  /** How far the pipe moves up and down there in service, from the highest to the lowest. */
  readonly travel: number | undefined;
  /** Rating of clamp and attachment, where it is given. */
  readonly attachment: number | undefined;
  readonly remarks: string;
}

/** Units of the numbers of a schedule, as they stand in its head. */
export interface ScheduleUnits {
  readonly force: string;
  readonly rate: string;
  readonly length: string;
  readonly travel: string;
}

const UNITS = {
  us: { force: 'lb', rate: 'lb/in', length: 'ft', travel: 'in' },
  si: { force: 'kN', rate: 'N/mm', length: 'm', travel: 'mm' },
} as const satisfies Readonly<Record<UnitSystem, ScheduleUnits>>;

/**
 * Units of a schedule.
 *
 * @param units - system
 * @returns labels for the head
 */
export function scheduleUnits(units: UnitSystem): ScheduleUnits {
  return UNITS[units];
}

/**
 * The schedule of one review: what is bought and hung, and the pump's own base and the ends of the lines, upon which
 * loads come as well.
 *
 * @param subject - installation, results and findings
 * @param units - system the numbers are in
 * @returns one row a support, in the order of the file
 */
export function supportSchedule(subject: ReviewedSubject, units: UnitSystem): readonly ScheduleRow[] {
  const { layout, installation, findings } = subject;
  return layout.supports.map((support) => ({
    pump: installation.pump.mark,
    ...partOf(support, units),
    ...loadsOf(support, subject, units),
    remarks: findings
      .filter(
        ({ verdict, comparison, at }) => verdict === 'exceeds' && !comparison && namesMark(at, support.mark),
      )
      .map((finding) => `${finding.title}: ${findingSentence(finding)?.wanted ?? 'exceeds its limit'}`)
      .join('; '),
  }));
}

/** Whether a place of a finding is the support, or the support in some state: `H1`, `H1 slack`, not `H12`. */
function namesMark(at: string, mark: string): boolean {
  return at === mark || at.startsWith(`${mark} `) || at.startsWith(`${mark},`);
}

function partOf(support: PlacedSupport, units: UnitSystem) {
  const { rods, spring } = support.part ?? {};
  const number = converter(units);
  return {
    mark: support.mark,
    isBought: support.part !== undefined,
    kind: supportWord(support),
    rods: rods?.count,
    rod: rods?.size,
    rodLength: number(rods?.length, 'length', 0.01),
    rate: number(spring?.rate, 'rate', 1),
    set: number(spring?.load.value, 'force'),
    least: number(spring?.minimum, 'force'),
    most: number(spring?.maximum, 'force'),
    attachment: number(rods?.attachmentRating?.value, 'force'),
  };
}

function loadsOf(support: PlacedSupport, subject: ReviewedSubject, units: UnitSystem) {
  const { mark, point } = support;
  const { response } = subject;
  const load = (value: number | undefined): number | undefined =>
    value === undefined || !Number.isFinite(value) ? undefined : loadNumber(value, units);
  const carries = carriesWeight(support);
  const net = (kind: RoleKind): number | undefined => {
    const solved = solvedOf(subject, kind)?.solved;
    return carries ? load(supportLoadIn(solved, mark)?.downward) : undefined;
  };
  const own = analysisOf(subject).supportLoads.find(({ at }) => at === mark);
  const { down, up, sideways, resultant } = own?.largest ?? {};
  const heights = operatingOnly(subject).flatMap(
    ({ name }) => response.conditions[name]?.movements[point]?.translation[2] ?? [],
  );
  return {
    empty: net('empty'),
    filled: net('filled'),
    test: net('test'),
    down: load(down?.load),
    downIn: down && conditionTitle(down.condition),
    up: load(up?.load),
    upIn: up && conditionTitle(up.condition),
    sideways: load(sideways?.load),
    sidewaysIn: sideways && conditionTitle(sideways.condition),
    resultant: load(resultant?.load),
    resultantIn: resultant && conditionTitle(resultant.condition),
    governs: own?.governs,
    travel:
      heights.length === 0
        ? undefined
        : converter(units)(Math.max(...heights) - Math.min(...heights), 'travel', 0.01),
  };
}

const DIMENSION = { force: 'force', rate: 'stiffness', length: 'length', travel: 'length' } as const;
/** Digits worth printing: a pound, ten newtons. */
const STEP = { us: 1, si: 0.01 } as const;

/** From SI to the units of the schedule, rounded to what is worth saying. */
function converter(units: UnitSystem) {
  return (
    value: number | undefined,
    what: keyof ScheduleUnits,
    step: number = STEP[units],
  ): number | undefined => {
    if (value === undefined || !Number.isFinite(value)) return undefined;
    const known = unitFactor(UNITS[units][what], DIMENSION[what]);
    if (known === undefined)
      throw new RangeError(`${UNITS[units][what]} is no unit of ${printUnits[units][DIMENSION[what]].unit}`);
    const steps = Math.round(value / known / step);
    // Divided rather than multiplied: 7 × 0.01 is not 0.07.
    return step < 1 ? steps / Math.round(1 / step) + 0 : steps * step + 0;
  };
}
