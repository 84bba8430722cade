/**
 * All sheets of a unit put together. What comes of it follows from the sheets and not from their order.
 *
 * A reading takes the place of another where its sheet is of a later day and names who read it, or says that it corrects. What
 * is not corrected so stands: where two readings of one box stand, neither is taken for the truth, and both are judged.
 */
import type { Issue } from '../issues/issue.js';
import { boxesOf, type FieldSheet } from '../sheet/sheet.js';
import type { FieldReading, ReadingsById } from './reading.js';
import { DATE_BOX, type SheetTaken } from './sheet-taken.js';
import { issueAt, spotOf } from './understand.js';
import { variantsOf } from './variants.js';

export { DATE_BOX } from './sheet-taken.js';

/** One reading of a box, and the sheet it stands on. */
interface Entry {
  readonly reading: FieldReading;
  readonly sheet: SheetTaken;
}

/** What all sheets say together. */
export interface Evidence {
  /** One reading a box; one that sheets disagree on cannot be read, and says so. */
  readonly readings: ReadingsById;
  /** Every way in which the disagreements may be settled, one at least. */
  readonly variants: readonly ReadingsById[];
  /** True where there are more ways than are tried: then what is in conflict counts as not known as well. */
  readonly isCut: boolean;
  readonly issues: readonly Issue[];
}

/** Boxes that tell of their own sheet: those of several sheets do not contradict each other. */
const OF_THE_SHEET =
  /^identity\.(?:time|by|witness|corrects|drawing|gauges|clamp-meter|vibration-meter|dial|feelers)|(?:-not-read|\.remarks|\.remarks-class)$|^open-items\.|^items\./u;

/**
 * Puts sheets together.
 *
 * @param sheets - sheets as taken
 * @param sheet - for the words of the boxes
 * @returns readings, the ways in which disagreements may be settled, and what the sheets disagree on
 */
export function mergeVisits(sheets: readonly SheetTaken[], sheet: FieldSheet): Evidence {
  const tips = new Map(boxesOf(sheet).map(({ box }) => [box.id, box.tip]));
  const byBox = new Map<string, Entry[]>();
  for (const taken of sheets) {
    for (const [id, reading] of taken.readings) {
      const known = byBox.get(id);
      if (known) known.push({ reading, sheet: taken });
      else byBox.set(id, [{ reading, sheet: taken }]);
    }
  }
  const readings = new Map<string, FieldReading>();
  const conflicts = new Map<string, readonly FieldReading[]>();
  const issues: Issue[] = [];
  for (const [id, all] of [...byBox].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const entries = all.sort(byOrder);
    if (id === DATE_BOX) {
      const last = entries.filter(({ reading }) => reading.kind === 'date').at(-1) ?? entries.at(-1);
      if (last) readings.set(id, last.reading);
      continue;
    }
    const isText = entries.every(({ reading }) => reading.kind === 'text');
    const standing = isText && OF_THE_SHEET.test(id) ? entries : standingOf(entries);
    const different = distinct(standing);
    const [first, second] = different;
    if (first === undefined) continue;
    if (second === undefined) readings.set(id, first.reading);
    else if (isText || OF_THE_SHEET.test(id)) readings.set(id, joined(different));
    else {
      const { reading } = second;
      const data = {
        ...spotOf(reading.place),
        label: tips.get(id) ?? id,
        found: reading.text,
        other: first.reading.text,
        otherFile: first.sheet.file,
      };
      const issue = issueAt({ code: 'fieldwork.reading.differs', data }, reading.place);
      issues.push(issue);
      const text = different.map((each) => each.reading.text).join(' / ');
      readings.set(id, { id, text, place: reading.place, kind: 'unreadable', issue });
      conflicts.set(
        id,
        different.map((each) => each.reading),
      );
    }
  }
  return { readings, issues, ...variantsOf(readings, conflicts) };
}

/** Entries that nothing has taken the place of. */
function standingOf(entries: readonly Entry[]): readonly Entry[] {
  const left = entries.filter((entry) => !entries.some((other) => takesPlaceOf(other, entry)));
  const read = left.filter(({ reading }) => reading.kind !== 'not-read');
  if (read.length === 0) return left;
  // That something was not read takes no reading away; a state that was answered once may have changed since.
  const isState = read.every(({ reading }) => reading.kind === 'choice');
  if (!isState) return read;
  const since = left.filter(
    ({ reading, sheet }) =>
      reading.kind === 'not-read' &&
      read.every(({ sheet: { day } }) => sheet.day === undefined || day === undefined || sheet.day > day),
  );
  return [...read, ...since];
}

/** Whether a reading is told, by who has a name and on a day, to stand for another. */
function takesPlaceOf(later: Entry, earlier: Entry): boolean {
  const { day, by, corrects } = later.sheet;
  const { kind } = later.reading;
  if (later === earlier || kind === 'not-read' || kind === 'unreadable') return false;
  if (day === undefined || by === undefined) return false;
  const before = earlier.sheet.day;
  if (before !== undefined && day > before) return true;
  return (
    corrects !== undefined && earlier.sheet.corrects === undefined && (before === undefined || day >= before)
  );
}

/** Entries that say different things, each once, in an order that is always the same. */
function distinct(entries: readonly Entry[]): readonly Entry[] {
  const told = new Map<string, Entry>();
  // The last of equal ones stands for all: it is the latest.
  for (const entry of entries) told.set(valueText(entry.reading), entry);
  return [...told.values()].sort(byOrder);
}

/** By day, undated first, then by what is written. */
function byOrder(a: Entry, b: Entry): number {
  const key = ({ reading, sheet }: Entry) =>
    [sheet.day ?? '', reading.kind, reading.text, reading.place.file, sheet.by ?? ''].join('\u0000');
  return key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0;
}

/** Words of several sheets beside each other. */
function joined(entries: readonly Entry[]): FieldReading {
  const [first] = entries;
  if (first === undefined) throw new RangeError('nothing to join');
  const { id, place } = first.reading;
  return { id, place, kind: 'text', text: entries.map(({ reading }) => reading.text).join('; ') };
}

/** What a reading says, alike for `470` and `470.0 V`. */
function valueText(reading: FieldReading): string {
  switch (reading.kind) {
    case 'number':
      return `number ${(Math.round(reading.value * 1e9) / 1e9).toString()} ${reading.unlikely === true}`;
    case 'choice':
      return `choice ${reading.choice}`;
    case 'date':
      return `date ${reading.date}`;
    case 'not-read':
      return 'not read';
    default:
      return `${reading.kind} ${reading.text.trim().replace(/\s+/gu, ' ')}`;
  }
}
