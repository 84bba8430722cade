import type { IssueData } from '../issues/issue.js';

/** Keys and indexes from the top of the file to a value. */
export type Path = readonly (string | number)[];

/** An issue before its line and column are looked up. */
export interface Draft {
  readonly code: string;
  readonly severity?: 'error' | 'warning' | 'hint';
  readonly path: Path;
  /** What of the path to point at: the value, the key itself, or, for something missing, what should hold it. */
  readonly at: 'value' | 'key' | 'holder';
  readonly data: IssueData;
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
