/**
 * Two decisions: may it be started, and may it run and be accepted. Each follows from everything that is open; neither is
 * go without the name of who decides.
 */
import { dateIn, nameIn } from '../../readings/read-box.js';
import type { ReadingsById } from '../../readings/reading.js';
import type { SheetTaken } from '../../readings/sheet-taken.js';
import type { OpenItem } from '../open-item.js';
import { keepsFromStart } from './requirement.js';

/** What may be done. */
export type DecisionWord = 'go' | 'hold' | 'stop';

/** One decision. */
export interface Decision {
  readonly word: DecisionWord;
  /** What stands against it. */
  readonly against: readonly OpenItem[];
  /** Who decides, and on which day, as written on a sheet. It is no signature. */
  readonly by?: string;
  readonly on?: string;
  /** Why the name does not count: none, no day, or older than the last reading. */
  readonly nameless?: 'no-name' | 'no-day' | 'older';
}

/** Both decisions. */
export interface Decisions {
  readonly start: Decision;
  readonly run: Decision;
}

/**
 * Takes both decisions from what is open.
 *
 * @param items - everything open
 * @param readings - readings, for the names
 * @param sheets - sheets, for the day of the last reading
 * @returns go, hold or stop, with everything that stands against it
 */
export function decide(
  items: readonly OpenItem[],
  readings: ReadingsById,
  sheets: readonly SheetTaken[],
): Decisions {
  const start = items.filter(({ bars }) => keepsFromStart(bars));
  const run = items.filter(({ bars }) => bars !== 'nothing');
  const stops = items.some(({ bars }) => bars === 'running');
  const last =
    sheets
      .flatMap(({ day }) => day ?? [])
      .sort()
      .at(-1) ?? '';
  return {
    start: decided('start', start, start.length > 0 ? 'hold' : 'go', readings, last),
    run: decided('run', run, stops ? 'stop' : run.length > 0 ? 'hold' : 'go', readings, last),
  };
}

function decided(
  key: 'start' | 'run',
  against: readonly OpenItem[],
  word: DecisionWord,
  readings: ReadingsById,
  last: string,
): Decision {
  const by = nameIn(readings, `sign-off.${key}`);
  const on = dateIn(readings, `sign-off.${key}-date`);
  const nameless =
    by === undefined ? 'no-name' : on === undefined ? 'no-day' : on < last ? 'older' : undefined;
  return {
    word: word === 'go' && nameless !== undefined ? 'hold' : word,
    against,
    ...(by !== undefined && { by }),
    ...(on !== undefined && { on }),
    ...(nameless !== undefined && { nameless }),
  };
}
