import { ruleOf } from '../../checks/all-checks.js';
import type { FindingChange, FindingSide } from '../../compare/comparison.js';
import type { CheckUnit } from '../../judging/finding.js';
import { graverBy } from '../../judging/verdict.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import { findingDimension } from '../words/finding-row.js';
import type { Writer } from '../writer.js';

/** A finding that changed, as printed. */
export interface FindingChangeRow {
  readonly title: string;
  readonly at: string;
  readonly condition: string;
  readonly verdictBefore: string;
  readonly verdictAfter: string;
  /** True where the verdict got worse. */
  readonly isWorse: boolean;
  readonly ratioBefore: string;
  readonly ratioAfter: string;
  /** `1,240 lb against 1,400 lb`. */
  readonly numbersBefore: string;
  readonly numbersAfter: string;
}

export interface FindingRows {
  readonly flipped: readonly FindingChangeRow[];
  /** Ratios that moved without a change of verdict, the highest first. */
  readonly moved: readonly FindingChangeRow[];
  readonly appeared: readonly FindingChangeRow[];
  readonly gone: readonly FindingChangeRow[];
}

/**
 * Changed findings as printed, the worst first.
 *
 * @param changes - changes
 * @param write - writer
 * @returns rows by kind of change
 */
export function findingRows(changes: readonly FindingChange[], write: Writer): FindingRows {
  const rows = (kind: FindingChange['kind']): readonly FindingChangeRow[] =>
    changes
      .filter((change) => change.kind === kind)
      .sort((a, b) => graverBy(verdict(b), verdict(a)) || ratio(b) - ratio(a))
      .map((change) => rowOf(change, ruleOf(change)?.title ?? change.check.replaceAll('-', ' '), write));
  return { flipped: rows('flipped'), moved: rows('moved'), appeared: rows('new'), gone: rows('gone') };
}

const verdict = ({ before, after }: FindingChange) => (after ?? before)?.verdict ?? 'meets';
const ratio = ({ before, after }: FindingChange): number => (after ?? before)?.ratio ?? 0;

function rowOf(change: FindingChange, title: string, write: Writer): FindingChangeRow {
  const { before, after, at, condition, comparison } = change;
  const dimension = findingDimension({ check: change.check, unit: change.unit as CheckUnit });
  const print = (value: number): string =>
    dimension === 'length' ? write.distance(value) : write.quantity(value, dimension);
  const numbers = (side: FindingSide | undefined): string => {
    if (side?.demand === undefined) return '–';
    const demand = print(side.demand);
    return side.limit === undefined ? demand : `${demand} against ${print(side.limit)}`;
  };
  return {
    title: comparison ? `${title} (comparison)` : title,
    at: change.atBefore === undefined ? at : `${at} (before: ${change.atBefore})`,
    condition: condition === undefined ? '' : conditionTitle(condition),
    verdictBefore: before?.verdict ?? 'does-not-apply',
    verdictAfter: after?.verdict ?? 'does-not-apply',
    isWorse: before !== undefined && after !== undefined && graverBy(after.verdict, before.verdict) > 0,
    ratioBefore: write.ratio(before?.ratio),
    ratioAfter: write.ratio(after?.ratio),
    numbersBefore: numbers(before),
    numbersAfter: numbers(after),
  };
}
