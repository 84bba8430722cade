/** What a search looks at: which findings changes of supports and legs can reach, in which conditions. */

import type { Subject } from '../../analysis/subject.js';
import { allChecks, type CheckId, isOf } from '../../checks/all-checks.js';
import type { Finding } from '../../judging/finding.js';
import { ofRoles, roleOfId } from '../../model/conditions/condition-roles.js';
import { excessOf, findingKey, type ScreenPlan } from './screen.js';

/** Checks that decide, and whose outcome hangs on where and how the pipe is held, and on its legs. */
const REACHABLE = allChecks.filter(
  ({ dependsOn, standing }) => dependsOn.includes('supports') && standing === 'decides',
);

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
  const isFailing = (id: CheckId) => reachable.some((finding) => isOf(finding, id));
  const always = ofRoles(subject.layout.frame.conditions, ALWAYS).map(({ name }) => name);
  const names = subject.layout.frame.conditions.map(({ name }) => name);
  const own = reachable.flatMap(({ condition }) => condition ?? []);
  const near = counted.filter(({ ratio = 0 }) => ratio >= NEAR);
  const looked = REACHABLE.filter(({ id, cost }) => cost === 'quick' || isFailing(id));
  const { speed, speeds } = subject.installation.pump.motor;
  const common = {
    starts: ofRoles(subject.layout.frame.conditions, ['start']),
    ...(isFailing('frequency-margin') && {
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
      checks: idsOf(
        looked.filter(
          ({ id, turnsUnannounced = false }) =>
            isFailing(id) || turnsUnannounced || near.some((finding) => isOf(finding, id)),
        ),
      ),
    },
    close: { ...common, checks: idsOf(looked), conditions: [...new Set([...names, ...own])] },
  };
}

function idsOf(checks: typeof REACHABLE): readonly CheckId[] {
  return checks.map(({ id }) => id);
}

/** Whether a change of supports or legs can alter a finding. */
export function isReachable({ check }: Pick<Finding, 'check'>): boolean {
  return REACHABLE.some(({ id }) => id === check);
}
