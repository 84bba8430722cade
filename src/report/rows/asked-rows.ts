import { allChecks } from '../../checks/all-checks.js';
import { ASKED_STATES, type AskedState, type Asking } from '../../checks/asked-conditions.js';
import type { View } from '../context.js';

/** Heads of the columns, short enough to stand side by side. */
const HEADS: Readonly<Record<AskedState, string>> = {
  empty: 'empty',
  filled: 'filled',
  test: 'test',
  running: 'run',
  hot: 'hot',
  cold: 'cold',
  lateral: 'sideways',
  start: 'start',
  'pump-out': 'pump out',
  'motor-off': 'motor off',
  slack: 'unloaded',
  misfit: 'misfit',
};

/** Letters of the table; a figure points at the reason. */
const MARKS = { judged: 'J', compared: 'C' } as const;

/**
 * Which check is asked in which condition: judged, compared, or why not. From the declaration of each rule.
 *
 * @returns heads, one row a check, and the reasons by their figure
 */
export function askedRows() {
  const rules = allChecks.flatMap(({ title, conditions }) => (conditions ? [{ title, conditions }] : []));
  const reasons = [
    ...new Set(
      rules.flatMap(({ conditions }) => ASKED_STATES.flatMap((state) => reasonOf(conditions[state]))),
    ),
  ];
  const mark = (asking: Asking): string =>
    typeof asking === 'string' ? MARKS[asking] : String(reasons.indexOf(asking.not) + 1);
  return {
    heads: ASKED_STATES.map((state) => ({ head: HEADS[state] })),
    rows: rules.map(({ title, conditions }) => ({
      title,
      cells: ASKED_STATES.map((state) => ({ mark: mark(conditions[state]) })),
    })),
    reasons: reasons.map((reason, index) => ({ figure: String(index + 1), reason })),
  } satisfies View;
}

function reasonOf(asking: Asking): readonly string[] {
  return typeof asking === 'string' ? [] : [asking.not];
}
