import { isOf } from '../../checks/all-checks.js';
/** Which calculations a review works out in full, and which of them each finding rests on. */

import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import type { Finding } from '../../judging/finding.js';
import { conditionTitle, inCondition } from '../../model/conditions/condition-roles.js';
import { type Citation, citationText } from '../../sources/index.js';
import type { ReportContext } from '../context.js';
import { placeId } from '../words/place-id.js';
import { nozzleStressQuestions } from './nozzle-stress-questions.js';
import { tributaryLoads } from './tributary-loads.js';
import { PLAIN, questionOfFinding, type WorkedQuestion, type WorkedUnit } from './worked-calculation.js';

export interface PlannedCalculation {
  readonly question: WorkedQuestion;
  readonly citation: Citation;
  /** The finding whose number it gives; none for sums of weight. */
  readonly finding?: Finding;
}

/** Parts a hand check may have and still be a hand check. */
const MOST_PARTS = 10;
/** Supports a printed sum may have and still fit a line. */
const MOST_SUPPORTS = 24;

const FORCE: Readonly<Record<'us' | 'si', WorkedUnit>> = {
  us: { dimension: 'force', unit: 'lb', label: 'lb' },
  si: { dimension: 'force', unit: 'N', label: 'N' },
};
const MASS: Readonly<Record<'us' | 'si', WorkedUnit>> = {
  us: { dimension: 'mass', unit: 'lb', label: 'lb' },
  si: { dimension: 'mass', unit: 'kg', label: 'kg' },
};
const STATICS: Citation = { source: 'statics', clause: '', confidence: 'computed' };
const STATICS_TEXT = citationText(STATICS);

/** Asked for by every section that points at a calculation. */
const known = new WeakMap<ReportContext, readonly PlannedCalculation[]>();

/**
 * Calculations in printing order: weight and its balance, one support by hand, the governing place of every check.
 *
 * @param context - results and writer
 * @returns calculations, none of them twice; their number is their place, counted from 1
 */
export function calculationPlan(context: ReportContext): readonly PlannedCalculation[] {
  const found = known.get(context);
  if (found) return found;
  const before = [...weightQuestions(context), ...handCheck(context)];
  const all = [...before.map((question) => ({ question, citation: STATICS })), ...governing(context)];
  const plan = all.filter(
    (one, index) => all.findIndex((other) => isSame(other.question, one.question)) === index,
  );
  known.set(context, plan);
  return plan;
}

/** Whether two calculations put the same numbers into the same formula. */
function isSame(a: WorkedQuestion, b: WorkedQuestion): boolean {
  if (a.formula !== b.formula || a.values.length !== b.values.length) return false;
  return a.values.every((value, i) => value.value === b.values[i]?.value);
}

/**
 * The printed calculation a finding rests on: its own, or that of the governing place of the same check.
 *
 * @param finding - finding
 * @param context - results and writer
 * @returns number and id, and whether it is the finding's own; nothing where none is printed
 */
export function calculationOf(
  finding: Finding,
  context: ReportContext,
): { readonly mark: string; readonly to: string; readonly isOwn: boolean } | undefined {
  const plan = calculationPlan(context);
  const places = plan.map((one, index) => ({ ...one, index }));
  const found =
    places.filter((one) => one.finding === finding).at(-1) ??
    places.filter((one) => one.finding !== undefined && one.finding.check === finding.check).at(-1);
  if (found === undefined || finding.demand === undefined) return undefined;
  return { mark: String(found.index + 1), to: found.question.id, isOwn: found.finding === finding };
}

function weightQuestions(context: ReportContext): readonly WorkedQuestion[] {
  const { layout, response } = context.subject;
  const { system } = context.write;
  const filled = inCondition(response.conditions, 'filled');
  if (filled === undefined || layout.supports.length > MOST_SUPPORTS) return [];
  const sum = (part: 'dry' | 'contents' | 'covering'): number =>
    layout.weights.reduce((all, row) => all + row[part], 0);
  const unit = MASS[system];
  const total: WorkedQuestion = {
    id: 'total-weight',
    title: 'Weight of everything, filled',
    symbol: 'W',
    // A pound of mass weighs a pound; a kilogram weighs 9.80665 N.
    formula: system === 'us' ? 'm1 + m2 + m3' : '9.80665 * (m1 + m2 + m3)',
    values: [
      { symbol: 'm1', value: sum('dry'), unit, meaning: 'metal and equipment, dry' },
      { symbol: 'm2', value: sum('contents'), unit, meaning: 'contents' },
      { symbol: 'm3', value: sum('covering'), unit, meaning: 'insulation and jacket' },
    ],
    unit: FORCE[system],
    source: STATICS_TEXT,
  };
  const loads = layout.supports.flatMap((support) => {
    const load = supportLoadIn(filled, support.mark)?.downward;
    return load === undefined ? [] : [{ mark: support.mark, load }];
  });
  const sumOfLoads: WorkedQuestion = {
    id: 'sum-of-support-loads',
    title: 'Sum of all support loads, filled',
    symbol: 'R',
    formula: loads.map((_load, index) => `R${index + 1}`).join(' + '),
    values: loads.map(({ mark, load }, index) => ({
      symbol: `R${index + 1}`,
      value: load,
      unit: FORCE[system],
      meaning: `load on ${mark}, down`,
    })),
    unit: FORCE[system],
    source: STATICS_TEXT,
  };
  return loads.length === 0 ? [total] : [total, sumOfLoads];
}

function handCheck(context: ReportContext): readonly WorkedQuestion[] {
  const check = tributaryLoads(context.subject).find(
    (one) => one.parts.length > 1 && one.parts.length <= MOST_PARTS,
  );
  if (check === undefined) return [];
  const unit = FORCE[context.write.system];
  return [
    {
      id: `hand-check-${placeId(check.mark)}`,
      title: `Load on ${check.mark} by tributary lengths, filled`,
      symbol: 'R',
      formula: check.parts.map((_part, index) => `w${index + 1} * s${index + 1}`).join(' + '),
      values: check.parts.flatMap((part, index) => [
        { symbol: `w${index + 1}`, value: part.weight, unit, meaning: `weight of ${part.part}, filled` },
        { symbol: `s${index + 1}`, value: part.share, unit: PLAIN, meaning: `its share on ${check.mark}` },
      ]),
      unit,
      source: STATICS_TEXT,
    },
  ];
}

/** Of each check, the calculation of the finding nearest its limit or farthest beyond it. */
function governing(context: ReportContext): readonly PlannedCalculation[] {
  const checks = [...new Set(context.findings.map((finding) => finding.check))];
  return checks.flatMap((check) => {
    const worst = context.findings
      .filter((finding) => finding.check === check && finding.calculation !== undefined)
      .reduce<Finding | undefined>(
        (best, one) => (best === undefined || weigh(one) > weigh(best) ? one : best),
        undefined,
      );
    if (worst?.calculation === undefined) return [];
    const condition = worst.condition === undefined ? '' : `, ${conditionTitle(worst.condition)}`;
    const about = {
      id: `calculation-${placeId(check)}`,
      title: `${worst.title}: ${worst.at}${condition}`,
      source: citationText(worst.basis),
      ...(worst.limit !== undefined && worst.ratio !== undefined && { limit: worst.limit }),
    };
    const steps = isOf({ check }, 'nozzle-principal-stress') ? nozzleStressQuestions(worst, context) : [];
    return [...steps, questionOfFinding(worst.calculation, about, context.write)].map((question) => ({
      question,
      citation: worst.basis,
      finding: worst,
    }));
  });
}

function weigh(finding: Finding): number {
  return finding.ratio ?? finding.demand ?? 0;
}
