/**
 * A quick look at a change: the conditions that matter, the checks that a change of supports or legs can move. Rods are
 * taken to hang plumb, so that conditions share one factored stiffness; whatever is advised is reviewed in full.
 */

import { solvedOf } from '../../analysis/conditions.js';
import type { Subject } from '../../analysis/subject.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { allChecks, type CheckId } from '../../checks/all-checks.js';
import { runCheck } from '../../checks/run-check.js';
import type { OpenedFile } from '../../input/open-for-trials.js';
import { EngineError } from '../../issues/issue.js';
import type { Finding } from '../../judging/finding.js';
import { solveFrame } from '../../mechanics/frame/solve-frame.js';
import { findVibrations } from '../../mechanics/modes/find-vibrations.js';
import { ofRole, roleOf } from '../../model/conditions/condition-roles.js';
import { slackCondition } from '../../model/conditions/upset-conditions.js';
import type { Frame, FrameCondition } from '../../model/frame/frame.js';
import type { Layout } from '../../model/layout/layout.js';
import type { Edit } from './edit.js';
import { changedSituation } from './situation.js';

/** What a quick look takes in; plain data, the same for every trial of a search. */
export interface ScreenPlan {
  /** Names of conditions; of those that are missing nothing is said. */
  readonly conditions: readonly string[];
  /** Ids of checks. */
  readonly checks: readonly CheckId[];
  /** Supports of which it is asked what happens when they are slack, also where the review no longer asks. */
  readonly slack: readonly string[];
  /** The conditions of the start, as the review of the file found them. */
  readonly starts: readonly FrameCondition[];
  /** Highest frequency looked for, where a check of vibration is among them [Hz]. */
  readonly frequency?: number;
  /** By how much findings of the file exceed, and those that cannot be told, by `findingKey` [-]. */
  readonly exceeding: Readonly<Record<string, number>>;
  readonly uncertain: readonly string[];
}

/** What a quick look saw. */
export interface ScreenOutcome {
  /** By how much each finding that exceeds does so, by `findingKey` [-]. */
  readonly excess: Readonly<Record<string, number>>;
  /** Findings that did not exceed before and do now, and that could be told before and cannot now. */
  readonly worse: readonly string[];
  /** Largest ratio of what meets [-]. */
  readonly closest: number;
  /** Largest ratio of what exceeded before and does no more [-]. */
  readonly tightest: number;
  /** Load on each support filled, down [N]. */
  readonly filled: Readonly<Record<string, number>>;
}

/** A place judged: which check, and where. */
export function findingKey({ check, at }: Pick<Finding, 'check' | 'at'>): string {
  return `${check} | ${at}`;
}

/** What something that must not happen counts beside ratios over 1 [-]. */
const FORBIDDEN = 1;
/** What exceeding counts by itself, so that a finding mended is worth more than one made smaller [-]. */
const EXCEEDING = 0.05;
/**
 * By how much a finding exceeds.
 *
 * @param finding - any finding
 * @returns 0 where it does not, else more the more it does [-]
 */
export function excessOf({ verdict, ratio }: Pick<Finding, 'verdict' | 'ratio'>): number {
  if (verdict !== 'exceeds') return 0;
  return EXCEEDING + (ratio === undefined ? FORBIDDEN : Math.max(0, ratio - 1));
}

/**
 * The ratio that goes with an excess.
 *
 * @param excess - as `excessOf` gives it for something with a ratio
 * @returns demand over limit [-]
 */
export function ratioOf(excess: number): number {
  return 1 + excess - EXCEEDING;
}

/**
 * Looks quickly at a file with changes made.
 *
 * @param opened - the file
 * @param plan - what to look at
 * @param edits - changes, in order
 * @returns what was seen; undefined where the changed installation cannot be worked out
 */
export function screen(
  opened: OpenedFile,
  plan: ScreenPlan,
  edits: readonly Edit[],
): ScreenOutcome | undefined {
  try {
    const changed = changedSituation(opened, edits);
    if (changed === undefined) return undefined;
    const { installation, layout } = changed;
    return outcomeOf(screenedSubject(installation, layout, plan), plan);
  } catch (error) {
    if (error instanceof EngineError) return undefined;
    throw error;
  }
}

function screenedSubject(installation: Subject['installation'], layout: Layout, plan: ScreenPlan): Subject {
  const wanted = new Set(plan.conditions);
  const all = [...layout.frame.conditions, ...plan.starts];
  const conditions = [...all, ...slackAsked(layout, plan)].filter(({ name }) => wanted.has(name));
  const frame: Frame = { ...plumb(layout.frame), conditions };
  const seen: Layout = { ...layout, frame };
  const response = solveFrame(frame);
  const running = ofRole(layout.frame.conditions, 'running');
  if (plan.frequency === undefined || running === undefined) return { installation, layout: seen, response };
  const { frequencies } = findVibrations(layout.frame, running, plan.frequency);
  return { installation, layout: seen, response, frequencies };
}

/** A hanger that is no longer among those nearest the pump still answers for what it did when it was. */
function slackAsked({ frame }: Layout, { slack }: ScreenPlan): readonly FrameCondition[] {
  const filled = ofRole(frame.conditions, 'filled');
  return slack.flatMap((mark) => {
    const isThere = frame.conditions.some((condition) => {
      const role = roleOf(condition);
      return role.kind === 'slack' && role.support === mark;
    });
    const isAsked = !isThere && frame.supports.some((support) => support.name === mark);
    return filled && isAsked ? [slackCondition(filled, mark)] : [];
  });
}

/** A frame whose rods do not lean: what they hold sideways is their load over their length, next to nothing. */
function plumb(frame: Frame): Frame {
  return {
    ...frame,
    supports: frame.supports.map((support) => ({
      ...support,
      restraints: support.restraints.map(({ swingLength: _, ...restraint }) => restraint),
    })),
  };
}

function outcomeOf(subject: Subject, plan: ScreenPlan): ScreenOutcome {
  const ids = new Set(plan.checks);
  const findings = allChecks
    .filter(({ id }) => ids.has(id))
    .flatMap((check) => runCheck(check, subject))
    .filter(({ comparison }) => !comparison);
  const uncertain = new Set(plan.uncertain);
  const excess: Record<string, number> = {};
  const worse: string[] = [];
  let closest = 0;
  let tightest = 0;
  for (const finding of findings) {
    const key = findingKey(finding);
    if (finding.verdict === 'exceeds') {
      excess[key] = excessOf(finding);
      if (!(key in plan.exceeding)) worse.push(key);
    }
    if (finding.verdict === 'cannot-tell' && !uncertain.has(key)) worse.push(key);
    if (finding.verdict !== 'meets') continue;
    closest = Math.max(closest, finding.ratio ?? 0);
    if (key in plan.exceeding) tightest = Math.max(tightest, finding.ratio ?? 0);
  }
  const solved = solvedOf(subject, 'filled')?.solved;
  const filled = Object.keys(solved?.supports ?? {}).flatMap((mark) => {
    const load = supportLoadIn(solved, mark);
    return load === undefined ? [] : [[mark, load.downward] as const];
  });
  return { excess, worse, closest, tightest, filled: Object.fromEntries(filled) };
}
