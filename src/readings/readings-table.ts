/** Reading a readings file: CSV, as a spreadsheet writes it. */
import { parse } from 'csv-parse/browser/esm/sync';
import { coded, type Issue, type IssueCode, type IssueDataOf, issueOf } from '../issues/issue.js';
import type { Answer } from './answers.js';
import { READINGS_FORMAT } from './readings-schema.js';
import { isSystem, LONGEST_READING, MOST_READINGS, type ReadReadings } from './readings-text.js';

/** Words of the first column that say something of the whole file. */
const HEAD = ['format', 'sheet', 'mark', 'units'] as const;

/** Head of the table: the last column may be left away. */
export const COLUMNS = ['reading', 'value', 'not read because'] as const;

/**
 * Reads a CSV of readings: columns `reading`, `value`, `not read because`; rows `format`, `sheet`, `mark` and `units` say what
 * it belongs to. Separated by commas, semicolons or tabs, whichever its first line holds, so that a decimal comma
 * survives where the spreadsheet uses one. Never throws.
 *
 * @param text - content of the file
 * @param file - its name, for places in messages
 * @returns answers as they stand there, or the issues
 */
export function readReadingsTable(text: string, file: string): ReadReadings {
  const issues: Issue[] = [];
  const at = (line: number, path = '') => ({ file, line, column: 1, path });
  const wrong = <Code extends IssueCode>(code: Code, line: number, data: IssueDataOf<Code>, path = '') =>
    void issues.push(issueOf('error', coded(code, data), at(line, path)));
  const rows = rowsOf(text);
  if ('fault' in rows) {
    wrong('fieldwork.readings.not-a-table', rows.line, { reason: rows.fault });
    return { ok: false, issues };
  }
  const [first, ...rest] = rows;
  const names = first?.cells.map((cell) => cell.trim().toLowerCase()) ?? [];
  if (names[0] !== COLUMNS[0] || names[1] !== COLUMNS[1]) {
    wrong('fieldwork.readings.no-head', 1, {
      found: names.join(', ').slice(0, 80),
      wanted: COLUMNS.join(','),
    });
    return { ok: false, issues };
  }
  const head = new Map<string, string>();
  const answers: Answer[] = [];
  const lines = new Map<string, number>();
  if (rest.length > MOST_READINGS) wrong('fieldwork.readings.too-many', 1, { most: MOST_READINGS });
  for (const { line, cells } of rest.slice(0, MOST_READINGS)) {
    const [id = '', value = '', why = '', ...others] = cells.map((cell) => cell.trim());
    if (id === '' && value === '' && why === '') continue;
    if (others.some((cell) => cell !== '')) wrong('fieldwork.readings.too-many-cells', line, { id });
    else if (lines.has(id)) wrong('fieldwork.readings.twice', line, { id, line: lines.get(id) ?? 0 });
    else if (value.length > LONGEST_READING || why.length > LONGEST_READING) {
      wrong('fieldwork.readings.not-a-value', line, { id, found: `${value.slice(0, 40)}…` });
    } else if (HEAD.some((word) => word === id)) head.set(id, value);
    else if (value !== '' || why !== '') {
      const place = { file, text: at(line, id) };
      answers.push({ id, text: value, place, ...(value === '' && { notRead: why }) });
    }
    lines.set(id, line);
  }
  if (head.get('format') !== READINGS_FORMAT) {
    wrong('fieldwork.readings.format', lines.get('format') ?? 1, {
      found: head.get('format') ?? 'nothing',
      wanted: READINGS_FORMAT,
    });
  }
  const fingerprint = head.get('sheet') ?? '';
  if (fingerprint === '') wrong('fieldwork.readings.no-sheet', lines.get('sheet') ?? 1, {});
  const units = head.get('units');
  if (units !== undefined && !isSystem(units))
    wrong('fieldwork.readings.units', lines.get('units') ?? 1, { found: units });
  if (issues.length > 0) return { ok: false, issues };
  const mark = head.get('mark');
  return {
    ok: true,
    answers: {
      file,
      answers,
      issues: [],
      fingerprint,
      ...(mark !== undefined && { mark }),
      ...(isSystem(units) && { units }),
    },
  };
}

interface Row {
  readonly line: number;
  readonly cells: readonly string[];
}

function rowsOf(text: string): readonly Row[] | { readonly fault: string; readonly line: number } {
  const head = text.split(/\r?\n/u, 1)[0] ?? '';
  const delimiter = [';', '\t'].find((sign) => head.includes(sign)) ?? ',';
  try {
    const records = parse(text, {
      bom: true,
      delimiter,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      max_record_size: 16_384,
      // With `info` each record comes with its line, which the library's own types do not say.
    }) as unknown as readonly { readonly record: string[]; readonly info: { readonly lines: number } }[];
    return records.map(({ record, info }) => ({ line: info.lines, cells: record }));
  } catch (error) {
    const line =
      error instanceof Error && 'lines' in error && typeof error.lines === 'number' ? error.lines : 1;
    return { fault: error instanceof Error ? (error.message.split('\n')[0] ?? '') : '', line };
  }
}
