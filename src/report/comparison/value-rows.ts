import type { ValueChange } from '../../compare/comparison.js';
import { conditionTitle } from '../../model/conditions/condition-roles.js';
import type { Dimension } from '../../units/index.js';
import type { Writer } from '../writer.js';

/** A result that moved, as printed. Of a nozzle or a support the condition in which it moved most; the others counted. */
export interface ValueRow {
  readonly at: string;
  readonly what: string;
  readonly condition: string;
  readonly before: string;
  readonly after: string;
  /** With its sign, and in per cent of what it was. */
  readonly change: string;
  /** In how many conditions more it moved: `and in 4 more conditions`; empty for none. */
  readonly others: string;
}

const DIMENSIONS: Readonly<Record<ValueChange['unit'], Dimension>> = {
  N: 'force',
  N·m: 'moment',
  kg: 'mass',
  Hz: 'frequency',
};

/**
 * Values that moved, by what they are of; of each the condition in which it moved most.
 *
 * @param changes - all that moved beyond noise
 * @param write - writer
 * @returns rows: nozzles, supports, weights, frequencies
 */
export function valueRows(changes: readonly ValueChange[], write: Writer): readonly ValueRow[] {
  const groups = new Map<string, ValueChange[]>();
  for (const change of changes) {
    // Frequencies are many and move together: the one that moved most stands for all.
    const key = change.of === 'frequency' ? 'frequency' : `${change.of}|${change.at}|${change.what}`;
    groups.set(key, [...(groups.get(key) ?? []), change]);
  }
  const order: readonly ValueChange['of'][] = ['nozzle', 'support', 'weight', 'frequency'];
  return order.flatMap((of) =>
    [...groups.values()].filter(([first]) => first?.of === of).flatMap((group) => rowsOf(group, write)),
  );
}

const apart = ({ of, before = 0, after = 0 }: ValueChange): number =>
  Math.abs(after - before) / (of === 'frequency' ? Math.max(before, after) : 1);

function rowsOf(group: readonly ValueChange[], write: Writer): readonly ValueRow[] {
  const [most] = [...group].sort((a, b) => apart(b) - apart(a));
  if (!most) return [];
  const { of, at, what, condition, unit, before, after } = most;
  const dimension = DIMENSIONS[unit];
  const print = write.scaled(dimension, [before, after]);
  const withUnit = (value: number | undefined): string =>
    value === undefined ? '–' : `${print(value)} ${write.unit(dimension)}`;
  const others = group.length - 1;
  return [
    {
      at: of === 'nozzle' ? `${at} nozzle` : at,
      what,
      condition: condition === undefined ? '' : conditionTitle(condition),
      before: withUnit(before),
      after: withUnit(after),
      change: changeText(most, write, dimension),
      others: others === 0 ? '' : othersText(of, others),
    },
  ];
}

function othersText(of: ValueChange['of'], count: number): string {
  const [one, many] = of === 'frequency' ? ['frequency', 'frequencies'] : ['condition', 'conditions'];
  return `and ${of === 'frequency' ? '' : 'in '}${count} more ${count === 1 ? one : many}`;
}

function changeText({ before, after }: ValueChange, write: Writer, dimension: Dimension): string {
  if (before === undefined) return 'new';
  if (after === undefined) return 'gone';
  const by = after - before;
  const sign = by > 0 ? '+' : '−';
  const size = `${sign}${write.scaled(dimension, [before, after])(Math.abs(by))} ${write.unit(dimension)}`;
  // Of next to nothing a share says nothing, and of an uplift its sign would mislead.
  if (before <= 0 || after <= 0) return size;
  return `${size}, ${sign}${write.plain((Math.abs(by) / Math.abs(before)) * 100, 2)} %`;
}
