import type { Check } from '../../src/checks/define-check.js';
import type { Calculation, Finding } from '../../src/checks/finding.js';
import { runCheck } from '../../src/checks/run-check.js';
import { parseExpression } from '../../src/units/mathjs.js';
import { type SubjectChange, subject } from './fixture.js';

/** Findings of one check for the small subject with changes. */
export const findingsOf = (check: Check, change: SubjectChange = {}): readonly Finding[] =>
  runCheck(check, subject(change));

/** The finding at one place. */
export function findingAt(check: Check, at: string, change: SubjectChange = {}): Finding {
  const findings = findingsOf(check, change);
  const found = findings.find((finding) => finding.at === at);
  if (found === undefined)
    throw new Error(`no finding at ${at}, only at ${findings.map((one) => one.at).join('; ')}`);
  return found;
}

/** What the formula of a finding gives, worked out as the report does it. */
export function workedOut(calculation: Calculation | undefined): number {
  if (calculation === undefined) return Number.NaN;
  const scope = Object.fromEntries(calculation.values.map(({ symbol, value }) => [symbol, value]));
  return parseExpression(calculation.formula).evaluate(scope);
}
