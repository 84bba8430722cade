import type { Check } from '../../src/checks/define-check.js';
import { runCheck } from '../../src/checks/run-check.js';
import type { Finding } from '../../src/judging/finding.js';
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
