/**
 * Sheets as they are kept: one entry a sheet, as it was filled in, with who read it when and with what, and the digests of the
 * entries before it. What is put together of several sheets is never kept: it follows from them.
 */
import { stringify } from 'yaml';
import { digestOf } from '../input/digest.js';
import { EngineError } from '../issues/issue.js';
import type { Answers } from '../readings/answers.js';
import { textIn } from '../readings/read-box.js';
import { READINGS_FORMAT } from '../readings/readings-schema.js';
import { readReadingsText } from '../readings/readings-text.js';
import { sheetTaken } from '../readings/sheet-taken.js';
import { understand } from '../readings/understand.js';
import type { ReviewSubject } from '../report/compose-review.js';
import { placeId } from '../report/words/place-id.js';
import { buildSheet } from '../sheet/build-sheet.js';
import { fieldContext } from '../sheet/field-context.js';
import type { StoredReadings } from './stored-readings.js';

/** An entry of the store as read. */
export interface KeptSheet {
  readonly file: string;
  readonly answers: Answers;
  /** Digest of its text, by which the entries after it name it. */
  readonly digest: string;
  /** Digests of the entries before it; none for the first, and for files of the first version. */
  readonly before: readonly string[];
  /** Digest of what was filled in: the same sheet is kept once. */
  readonly content: string;
}

const INSTRUMENTS = ['gauges', 'clamp-meter', 'vibration-meter', 'dial', 'feelers'] as const;

/** What was filled in, as plain data, whatever file it came in. */
function contentOf({ fingerprint, content, mark, answers }: Answers, units: string) {
  const readings = Object.fromEntries(
    [...answers]
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map(({ id, text, notRead }) => [id, notRead === undefined ? text : { 'not-read': notRead }]),
  );
  return {
    format: READINGS_FORMAT,
    sheet: fingerprint ?? 'not known',
    ...(content !== undefined && { content }),
    mark,
    units,
    readings,
  };
}

/** Digest of what was filled in on a sheet. */
export function contentDigest(answers: Answers, review: ReviewSubject): string {
  return digestOf(JSON.stringify(contentOf(answers, unitsOf(answers, review))));
}

const unitsOf = ({ units }: Answers, review: ReviewSubject): string =>
  units ?? fieldContext(review).write.system;

/**
 * A sheet as an entry.
 *
 * @param answers - as filled in
 * @param review - the review of its pump
 * @param before - digests of the entries that nothing comes after
 * @returns name and text
 * @throws EngineError `fieldwork.store.no-date` where the sheet has no day that can be told for sure
 */
export function sheetToKeep(
  answers: Answers,
  review: ReviewSubject,
  before: readonly string[],
): StoredReadings & { readonly digest: string } {
  const system = answers.units ?? fieldContext(review).write.system;
  const { day, by, readings } = sheetTaken(understand(answers, buildSheet(review, system), system));
  if (day === undefined) throw new EngineError('fieldwork.store.no-date', { file: answers.file });
  const { mark } = review.installation.pump;
  const instruments = Object.fromEntries(
    INSTRUMENTS.flatMap((key) => {
      const serial = textIn(readings, `identity.${key}`);
      return serial === undefined ? [] : [[key, serial] as const];
    }),
  );
  const time = textIn(readings, 'identity.time');
  const witness = textIn(readings, 'identity.witness');
  const kept = {
    source: answers.file,
    day,
    ...(time !== undefined && { time }),
    by: by ?? 'no name',
    ...(witness !== undefined && { witness }),
    instruments,
    before: [...before].sort(),
  };
  const content = { ...contentOf(answers, system), mark, kept };
  const text = stringify(content, { lineWidth: 0 });
  return { name: `${placeId(mark) || 'pump'}-${day}`, date: day, text, digest: digestOf(text) };
}

/**
 * An entry as it was kept.
 *
 * @param text - content of the file
 * @param file - its name
 * @param review - the review of today
 * @returns the entry; nothing for one of another pump
 * @throws EngineError `fieldwork.store.corrupt` for what is no entry
 */
export function keptSheet(text: string, file: string, review: ReviewSubject): KeptSheet | undefined {
  const read = readReadingsText(text, file);
  if (!read.ok) throw corrupt(file, 'it cannot be read as readings');
  const { answers } = read;
  if (answers.mark !== review.installation.pump.mark) return undefined;
  return {
    file,
    answers,
    digest: digestOf(text),
    before: answers.keptAfter ?? [],
    content: contentDigest(answers, review),
  };
}

/**
 * Entries that nothing comes after.
 *
 * @param kept - all entries of a pump
 * @returns their digests
 * @throws EngineError `fieldwork.store.corrupt` where an entry that another names is not there as it was
 */
export function lastOf(kept: readonly KeptSheet[]): readonly string[] {
  const there = new Set(kept.map(({ digest }) => digest));
  for (const { file, before } of kept) {
    if (before.some((digest) => !there.has(digest)))
      throw corrupt(file, 'an entry before it was changed or is gone');
  }
  const named = new Set(kept.flatMap(({ before }) => before));
  return kept.map(({ digest }) => digest).filter((digest) => !named.has(digest));
}

function corrupt(file: string, reason: string): EngineError {
  return new EngineError('fieldwork.store.corrupt', { file, reason });
}
