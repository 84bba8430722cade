/** Movement of the motor top at start over what nobody stated: softer brackets and structure let it go farther. */
import { solveInstallation } from '../../analysis/solve-installation.js';
import type { Subject } from '../../analysis/subject.js';
import type { Check } from '../../checks/define-check.js';
import { runCheck } from '../../checks/run-check.js';
import { EngineError } from '../../issues/issue.js';
import type { AtBound } from '../../judging/over-bounds.js';
import { atBounds } from './at-bounds.js';
import type { Unstated } from './unstated.js';

/** Softness tried of the bracket and of all the rest together: both ends, and between, since the twist may meet a vibration [-]. */
const TRIED: readonly (readonly [bracket: number, rest: number])[] = [
  [1, 0],
  [0, 1],
  [1, 1],
  [0.5, 0.25],
];

/**
 * Outcomes of the movement at start, the start worked out anew in each trial.
 *
 * @param subject - the installation, solved as stated
 * @param check - the check of the movement at start
 * @param things - what nobody stated
 * @returns outcomes in order of the trials; none where no limit is given or all is stated
 */
export function startTrials(subject: Subject, check: Check, things: readonly Unstated[]): readonly AtBound[] {
  if (subject.installation.limits.startMovement === undefined || things.length === 0) return [];
  const hasBracket = things.some(({ kind }) => kind === 'bracket');
  const hasRest = things.some(({ kind }) => kind !== 'bracket');
  const spots = TRIED.filter(([bracket, rest]) => (bracket === 0 || hasBracket) && (rest === 0 || hasRest));
  return spots.map(([bracket, rest]): AtBound => {
    const amounts = new Map(
      things.map(({ id, kind }) => [id, kind === 'bracket' ? bracket : kind === 'friction' ? 0 : rest]),
    );
    const varied = things.filter(({ id }) => (amounts.get(id) ?? 0) > 0).map(({ what }) => what);
    try {
      const installation = atBounds(subject.installation, things, amounts);
      const solved = solveInstallation(installation, ({ role }) => role?.kind === 'running');
      const [found] = runCheck(check, solved);
      return { varied, outcome: found ?? { verdict: 'cannot-tell', why: 'demand-missing' } };
    } catch (error) {
      if (!(error instanceof EngineError)) throw error;
      return { varied, outcome: { verdict: 'cannot-tell', why: 'demand-missing' } };
    }
  });
}
