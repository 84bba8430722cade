/** Reading a readings file: YAML or JSON. */
import { readText } from '../input/read-text.js';
import { type Coded, type Issue, issueOf } from '../issues/issue.js';
import type { UnitSystem } from '../units/index.js';
import type { Answer, Answers } from './answers.js';
import { READINGS_FORMAT } from './readings-schema.js';

/** What reading a file gave: answers, or everything wrong with the file. */
export type ReadReadings =
  | { readonly ok: true; readonly answers: Answers }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Most readings of one file. */
export const MOST_READINGS = 5000;
/** Longest text of one reading [characters]. */
export const LONGEST_READING = 2000;

const KEYS = ['format', 'sheet', 'content', 'mark', 'units', 'readings'] as const;

/** Digests of the entries before one that a store has kept. */
function keptAfter(kept: unknown): readonly string[] | undefined {
  if (!isRecord(kept) || !Array.isArray(kept.before)) return undefined;
  return kept.before.flatMap((each) => (typeof each === 'string' ? [each] : []));
}

/**
 * Reads a readings file of format `pipeborne-readings/1`: YAML 1.2 or JSON. Never throws; all issues come at once.
 *
 * @param text - content of the file
 * @param file - its name, for places in messages
 * @returns answers as they stand there, or the issues
 */
export function readReadingsText(text: string, file: string): ReadReadings {
  const read = readText(text, file);
  const issues: Issue[] = read.faults.map(({ stated, place }) => issueOf('error', stated, place));
  if (issues.length > 0) return { ok: false, issues };
  const wrong = (told: Coded, path: readonly (string | number)[]) =>
    void issues.push(issueOf('error', told, read.placeOf(path, 'value')));
  if (!isRecord(read.content)) {
    wrong({ code: 'fieldwork.readings.not-a-map', data: {} }, []);
    return { ok: false, issues };
  }
  const { format, sheet, content: made, mark, units, readings, kept, ...others } = read.content;
  for (const key of Object.keys(others)) {
    wrong({ code: 'fieldwork.readings.unknown-key', data: { found: key, known: [...KEYS] } }, [key]);
  }
  if (format !== READINGS_FORMAT) {
    wrong(
      {
        code: 'fieldwork.readings.format',
        data: {
          found: shown(format),
          wanted: READINGS_FORMAT,
        },
      },
      'format' in read.content ? ['format'] : [],
    );
  }
  if (units !== undefined && !isSystem(units))
    wrong({ code: 'fieldwork.readings.units', data: { found: shown(units) } }, ['units']);
  const fingerprint = wordOf(sheet);
  if (fingerprint === undefined)
    wrong({ code: 'fieldwork.readings.no-sheet', data: {} }, 'sheet' in read.content ? ['sheet'] : []);
  const answers: Answer[] = [];
  if (!isRecord(readings))
    wrong(
      { code: 'fieldwork.readings.no-readings', data: {} },
      'readings' in read.content ? ['readings'] : [],
    );
  else if (Object.keys(readings).length > MOST_READINGS) {
    wrong({ code: 'fieldwork.readings.too-many', data: { most: MOST_READINGS } }, ['readings']);
  } else {
    for (const [id, value] of Object.entries(readings)) {
      const place = { file, text: read.placeOf(['readings', id], 'value') };
      const answer = answerOf(value);
      if (answer === undefined) {
        wrong({ code: 'fieldwork.readings.not-a-value', data: { id, found: shown(value) } }, [
          'readings',
          id,
        ]);
      } else if (answer.text !== '' || answer.notRead !== undefined) answers.push({ id, ...answer, place });
    }
  }
  if (issues.length > 0) return { ok: false, issues };
  const known = wordOf(mark);
  const after = keptAfter(kept);
  const content = wordOf(made);
  return {
    ok: true,
    answers: {
      file,
      answers,
      issues: [],
      ...(fingerprint !== undefined && { fingerprint }),
      ...(content !== undefined && { content }),
      ...(known !== undefined && { mark: known }),
      ...(isSystem(units) && { units }),
      ...(after !== undefined && { keptAfter: after }),
    },
  };
}

/** Text of one value, or why it was not read; nothing for lists and whatever else is no reading. */
function answerOf(value: unknown): Pick<Answer, 'text' | 'notRead'> | undefined {
  const text = wordOf(value);
  if (text !== undefined) return text.length > LONGEST_READING ? undefined : { text };
  if (value === null) return { text: '' };
  if (!isRecord(value)) return undefined;
  const { 'not-read': reason, ...others } = value;
  const why = wordOf(reason);
  return why === undefined || why.length > LONGEST_READING || Object.keys(others).length > 0
    ? undefined
    : { text: '', notRead: why };
}

function wordOf(value: unknown): string | undefined {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'string' || typeof value === 'number' ? String(value).trim() : undefined;
}

/** Whether a word names a system of units. */
export function isSystem(value: unknown): value is UnitSystem {
  return value === 'us' || value === 'si';
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Something of a file, short enough for a message. */
function shown(value: unknown): string {
  const text = value === undefined ? 'nothing' : typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
