/** One trial: what becomes of the numbers that matter when the installation is a little other than it was taken. */

import { type NozzleAxisLoads, nozzleLoadRows } from '../../analysis/nozzles/nozzle-load-rows.js';
import type { Subject } from '../../analysis/subject.js';
import { supportLoadIn } from '../../analysis/supports/support-loads.js';
import { allChecks } from '../../checks/all-checks.js';
import { runCheck } from '../../checks/run-check.js';
import type { Installation } from '../../input/installation.js';
import { EngineError, type IssueCode } from '../../issues/issue.js';
import { solveFrame } from '../../mechanics/frame/solve-frame.js';
import { isHypothetical } from '../../model/conditions/condition-roles.js';
import type { FrameCondition } from '../../model/frame/frame.js';
import { buildLayout } from '../../model/layout/build-layout.js';
import type { Uncertainty } from './uncertainty.js';
import { varied } from './vary.js';

/**
 * Checks whose ratio follows from weights and stiffness. Distances, room, electrical space and practice do not move with
 * them; frequencies, the start and other slow ones do, and are not followed here.
 */
const followed = allChecks.filter(({ dependsOn, cost }) => dependsOn.includes('weights') && cost === 'quick');

/** What is asked of the numbers of a trial, in the order of `Trial.values`. Plain data. */
export type Figure =
  /** Demand over limit of a check at a place [-]. */
  | { readonly of: 'ratio'; readonly check: string; readonly at: string }
  /** Load of the pipe on a nozzle in its own axes [N] or [N·m]. */
  | {
      readonly of: 'nozzle';
      readonly nozzle: 'suction' | 'discharge';
      readonly condition: string;
      readonly key: keyof NozzleAxisLoads;
    }
  /** Load on a support, down [N]. */
  | { readonly of: 'support'; readonly mark: string; readonly condition: string };

/** What trials start from. Plain data, so that any thread can try. */
export interface TrialBase {
  readonly installation: Installation;
  /** Conditions that are solved: all but the questions what a slack hanger would do. Those of the start as they were. */
  readonly conditions: readonly FrameCondition[];
  readonly uncertainties: readonly Uncertainty[];
  readonly figures: readonly Figure[];
}

/** Outcome of a trial: a number a figure, not a number where it was not found; or why nothing could be worked out. */
export type Trial =
  | { readonly ok: true; readonly values: Float64Array }
  | { readonly ok: false; readonly code: IssueCode };

/** Components of nozzle loads that are followed. */
const KEYS = ['resultantForce', 'resultantMoment'] as const;

/**
 * What the trials of a solved installation start from.
 *
 * @param subject - the installation, solved
 * @param uncertainties - what may be off
 * @returns the base, and its own values
 */
export function trialBase(
  subject: Subject,
  uncertainties: readonly Uncertainty[],
): { readonly base: TrialBase; readonly values: Float64Array } {
  const { installation, layout } = subject;
  const conditions = layout.frame.conditions.filter((condition) => !isHypothetical(condition));
  const solved = conditions.flatMap(({ name }) => {
    const one = subject.response.conditions[name];
    return one === undefined ? [] : [[name, one] as const];
  });
  const numbers = numbersOf({
    installation,
    layout: { ...layout, frame: { ...layout.frame, conditions } },
    response: { ...subject.response, conditions: Object.fromEntries(solved) },
  });
  const figures = numbers.map(({ figure }) => figure);
  return {
    base: { installation, conditions, uncertainties, figures },
    values: Float64Array.from(numbers, ({ value }) => value),
  };
}

/**
 * Works one trial out: varies, places, solves and judges again, with every one-way support free to do what it then does.
 *
 * @param base - what trials start from
 * @param amounts - one an uncertainty, from −1 to 1 [-]
 * @returns values in the order of the figures
 */
export function runTrial(base: TrialBase, amounts: readonly number[]): Trial {
  try {
    const installation = varied(base.installation, base.uncertainties, amounts);
    const plain = buildLayout(installation);
    const layout = { ...plain, frame: { ...plain.frame, conditions: base.conditions } };
    const response = solveFrame(layout.frame);
    const found = new Map(
      numbersOf({ installation, layout, response }).map((one) => [keyOf(one.figure), one.value]),
    );
    return {
      ok: true,
      values: Float64Array.from(base.figures, (figure) => found.get(keyOf(figure)) ?? Number.NaN),
    };
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    return { ok: false, code: error.code };
  }
}

interface Numbered {
  readonly figure: Figure;
  readonly value: number;
}

function numbersOf(subject: Subject): readonly Numbered[] {
  const ratios = followed.flatMap((check) =>
    runCheck(check, subject).flatMap(({ at, ratio }): readonly Numbered[] =>
      ratio === undefined ? [] : [{ figure: { of: 'ratio', check: check.id, at }, value: ratio }],
    ),
  );
  const nozzles = nozzleLoadRows(subject).flatMap(({ condition, nozzle, own }) =>
    KEYS.map((key): Numbered => ({ figure: { of: 'nozzle', nozzle, condition, key }, value: own[key] })),
  );
  const supports = Object.values(subject.response.conditions).flatMap((condition) =>
    Object.keys(condition.supports).flatMap((mark): readonly Numbered[] => {
      const load = supportLoadIn(condition, mark);
      if (load === undefined) return [];
      return [{ figure: { of: 'support', mark, condition: condition.name }, value: load.downward }];
    }),
  );
  return [...ratios, ...nozzles, ...supports];
}

/** Text that is the same for the same figure. */
export function keyOf(figure: Figure): string {
  switch (figure.of) {
    case 'ratio':
      return `ratio|${figure.check}|${figure.at}`;
    case 'nozzle':
      return `nozzle|${figure.nozzle}|${figure.condition}|${figure.key}`;
    case 'support':
      return `support|${figure.mark}|${figure.condition}`;
  }
}
