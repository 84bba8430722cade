/** What a search looks at: which findings changes of supports and legs can reach, in which conditions. */

import type { Subject } from '../../analysis/subject.js';
import type { Finding } from '../../judging/finding.js';
import { ofRoles, roleOfId } from '../../model/conditions/condition-roles.js';
import { excessOf, findingKey, type ScreenPlan } from './screen.js';

/** Checks whose outcome hangs on where and how the pipe is held, and on its legs. */
const REACHABLE: readonly string[] = [
  'nozzle-loads',
  'nozzle-principal-stress',
  'nozzle-combined',
  'slack-hanger',
  'fit-up-tolerance',
  'sustained-stress',
  'displacement-stress',
  'occasional-stress',
  'test-stress',
  'support-span',
  'rod-load',
  'attachment-load',
  'support-load',
  'first-support-pump',
  'first-support-bend',
  'support-uplift',
  'pump-out-supports',
  'flange-equivalent-pressure',
  'flexible-connector',
  'frequency-margin',
  'start-movement',
];

/** Those that take long: looked at only where they exceed, and in the full review of what is advised. */
const SLOW: readonly string[] = [
  'fit-up-tolerance',
  'occasional-stress',
  'pump-out-supports',
  'frequency-margin',
  'start-movement',
  'flexible-connector',
];

/** Conditions of every quick look, by role. */
const ALWAYS = ['filled', 'hot', 'cold', 'test'] as const;

/** The findings of a file and the looks of a search for what mends them. */
export interface SearchPlan {
  /** Findings that exceed and that a change of supports or legs may mend. */
  readonly reachable: readonly Finding[];
  /** Findings that exceed whatever holds the pipe. */
  readonly beyond: readonly Finding[];
  /** Findings that cannot be told. */
  readonly uncertain: readonly Finding[];
  /** A quick look, and a closer one before anything is reviewed in full. */
  readonly quick: ScreenPlan;
  readonly close: ScreenPlan;
}

/** Ratio from which what meets is looked at in every trial: what is far from its limit is left to the closer look [-]. */
const NEAR = 0.6;
/** Checks of what must not happen: nothing tells how near it is. */
const WITHOUT_RATIO: readonly string[] = ['support-uplift', 'support-load'];

/** Twice running speed is the highest frequency the review looks for. */
const TWICE = 2;

/**
 * Plans a search.
 *
 * @param subject - the file as reviewed, with its findings
 * @returns what to mend, and what to look at
 */
export function searchPlan(subject: Subject & { readonly findings: readonly Finding[] }): SearchPlan {
  const counted = subject.findings.filter(({ comparison }) => !comparison);
  const exceeding = counted.filter(({ verdict }) => verdict === 'exceeds');
  const reachable = exceeding.filter(isReachable);
  const uncertain = counted.filter(({ verdict }) => verdict === 'cannot-tell');
  const failing = new Set(reachable.map(({ check }) => check));
  const always = ofRoles(subject.layout.frame.conditions, ALWAYS).map(({ name }) => name);
  const names = subject.layout.frame.conditions.map(({ name }) => name);
  const own = reachable.flatMap(({ condition }) => condition ?? []);
  const near = counted.filter(({ ratio = 0 }) => ratio >= NEAR);
  const checks = REACHABLE.filter((id) => !SLOW.includes(id) || failing.has(id));
  const { speed, speeds } = subject.installation.pump.motor;
  const common = {
    checks,
    starts: ofRoles(subject.layout.frame.conditions, ['start']),
    ...(failing.has('frequency-margin') && {
      frequency: (TWICE * Math.max(speed, speeds?.highest ?? 0)) / (2 * Math.PI),
    }),
    slack: reachable.flatMap(({ condition }) => {
      const role = condition === undefined ? undefined : roleOfId(condition);
      return role?.kind === 'slack' ? [role.support] : [];
    }),
    exceeding: Object.fromEntries(reachable.map((finding) => [findingKey(finding), excessOf(finding)])),
    uncertain: uncertain.map(findingKey),
  };
  return {
    reachable,
    beyond: exceeding.filter((finding) => !isReachable(finding)),
    uncertain,
    quick: {
      ...common,
      conditions: [...new Set([...always, ...own, ...near.flatMap(({ condition }) => condition ?? [])])],
      checks: checks.filter(
        (id) => failing.has(id) || WITHOUT_RATIO.includes(id) || near.some(({ check }) => check === id),
      ),
    },
    close: { ...common, conditions: [...new Set([...names, ...own])] },
  };
}

/** Whether a change of supports or legs can alter a finding. */
export function isReachable({ check }: Pick<Finding, 'check'>): boolean {
  return REACHABLE.includes(check);
}
