/** Looking up the row of a judge, and what a judgement of it keeps from happening. */
import type { FieldSubject } from '../judge.js';
import type { Judgement } from '../judgement.js';
import { type Bars, keepsFromStart, type Requirement } from './requirement.js';
import { runRequirements } from './run-requirements.js';
import { startRequirements } from './start-requirements.js';

/** All rows, those of the first decision first. */
export const requirements: readonly Requirement[] = [...startRequirements, ...runRequirements];

const byJudge = new Map(requirements.map((row) => [row.judge, row]));

/** A judge that stands in no table bars a start: nothing is let through for want of a row. */
const UNLISTED: Omit<Requirement, 'judge'> = { against: 'start', unknown: 'start', guidance: 'start' };

/**
 * The row of a judge.
 *
 * @param judge - its id
 * @returns the row; the severest for a judge without one
 */
export function requirementOf(judge: string): Requirement {
  return byJudge.get(judge) ?? { judge, ...UNLISTED };
}

/** What a judgement keeps from happening, and by what. */
type Barred = Pick<Judgement, 'bars' | 'how' | 'undisputed' | 'blocksStart'>;

/**
 * What a judgement keeps from happening.
 *
 * @param judgement - one reading judged
 * @param subject - the unit, for factors that follow its plates
 * @returns what it bars, and by what
 */
export function barredBy(
  judgement: Pick<Judgement, 'judge' | 'verdict' | 'comparison' | 'ratio' | 'demand'>,
  subject: FieldSubject,
): Barred {
  const row = requirementOf(judgement.judge);
  const { verdict, comparison, ratio } = judgement;
  if (verdict === 'meets' || verdict === 'does-not-apply') return barred('nothing', 'none');
  if (verdict === 'cannot-tell') {
    // Where nobody gives a limit there is nothing to be known but the reading, and that was taken.
    const isRead = judgement.demand !== undefined && comparison;
    if (isRead && judgement.demand !== 0 && row.unlimited !== undefined)
      return barred(row.unlimited, 'unknown');
    return isRead ? barred('nothing', 'none') : barred(row.unknown, 'unknown');
  }
  const { beyond } = row;
  const factor = typeof beyond?.factor === 'function' ? beyond.factor(subject) : beyond?.factor;
  if (
    beyond !== undefined &&
    factor !== undefined &&
    ratio !== undefined &&
    ratio > factor * (1 + ROUNDING)
  ) {
    return { ...barred(beyond.bars, 'beyond'), undisputed: beyond.why };
  }
  if (comparison) return barred(row.guidance ?? 'nothing', 'guidance');
  return barred(row.against, 'against');
}

function barred(bars: Bars, how: Judgement['how']): Barred {
  return { bars, how, blocksStart: keepsFromStart(bars) };
}

/** Room for the last binary digits of a unit turned there and back [-]. */
const ROUNDING = 1e-9;
