import type { Calculation } from '../../src/judging/finding.js';
import { parseExpression } from '../../src/units/mathjs.js';

/** What the formula of a finding gives, worked out as the report does it. */
export function workedOut(calculation: Calculation | undefined): number {
  if (calculation === undefined) return Number.NaN;
  const scope = Object.fromEntries(calculation.values.map(({ symbol, value }) => [symbol, value]));
  return parseExpression(calculation.formula).evaluate(scope);
}
