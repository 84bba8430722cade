/** A board and a punch list as tables of cells. */
import type { AsInstalledSummary } from '../../index.js';
import type { ScheduleTable } from '../schedule/schedule-table.js';
import type { BoardUnit } from './board-one.js';

type Item = AsInstalledSummary['items'][number];

/** What an item keeps from happening. */
const KEEPS: Readonly<Record<Item['bars'], string>> = {
  running: 'running: stop it',
  start: 'the start',
  acceptance: 'acceptance',
  nothing: 'nothing',
};

/** One unit in words. */
export interface BoardRow {
  readonly mark: string;
  readonly start: string;
  readonly run: string;
  /** Open items that keep it from running or from being started. */
  readonly blocking: number;
  readonly open: number;
  /** Open items of each trade, most first: `pipe fitter 4, electrician 2`. */
  readonly trades: string;
  readonly lastVisit: string;
  readonly file: string;
}

/**
 * A unit as a row: one that was never visited, or whose files cannot be used, is held and says why.
 *
 * @param unit - decisions and items
 * @returns finished words
 */
export function boardRow({ file, seen, sheets }: BoardUnit): BoardRow {
  const held = { start: 'hold', run: 'hold', blocking: 0, open: 0, trades: '', file };
  if (seen === undefined) return { ...held, mark: '?', lastVisit: 'cannot be used' };
  if (sheets === 0) return { ...held, mark: seen.mark, lastVisit: 'no readings' };
  const { items, decisions, mark, date = 'day not told' } = seen;
  const counts = new Map<string, number>();
  for (const { trade } of items) counts.set(trade, (counts.get(trade) ?? 0) + 1);
  return {
    mark,
    start: decisions.start.word,
    run: decisions.run.word,
    blocking: items.filter(({ bars }) => bars === 'running' || bars === 'start').length,
    open: items.length,
    trades: [...counts]
      .sort(([, a], [, b]) => b - a)
      .map(([trade, count]) => `${trade} ${count}`)
      .join(', '),
    lastVisit: date,
    file,
  };
}

/** The board: one row a unit. */
export function boardTable(units: readonly BoardUnit[]): ScheduleTable {
  const head = ['Pump', 'Start', 'Run and acceptance', 'Blocking items', 'Open items'];
  return {
    head: [...head, 'Open by trade', 'Last visit', 'File'],
    rows: units.map((unit) => {
      const { mark, start, run, blocking, open, trades, lastVisit, file } = boardRow(unit);
      return [mark, start.toUpperCase(), run.toUpperCase(), blocking, open, trades, lastVisit, file];
    }),
  };
}

/** The punch list: one row an open item, by pump, then by trade, gravest first. */
export function punchTable(units: readonly BoardUnit[]): ScheduleTable {
  return {
    head: [
      'Pump',
      'Trade',
      'Keeps from',
      'Place',
      'Finding',
      'Evidence',
      'Consequence',
      'To do',
      'Closed by, on',
      'File',
    ],
    rows: units.flatMap(({ file, seen, sheets }) => {
      if (seen === undefined)
        return [['?', '', 'the start', '', 'the file or its readings cannot be used', '', '', '', '', file]];
      if (sheets === 0)
        return [
          [
            seen.mark,
            '',
            'the start',
            '',
            'no readings have been brought back',
            '',
            '',
            'visit it',
            '',
            file,
          ],
        ];
      const trades = [...new Set(seen.items.map(({ trade }) => trade))];
      return trades.flatMap((trade) =>
        seen.items
          .filter((item) => item.trade === trade)
          .map((item) => [
            seen.mark,
            trade,
            KEEPS[item.bars],
            item.at,
            item.finding,
            item.evidence,
            item.consequence,
            item.fix,
            '',
            file,
          ]),
      );
    }),
  };
}
