/** Readings as a plain file to be kept: sorted by the sheet, the same text for the same readings. */
import { stringify } from 'yaml';
import { EngineError } from '../issues/issue.js';
import { isBareNumber } from '../readings/bare-number.js';
import { DATE_BOX } from '../readings/merge-visits.js';
import { dateIn } from '../readings/read-box.js';
import type { FieldReading } from '../readings/reading.js';
import { READINGS_FORMAT } from '../readings/readings-schema.js';
import { readReadingsText } from '../readings/readings-text.js';
import { understand } from '../readings/understand.js';
import type { ReviewSubject } from '../report/compose-review.js';
import { placeId } from '../report/words/place-id.js';
import { buildSheet } from '../sheet/build-sheet.js';
import { fieldContext } from '../sheet/field-context.js';
import { boxesOf } from '../sheet/sheet.js';
import type { AsInstalled, EarlierVisit } from './as-installed.js';
import { isOfInput } from './of-input.js';

/** A file to be kept. */
export interface StoredReadings {
  /** First words of its name, to which a number is added: `hwp-1-2026-11-05`. */
  readonly name: string;
  readonly date: string;
  readonly text: string;
}

/**
 * The readings of a visit as a file.
 *
 * @param visit - what came of the visit
 * @returns name and text
 * @throws EngineError `fieldwork.store.no-date` where the visit has no day
 */
export function storedReadings(visit: AsInstalled): StoredReadings {
  const { pump, fingerprint, content: made } = visit.review.installation;
  if (visit.date === undefined) {
    throw new EngineError('fieldwork.store.no-date', { file: visit.files.join(', ') });
  }
  const readings = Object.fromEntries(
    boxesOf(visit.sheet).flatMap(({ box }) => {
      const reading = visit.readings.get(box.id);
      if (reading === undefined) return [];
      const value = reading.kind === 'not-read' ? { 'not-read': reading.reason } : withUnit(reading);
      return [[box.id, value] as const];
    }),
  );
  const content = {
    format: READINGS_FORMAT,
    sheet: fingerprint,
    ...(made !== undefined && { content: made }),
    mark: pump.mark,
    units: visit.write.system,
    readings,
  };
  return {
    name: `${placeId(pump.mark) || 'pump'}-${visit.date}`,
    date: visit.date,
    text: stringify(content, { lineWidth: 0 }),
  };
}

/** As written, with the unit of the box behind a bare number: a file to be kept leaves nothing to the sheet. */
function withUnit(reading: FieldReading): string {
  const { text, unit = '' } = reading;
  const isBare = reading.kind === 'number' && unit !== '' && isBareNumber(text);
  return isBare ? `${text} ${unit}` : text;
}

/**
 * A stored file as an earlier visit of the same pump.
 *
 * @param text - content of the file
 * @param file - its name
 * @param review - the review of today
 * @returns the visit; nothing for a file of another pump, without a day, or that is no readings file
 */
export function earlierVisit(text: string, file: string, review: ReviewSubject): EarlierVisit | undefined {
  const read = readReadingsText(text, file);
  if (!read.ok || read.answers.mark !== review.installation.pump.mark) return undefined;
  const units = read.answers.units ?? fieldContext(review).write.system;
  const { readings } = understand(read.answers, buildSheet(review, units), units);
  const date = dateIn(readings, DATE_BOX);
  if (date === undefined) return undefined;
  return { date, readings, otherRevision: !isOfInput(read.answers, review.installation) };
}
