import type { Finding } from '../../checks/finding.js';
import { citationText } from '../../sources/index.js';
import type { ReportContext, View } from '../context.js';
import { nozzleStressQuestions } from '../nozzle-stress-questions.js';
import { placeId } from '../place-id.js';
import { tributaryLoads } from '../tributary-loads.js';
import {
  PLAIN,
  questionOfFinding,
  type WorkedQuestion,
  type WorkedUnit,
  workedCalculation,
} from '../worked-calculation.js';

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
const STATICS = citationText({ source: 'statics', clause: '', confidence: 'computed' });

/**
 * Worked calculations: balance of weight, one support by hand, and the governing place of every check.
 *
 * @param context - results and writer
 * @returns calculations as text
 */
export function calculations(context: ReportContext) {
  const before = [...weightQuestions(context), ...handCheck(context)];
  const all = [
    ...before.map((question) => ({ ...workedCalculation(question, context.write), ratio: '' })),
    ...governing(context),
  ];
  return {
    calculations: all,
    hasCalculations: all.length > 0,
  } satisfies View;
}

function weightQuestions(context: ReportContext): readonly WorkedQuestion[] {
  const { layout, response } = context.subject;
  const { system } = context.write;
  const filled = response.conditions.filled;
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
    source: STATICS,
  };
  const loads = layout.supports.flatMap((support) => {
    const load = filled.supports[support.mark]?.load.force[2];
    return load === undefined ? [] : [{ mark: support.mark, load: -load }];
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
    source: STATICS,
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
      source: STATICS,
    },
  ];
}

/** Of each check, the calculation of the finding nearest its limit or farthest beyond it. */
function governing(context: ReportContext) {
  const checks = [...new Set(context.findings.map((finding) => finding.check))];
  return checks.flatMap((check) => {
    const worst = context.findings
      .filter((finding) => finding.check === check && finding.calculation !== undefined)
      .reduce<Finding | undefined>(
        (best, one) => (best === undefined || weigh(one) > weigh(best) ? one : best),
        undefined,
      );
    if (worst?.calculation === undefined) return [];
    const condition = worst.condition === undefined ? '' : `, ${worst.condition}`;
    const about = {
      id: `calculation-${placeId(check)}`,
      title: `${worst.title}: ${worst.at}${condition}`,
      source: citationText(worst.basis),
      ...(worst.limit !== undefined && worst.ratio !== undefined && { limit: worst.limit }),
    };
    const steps = check === 'nozzle-principal-stress' ? nozzleStressQuestions(worst, context) : [];
    return [...steps, questionOfFinding(worst.calculation, about, context.write)].map((question) => ({
      ...workedCalculation(question, context.write),
      ratio: context.write.ratio(worst.ratio),
    }));
  });
}

function weigh(finding: Finding): number {
  return finding.ratio ?? finding.demand ?? 0;
}
