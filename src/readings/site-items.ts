/**
 * What was written down beside the readings: findings and remarks. Each is known by who wrote it, when, where and in which
 * words, never by the line it stands in: a later sheet adds, and nothing is lost when sheets are put together.
 */
import { digestOf } from '../input/digest.js';
import { itemBox } from '../sheet/item-boxes.js';
import { OPEN_ITEMS } from '../sheet/parts/open-items.js';
import { boxesOf, type FieldSheet, remarksBox } from '../sheet/sheet.js';
import { choiceIn, textIn } from './read-box.js';
import type { SheetTaken } from './sheet-taken.js';

/** What an item keeps from happening. */
export type ItemBars = 'start' | 'acceptance' | 'nothing';

/** One finding or remark. */
export interface SiteItem {
  /** First signs of the digest of who, when, where and the words. */
  readonly key: string;
  readonly words: string;
  /** Part of the sheet it stands in. */
  readonly part: string;
  readonly kind: 'item' | 'remark';
  readonly by?: string;
  readonly day?: string;
  readonly files: readonly string[];
  readonly trade: string;
  /** The gravest of what named persons say it keeps from happening; a start as long as nobody has said. */
  readonly bars: ItemBars;
  /** Who said so. */
  readonly classedBy?: string;
  /** How it was mended, by whom, when: only then it is closed. */
  readonly closed?: { readonly statement: string; readonly by: string; readonly day: string };
  /** True where it was called closed, and statement, name or day are missing. */
  readonly halfClosed: boolean;
}

interface Noted {
  readonly words: string;
  readonly part: string;
  readonly kind: SiteItem['kind'];
  readonly sheet: SheetTaken;
  readonly trade?: string | undefined;
  readonly bars?: ItemBars | undefined;
  readonly closed: boolean;
  readonly done?: string | undefined;
}

const CLASSES: Readonly<Record<string, ItemBars>> = {
  yes: 'start',
  'blocks start': 'start',
  no: 'acceptance',
  acceptance: 'acceptance',
  'blocks acceptance': 'acceptance',
  noted: 'nothing',
};

/** Gravest first. */
const GRAVEST: readonly ItemBars[] = ['start', 'acceptance', 'nothing'];

/**
 * Every finding and remark of all sheets.
 *
 * @param sheets - sheets as taken, in any order
 * @param sheet - for the parts
 * @returns items by day and words; the same whatever the order of the sheets
 */
export function siteItems(sheets: readonly SheetTaken[], sheet: FieldSheet): readonly SiteItem[] {
  const byKey = new Map<string, Noted[]>();
  for (const noted of sheets.flatMap((taken) => notedOn(taken, sheet))) {
    const key = keyOf(noted);
    byKey.set(key, [...(byKey.get(key) ?? []), noted]);
  }
  return [...byKey]
    .map(([key, noted]) => itemOf(key, noted, sheets))
    .sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : orderOf(a) > orderOf(b) ? 1 : 0));
}

const orderOf = ({ day = '', part, words, key }: SiteItem): string => [day, part, words, key].join('\u0000');

const plain = (words: string): string => words.trim().toLowerCase().replace(/\s+/gu, ' ');

function keyOf({ words, part, sheet }: Noted): string {
  return digestOf([plain(sheet.by ?? ''), sheet.day ?? '', part, plain(words)].join('\n')).slice(0, 10);
}

/** What one sheet says beside its readings. */
function notedOn(taken: SheetTaken, sheet: FieldSheet): readonly Noted[] {
  const { readings } = taken;
  const items = Array.from({ length: OPEN_ITEMS }, (_, index) => `open-items.item-${index + 1}`);
  return [
    ...items.flatMap((id): readonly Noted[] => {
      const words = textIn(readings, id);
      if (words === undefined) return [];
      return [
        {
          words,
          part: 'open-items',
          kind: 'item',
          sheet: taken,
          trade: choiceIn(readings, `${id}-trade`),
          bars: CLASSES[choiceIn(readings, `${id}-blocks`) ?? ''],
          closed: choiceIn(readings, `${id}-closed`) === 'yes',
          done: textIn(readings, `${id}-done`),
        },
      ];
    }),
    ...sheet.parts.flatMap((part): readonly Noted[] => {
      const { id } = remarksBox(part);
      const words = textIn(readings, id);
      if (words === undefined) return [];
      const bars = CLASSES[choiceIn(readings, `${id}-class`) ?? ''];
      return [{ words, part: part.id, kind: 'remark', sheet: taken, bars, closed: false }];
    }),
    ...besideAnswers(taken, sheet),
  ];
}

/** A reason for not reading, beside a row in which everything was read, is a remark: nobody can say which of both holds. */
function besideAnswers(taken: SheetTaken, sheet: FieldSheet): readonly Noted[] {
  return boxesOf(sheet).flatMap(({ box, row, part }): readonly Noted[] => {
    if (row === undefined || !box.id.endsWith('-not-read')) return [];
    const words = textIn(taken.readings, box.id);
    if (words === undefined) return [];
    const isAnswered = row.boxes.every(({ id }) => {
      const reading = taken.readings.get(id);
      return reading !== undefined && reading.kind !== 'not-read';
    });
    return isAnswered
      ? [{ words: `${row.label}: ${words}`, part: part.id, kind: 'remark', sheet: taken, closed: false }]
      : [];
  });
}

function itemOf(key: string, noted: readonly Noted[], sheets: readonly SheetTaken[]): SiteItem {
  const inOrder = [...noted].sort((a, b) => (a.sheet.file < b.sheet.file ? -1 : 1));
  const [first] = inOrder;
  if (first === undefined) throw new RangeError('an item without words');
  const { words, part, kind, sheet } = first;
  const classings = [
    ...noted.flatMap(({ bars, sheet: { by } }) =>
      bars !== undefined && by !== undefined ? [{ bars, by }] : [],
    ),
    ...sheets.flatMap(({ readings, by }) => {
      const bars = CLASSES[choiceIn(readings, itemBox(key, 'class')) ?? ''];
      return bars !== undefined && by !== undefined ? [{ bars, by }] : [];
    }),
  ];
  const gravest = GRAVEST.find((bars) => classings.some((each) => each.bars === bars));
  const by = classings
    .filter(({ bars }) => bars === gravest)
    .map((each) => each.by)
    .sort()[0];
  const closings = closingsOf(key, noted, sheets);
  const closed = closings.find(isWhole);
  const trades = noted.flatMap(({ trade }) => trade ?? []).sort();
  return {
    key,
    words,
    part,
    kind,
    ...(sheet.by !== undefined && { by: sheet.by }),
    ...(sheet.day !== undefined && { day: sheet.day }),
    files: [...new Set(noted.map((each) => each.sheet.file))].sort(),
    trade: trades[0] ?? 'commissioning agent',
    bars: gravest ?? 'start',
    ...(by !== undefined && { classedBy: by }),
    ...(closed && { closed }),
    halfClosed: closed === undefined && closings.length > 0,
  };
}

interface Closing {
  readonly statement?: string | undefined;
  readonly by?: string | undefined;
  readonly day?: string | undefined;
}

function isWhole(closing: Closing): closing is { statement: string; by: string; day: string } {
  return closing.statement !== undefined && closing.by !== undefined && closing.day !== undefined;
}

/** Everything that calls an item closed, not before it was written, in an order that is always the same. */
function closingsOf(key: string, noted: readonly Noted[], sheets: readonly SheetTaken[]): readonly Closing[] {
  const own = noted.flatMap(({ closed, done, sheet: { by, day } }): readonly Closing[] =>
    closed || done !== undefined ? [{ statement: closed ? done : undefined, by, day }] : [],
  );
  const later = sheets.flatMap(({ readings, by, day }): readonly Closing[] => {
    const statement = textIn(readings, itemBox(key, 'done'));
    return statement === undefined ? [] : [{ statement, by, day }];
  });
  const written = noted[0]?.sheet.day ?? '';
  const text = ({ statement = '', by = '', day = '' }: Closing) => [day, by, statement].join('\u0000');
  return [...own, ...later]
    .filter(({ day }) => day === undefined || day >= written)
    .sort((a, b) => (text(a) < text(b) ? -1 : 1));
}
