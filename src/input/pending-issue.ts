import type { Coded } from '../issues/issue.js';

/** Keys and indexes from the top of the file to a value. */
export type Path = readonly (string | number)[];

/** An issue before its line and column are looked up. */
export type PendingIssue = Coded & {
  readonly severity?: 'error' | 'warning' | 'hint';
  readonly path: Path;
  /** What of the path to point at: the value, the key itself, or, for something missing, what should hold it. */
  readonly at: 'value' | 'key' | 'holder';
};

/**
 * A pending issue made of its parts.
 *
 * @param stated - code and data [-]
 * @param path - where it stands [-]
 * @param at - what of the path to point at [-]
 * @param severity - how grave it is [-]
 * @returns the pending issue [-]
 */
export function pendingIssueOf(
  stated: Coded,
  path: Path,
  at: PendingIssue['at'],
  severity: PendingIssue['severity'] = 'error',
): PendingIssue {
  return { code: stated.code, severity, path, at, data: stated.data } as PendingIssue;
}

/**
 * A path in the words of the file.
 *
 * @param path - keys and indexes [-]
 * @returns for example `piping.lines[0].walk[3].elbow.turn` [-]
 */
export function pathText(path: Path): string {
  return path
    .map((step, index) => (typeof step === 'number' ? `[${step}]` : index === 0 ? step : `.${step}`))
    .join('');
}
