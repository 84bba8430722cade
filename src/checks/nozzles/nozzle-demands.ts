import { withPumpInPlace } from '../../analysis/conditions.js';
import { type NozzleComponent, nozzleComponents } from '../../analysis/nozzles/nozzle-components.js';
import type { NozzleLimits } from '../../analysis/nozzles/nozzle-limits.js';
import {
  type NozzleAxisLoads,
  type NozzleLoadRow,
  nozzleLoadRows,
} from '../../analysis/nozzles/nozzle-load-rows.js';
import type { Subject } from '../../analysis/subject.js';
import type { IssueCode } from '../../issues/issue.js';
import type { Calculation } from '../../judging/finding.js';
import type { PlacedNozzle } from '../../model/layout/layout.js';
import type { Demand } from '../define-check.js';

/**
 * Load rows of one nozzle in the conditions that are judged: those that come to pass with the whole pump in place.
 *
 * @param nozzle - the nozzle
 * @param subject - layout and response
 * @returns rows in the order of the conditions
 */
export function rowsOf(nozzle: PlacedNozzle, subject: Subject): readonly NozzleLoadRow[] {
  const judged = new Set(withPumpInPlace(subject).map(({ name }) => name));
  return nozzleLoadRows(subject).filter((row) => row.nozzle === nozzle.which && judged.has(row.condition));
}

/**
 * Every limited component of a nozzle's loads in every condition.
 *
 * @param nozzle - the nozzle
 * @param limits - what is allowed; components without a limit are left out
 * @param subject - layout and response
 * @returns one demand per condition and component
 */
export function nozzleDemands(
  nozzle: PlacedNozzle,
  limits: NozzleLimits,
  subject: Subject,
): readonly Demand[] {
  return rowsOf(nozzle, subject).flatMap((row) => rowDemands(row, limits, subject));
}

/**
 * Every limited component of a nozzle's loads in one condition.
 *
 * @param row - loads of one nozzle in one condition
 * @param limits - what is allowed; components without a limit are left out
 * @param subject - for the casing
 * @returns one demand per component
 */
export function rowDemands(row: NozzleLoadRow, limits: NozzleLimits, subject: Subject): readonly Demand[] {
  const casing = subject.installation.pump.casing.material;
  const limited = nozzleComponents.filter(({ key }) => limits.allowance[key] !== undefined);
  return limited.map(({ key, label, unit }): Demand => {
    const calculation = resultant(key, row.own);
    return {
      kind: 'compared',
      condition: row.condition,
      label,
      unit,
      demand: Math.abs(row.own[key]),
      limit: limits.allowance[key],
      basis: limits.basis,
      data: { component: label, casing, nozzle: row.nozzle },
      ...(calculation && { calculation }),
    };
  });
}

/**
 * The one demand of a nozzle that has loads and nothing to compare them with: the largest resultant force.
 *
 * @param nozzle - the nozzle
 * @param subject - layout and response
 * @param missing - code of the reason
 * @returns one demand without a limit; none where there are no loads
 */
export function largestLoad(nozzle: PlacedNozzle, subject: Subject, missing: IssueCode): readonly Demand[] {
  const [largest] = [...rowsOf(nozzle, subject)].sort((a, b) => b.own.resultantForce - a.own.resultantForce);
  if (largest === undefined) return [];
  const { condition, own } = largest;
  const calculation = resultant('resultantForce', own);
  return [
    {
      kind: 'compared',
      condition,
      label: 'resultant force',
      unit: 'N',
      demand: own.resultantForce,
      limit: undefined,
      missing,
      data: { nozzle: nozzle.which, size: nozzle.nps, ...own },
      ...(calculation && { calculation }),
    },
  ];
}

function resultant(key: NozzleComponent['key'], own: NozzleAxisLoads): Calculation | undefined {
  const three = (
    symbol: 'F' | 'M',
    unit: 'N' | 'N·m',
    values: readonly (readonly [string, number, string])[],
  ) => ({
    symbol: `${symbol}R`,
    formula: `sqrt(${symbol}A^2 + ${symbol}V^2 + ${symbol}C^2)`,
    unit,
    values: values.map(([letter, value, meaning]) => ({
      symbol: `${symbol}${letter}`,
      value: Math.abs(value),
      unit,
      meaning,
    })),
  });
  if (key === 'resultantForce') {
    return three('F', 'N', [
      ['A', own.axialForce, 'force along the nozzle'],
      ['V', own.verticalForce, 'vertical force'],
      ['C', own.crossForce, 'force across the nozzle'],
    ]);
  }
  if (key !== 'resultantMoment') return undefined;
  return three('M', 'N·m', [
    ['A', own.axialMoment, 'torsion about the nozzle'],
    ['V', own.verticalMoment, 'moment about the vertical'],
    ['C', own.crossMoment, 'moment about the cross axis'],
  ]);
}
