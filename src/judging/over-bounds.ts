/** A verdict that holds whatever the things are that nobody stated, within their bounds. */

import type { Compared } from './compare-with-limit.js';
import { graverBy } from './verdict.js';

/** What came of one comparison with unstated things at one end of what they may be. */
export interface AtBound {
  /** Names of what stands at a bound here: `friction at the guides`. None: everything as stated. */
  readonly varied: readonly string[];
  readonly outcome: Compared;
}

/**
 * One outcome over all bounds: it meets only if it meets at every bound, exceeds only if it exceeds at every bound, and
 * otherwise cannot be told, with the names of what turns it.
 *
 * What turns it are the things at whose bounds the verdict is another than as stated: those that do so alone where there
 * are any, else those that do so together. Demand, limit and ratio are those as stated, else those of the gravest bound;
 * `low` and `high` are the least and largest demand of all bounds.
 *
 * @param bounds - outcomes at the bounds, best with the one as stated first
 * @returns the outcome that may be relied on; `cannot-tell` where there is none
 */
export function overBounds(bounds: readonly AtBound[]): Compared {
  const [first, ...others] = bounds;
  if (first === undefined) return { verdict: 'cannot-tell', why: 'demand-missing' };
  const stated = bounds.find(({ varied }) => varied.length === 0);
  const gravest = others.reduce(
    (worst, next) => (isGraver(next.outcome, worst.outcome) ? next : worst),
    first,
  );
  const { ratio, why, ...shown } = (stated ?? gravest).outcome;
  const reach = reachOf(bounds);
  if (bounds.every(({ outcome }) => outcome.verdict === first.outcome.verdict)) {
    return { ...shown, ...(ratio !== undefined && { ratio }), ...(why && { why }), ...reach };
  }
  return {
    ...shown,
    ...reach,
    verdict: 'cannot-tell',
    why: why ?? 'bounds-disagree',
    turnedBy: stated === undefined ? atOddsWithThemselves(bounds) : turningFrom(stated, bounds),
  };
}

function isGraver(next: Compared, worst: Compared): boolean {
  const graver = graverBy(next.verdict, worst.verdict);
  return graver > 0 || (graver === 0 && (next.ratio ?? 0) > (worst.ratio ?? 0));
}

/** Least and largest demand; nothing where a bound has none, since what is not known has no end. */
function reachOf(bounds: readonly AtBound[]): Pick<Compared, 'low' | 'high'> {
  const demands = bounds.flatMap(({ outcome }) => outcome.demand ?? []);
  if (demands.length < bounds.length || demands.length < 2) return {};
  return { low: Math.min(...demands), high: Math.max(...demands) };
}

function turningFrom(stated: AtBound, bounds: readonly AtBound[]): readonly string[] {
  const turning = bounds.filter(({ outcome }) => outcome.verdict !== stated.outcome.verdict);
  const alone = turning.filter(({ varied }) => varied.length === 1);
  return namesOf(alone.length > 0 ? alone : turning);
}

/** Nothing was judged as stated: what turns it are things at whose own bounds the verdicts differ, else all of them. */
function atOddsWithThemselves(bounds: readonly AtBound[]): readonly string[] {
  const names = namesOf(bounds);
  const own = names.filter((name) => {
    const alone = bounds.filter(({ varied }) => varied.length === 1 && varied[0] === name);
    return new Set(alone.map(({ outcome }) => outcome.verdict)).size > 1;
  });
  return own.length > 0 ? own : names;
}

function namesOf(bounds: readonly AtBound[]): readonly string[] {
  return [...new Set(bounds.flatMap(({ varied }) => varied))];
}
