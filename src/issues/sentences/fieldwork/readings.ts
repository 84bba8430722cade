import type { Sentences } from '../sentence.js';
import { say, tell } from '../tell.js';

/** Where an answer stands: a file, and in a PDF its page and field. */
export type AnswerSpot = { readonly file: string; readonly page?: number; readonly field?: string };

/** An answer with the words of its box. */
type Told = AnswerSpot & { readonly found: string; readonly label: string };

/** Page and field of a PDF, where the answer stands in one. */
function where(data: AnswerSpot): string {
  const place = [
    ...(data.page === undefined ? [] : [`page ${say(data, 'page')}`]),
    ...(data.field === undefined ? [] : [`field ${say(data, 'field')}`]),
  ];
  return place.length === 0 ? '' : ` (${say(data, 'file')}, ${place.join(', ')})`;
}

const answer = (data: Told) => `"${say(data, 'found')}" for "${say(data, 'label')}"${where(data)}`;

/** Most parts that are named; where more differ it is another line. */
const NAMED = 8;

/** What differs between the input of a sheet and the one at hand, by name. */
function apart({ parts }: { readonly parts: readonly string[] }): string {
  if (parts.length === 0) return '';
  const rest = parts.length > NAMED ? ` and ${parts.length - NAMED} more` : '';
  return `; what differs: ${say({ parts: parts.slice(0, NAMED) }, 'parts')}${rest}`;
}

/** Sentences on readings files and on single readings that cannot be understood. */
export const fieldworkReadingsSentences = {
  'fieldwork.readings.not-a-map': () => ({
    message: 'the file of readings holds no keys',
    wanted: 'format, sheet and readings',
    example: 'format: pipeborne-readings/1',
  }),
  'fieldwork.readings.unknown-key': (data: { found: string; known: readonly string[] }) =>
    tell(data, `"${say(data, 'found')}" is not known here`, { wanted: `one of ${say(data, 'known')}` }),
  'fieldwork.readings.format': (data: { found: string; wanted: string }) => ({
    message: `the format is ${say(data, 'found')}`,
    wanted: say(data, 'wanted'),
    example: `format: ${say(data, 'wanted')}`,
  }),
  'fieldwork.readings.units': (data: { found: string }) => ({
    message: `"${say(data, 'found')}" is no system of units`,
    wanted: 'us or si',
    example: 'units: si',
  }),
  'fieldwork.readings.no-sheet': () => ({
    message: 'the file does not say which sheet it was read with',
    wanted: 'the fingerprint printed on the sheet',
    example: 'sheet: 3f0a1c… (64 signs)',
  }),
  'fieldwork.readings.no-readings': () => ({
    message: 'the file holds no readings',
    wanted: 'readings by the ids of their boxes',
    example: 'readings: {electrical.volts-ab: 461 V}',
  }),
  'fieldwork.readings.too-many': (data: { most: number }) => ({
    message: `the file holds more than ${say(data, 'most')} readings`,
    wanted: 'the readings of one sheet',
  }),
  'fieldwork.readings.not-a-value': (data: { found: string; id: string }) => ({
    message: `"${say(data, 'found')}" for ${say(data, 'id')} is no reading`,
    wanted: 'a number with its unit, a word, a day, or why it was not read',
    example: '{not-read: no access}',
  }),
  'fieldwork.readings.not-a-table': (data: { reason: string }) => ({
    message: `the table cannot be read: ${say(data, 'reason')}`,
    wanted: 'CSV with the columns reading, value, not read because',
  }),
  'fieldwork.readings.no-head': (data: { found: string; wanted: string }) => ({
    message: `the first line of the table is "${say(data, 'found')}"`,
    wanted: 'the names of its columns',
    example: say(data, 'wanted'),
  }),
  'fieldwork.readings.too-many-cells': (data: { id: string }) => ({
    message: `the line of ${say(data, 'id')} has more than three cells`,
    wanted: 'a decimal comma in quotes, or a table parted by semicolons',
    example: `${say(data, 'id')};12,5 mm`,
  }),
  'fieldwork.readings.twice': (data: { id: string; line: number }) => ({
    message: `${say(data, 'id')} stands in line ${say(data, 'line')} already`,
    wanted: 'each reading once',
  }),
  'fieldwork.reading.not-a-number': (data: Told & { unit: string; units: string }) => ({
    message: `${answer(data)} cannot be read as a number`,
    wanted: `a number in ${say(data, 'unit') || 'whole units'}, or with its own unit${data.units === '' ? '' : `: ${say(data, 'units')}`}`,
  }),
  'fieldwork.reading.not-a-count': (data: Told) => ({
    message: `${answer(data)} is no count`,
    wanted: 'a number without a unit',
  }),
  'fieldwork.reading.comma': (data: Told) => ({
    message: `the comma in ${answer(data)} may part decimals or thousands`,
    wanted: 'a point for decimals, or no sign between thousands',
    example: '1.25 or 1250',
  }),
  'fieldwork.reading.two-numbers': (data: Told) => ({
    message: `${answer(data)} is two numbers`,
    wanted: 'one reading; each of several has a box of its own',
  }),
  'fieldwork.reading.peak': (data: Told) => ({
    message: `${answer(data)} is a peak value`,
    wanted: 'the r.m.s. velocity, as the meter shows it when it is set so',
    hint: 'a peak is turned into r.m.s. only where the motion is one pure wave',
  }),
  'fieldwork.reading.impossible': (data: Told) => ({
    message: `${answer(data)} cannot be: no instrument shows it there`,
    wanted: 'the reading again, with its unit',
  }),
  'fieldwork.reading.unlikely': (data: Told) => ({
    message: `${answer(data)} is unlikely there: a slip of the pen or of the unit`,
    wanted: 'the reading again; or the same with the word confirmed behind it',
    example: `${say(data, 'found')} confirmed`,
    hint: 'until then it counts where it stands against the pump, and never for it',
  }),
  'fieldwork.reading.negative': (data: Told) => ({
    message: `${answer(data)} is below zero, which this cannot be`,
    wanted: 'the reading without a minus',
  }),
  'fieldwork.reading.not-a-choice': (data: Told & { words: readonly string[] }) => ({
    message: `${answer(data)} is none of the answers`,
    wanted: `one of: ${say(data, 'words')}`,
  }),
  'fieldwork.reading.not-a-day': (data: Told) => ({
    message: `${answer(data)} is no day that can be told for sure`,
    wanted: 'year, month and day, or the month by its name',
    example: '2026-10-02, or 2 October 2026',
  }),
  'fieldwork.reading.no-reason': (data: AnswerSpot & { label: string }) => ({
    message: `"${say(data, 'label')}"${where(data)} was told as not read, without a reason`,
    wanted: 'why',
    example: 'n/a: not fitted',
  }),
  'fieldwork.reading.not-on-sheet': (data: AnswerSpot & { id: string; found: string }) =>
    tell(
      data,
      `"${say(data, 'id')}"${where(data)} is no box of this sheet; its answer was "${say(data, 'found')}"`,
      {
        wanted: 'the id of a box; pipeborne field-sheet prints them all',
      },
    ),
  'fieldwork.reading.differs': (data: {
    label: string;
    found: string;
    file: string;
    other: string;
    otherFile: string;
  }) => ({
    message: `"${say(data, 'label')}" is "${say(data, 'found')}" in ${say(data, 'file')} and "${say(data, 'other')}" in ${say(data, 'otherFile')}`,
    wanted: 'one reading: on a later day by a named person, or on a sheet that says which it corrects',
    hint: 'until then both stand, and the worse counts',
  }),
  'fieldwork.sheet.no-day': (data: { file: string }) => ({
    message: `${say(data, 'file')} has no day that can be told for sure`,
    wanted: 'the day of the visit in the box identity.date',
    example: 'identity.date: 2026-10-02',
    hint: 'nobody knows what its readings correct and what corrects them: each counts where it stands against the pump',
  }),
  'fieldwork.sheet.no-name': (data: { file: string }) => ({
    message: `${say(data, 'file')} does not say who read it`,
    wanted: 'a name in the box identity.by',
    hint: 'without a name its readings correct none, and its remarks are classed by nobody',
  }),
  'fieldwork.sheet.other-revision': (data: {
    file: string;
    found: string;
    wanted: string;
    parts: readonly string[];
  }) => ({
    message: `${say(data, 'file')} was filled in on a sheet of another input: ${say(data, 'found')}; this input is ${say(data, 'wanted')}${apart(data)}`,
    wanted: 'the input the sheet was made from',
    hint: '--other-revision takes the readings all the same; whatever the two do not share is told',
  }),
  'fieldwork.sheet.unmarked': (data: { file: string; wanted: string }) => ({
    message: `${say(data, 'file')} does not say which input its sheet was made from; this input is ${say(data, 'wanted')}`,
    wanted: 'a sheet that pipeborne field-sheet wrote, or a readings file with its fingerprint',
    hint: '--other-revision takes the readings all the same',
  }),
  'fieldwork.sheet.other-pump': (data: { file: string; found: string; wanted: string }) => ({
    message: `${say(data, 'file')} is of pump ${say(data, 'found')}; this input is of ${say(data, 'wanted')}`,
    wanted: 'the sheet of this pump',
  }),
  'fieldwork.store.no-date': (data: { file: string }) => ({
    message: `the readings of ${say(data, 'file')} have no date, so they cannot be stored`,
    wanted: 'the day of the visit in the box identity.date',
    example: 'identity.date: 2026-10-02',
  }),
  'fieldwork.store.corrupt': (data: { file: string; reason: string }) => ({
    message: `the store cannot be relied on at ${say(data, 'file')}: ${say(data, 'reason')}`,
    wanted: 'the file as it was kept, from a copy',
    hint: 'nothing is decided from a record with a gap; without --store the sheets at hand are judged by themselves',
  }),
  'fieldwork.store.too-many': (data: { folder: string; most: number }) => ({
    message: `the folder ${say(data, 'folder')} holds more than ${say(data, 'most')} stored readings`,
    wanted: 'a folder of the readings of a few pumps',
  }),
} as const satisfies Sentences;
