import type { Coded } from '../issues/issue.js';

/** Keys and indexes from the top of the file to a value. */
export type Path = readonly (string | number)[];

/** An issue before its line and column are looked up. */
export type Draft = Coded & {
  readonly severity?: 'error' | 'warning' | 'hint';
  readonly path: Path;
  /** What of the path to point at: the value, the key itself, or, for something missing, what should hold it. */
  readonly at: 'value' | 'key' | 'holder';
};

/**
 * A draft made of its parts.
 *
 * @param told - code and data [-]
 * @param path - where it stands [-]
 * @param at - what of the path to point at [-]
 * @param severity - how grave it is [-]
 * @returns the draft [-]
 */
export function draftOf(
  told: Coded,
  path: Path,
  at: Draft['at'],
  severity: Draft['severity'] = 'error',
): Draft {
  return { code: told.code, severity, path, at, data: told.data } as Draft;
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
