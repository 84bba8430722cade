/** A field sheet as a view of finished text for its template, and what the PDF says of itself. */
import {
  type Box,
  type FieldSheet,
  NO_LIMIT,
  notReadBox,
  remarksBox,
  remarksClassBox,
  type SheetPart,
  type SheetRow,
} from '../sheet/sheet.js';

/** What the form was made for, in words that the reader knows again. */
export const FORM_KIND = 'pipeborne-field-sheet/1';

/** Names of the hidden fields that say what the sheet was made from. */
export const STATED = {
  kind: 'about-this-sheet.kind',
  fingerprint: 'about-this-sheet.fingerprint',
  content: 'about-this-sheet.content',
  mark: 'about-this-sheet.mark',
  revision: 'about-this-sheet.revision',
  units: 'about-this-sheet.units',
} as const;

/** Before the system of units among the keywords of the file. */
export const UNITS_KEYWORD = 'units-';

/** Before the fingerprint among the keywords of the file. */
export const FINGERPRINT_KEYWORD = 'input-';

/**
 * The view of a sheet.
 *
 * @param sheet - what it asks
 * @returns strings, truth values and lists
 */
export function sheetView(sheet: FieldSheet) {
  const { mark, project, revision, date, fingerprint } = sheet;
  return {
    title: sheetTitle(sheet),
    mark,
    project,
    revision,
    date,
    fingerprint,
    parts: sheet.parts.map((part, i) => partView(part, String(i + 1))),
  };
}

/** Title of the document. */
export const sheetTitle = ({ mark, project }: FieldSheet): string =>
  `Field sheet of pump ${mark}, ${project}`;

/**
 * The hidden fields of a sheet.
 *
 * @param sheet - what it was made from
 * @returns value by name of field
 */
export function statedOf({
  mark,
  revision,
  fingerprint,
  content,
  units,
}: FieldSheet): Readonly<Record<string, string>> {
  return {
    [STATED.kind]: FORM_KIND,
    [STATED.fingerprint]: fingerprint,
    ...(content === undefined ? {} : { [STATED.content]: content }),
    [STATED.mark]: mark,
    [STATED.revision]: revision,
    ...(units === undefined ? {} : { [STATED.units]: units }),
  };
}

/** Words by which a program finds the file again when its fields are gone. */
export const keywordsOf = ({ mark, revision, fingerprint, units }: FieldSheet): readonly string[] => [
  FORM_KIND,
  `${FINGERPRINT_KEYWORD}${fingerprint}`,
  `pump-${mark.replace(/\s+/g, '-')}`,
  ...(revision === '' ? [] : [`revision-${revision.replace(/\s+/g, '-')}`]),
  ...(units === undefined ? [] : [`${UNITS_KEYWORD}${units}`]),
];

function partView(part: SheetPart, number: string) {
  const { id, title, trade, how, caution = '', abreast = 3 } = part;
  const sources = [...new Set(part.rows.flatMap(({ source }) => source ?? []))];
  const common = commonOf(part);
  return {
    number,
    id,
    title,
    trade: capital(trade),
    how,
    caution,
    abreast: String(abreast),
    hasSources: sources.length > 0,
    sources: sources.map((words, i) => ({ letter: letterOf(i), words })),
    common: common?.limit === undefined ? '' : commonLine(common.limit, part.commonLimit),
    commonLetter: common?.source === undefined ? '' : letterOf(sources.indexOf(common.source)),
    rows: part.rows.map((row) => rowView(isLike(row, common) ? unlimited(row) : row, sources)),
    remarks: boxView(remarksBox(part)),
    remarksClass: boxView(remarksClassBox(part)),
  };
}

function rowView(row: SheetRow, sources: readonly string[]) {
  const { label, expected = '', limit, source } = row;
  const why = notReadBox(row);
  return {
    label,
    alone: row.alone === true,
    expected,
    limit: limit === undefined ? '' : limitLine(limit),
    letter: source === undefined ? '' : letterOf(sources.indexOf(source)),
    boxes: row.boxes.map(boxView),
    notRead: why === undefined ? false : boxView(why),
  };
}

/** The row whose limit most rows of the part have, where the part says that there is one. */
function commonOf({ rows, commonLimit }: SheetPart): SheetRow | undefined {
  if (commonLimit === undefined) return undefined;
  const count = (row: SheetRow): number => rows.filter((other) => isLike(other, row)).length;
  const limited = rows.filter(({ limit }) => limit !== undefined);
  const [most] = [...limited].sort((a, b) => count(b) - count(a));
  return most !== undefined && count(most) > 1 ? most : undefined;
}

const isLike = (row: SheetRow, common: SheetRow | undefined): boolean =>
  common !== undefined && row.limit === common.limit && row.source === common.source;

function unlimited({ limit: _limit, source: _source, ...row }: SheetRow): SheetRow {
  return row;
}

function commonLine(limit: string, where = ''): string {
  return limit === NO_LIMIT ? `${capital(NO_LIMIT)}.` : `Limit ${where}: ${limit}.`;
}

/** A limit as a line: what is no number is wanted, not limited. */
function limitLine(limit: string): string {
  if (limit === NO_LIMIT) return capital(NO_LIMIT);
  return /\d|\b(?:within|at most|at least)\b/.test(limit) ? `Limit: ${limit}` : `Wanted: ${limit}`;
}

/** A source is named once a part, under a letter. */
const letterOf = (index: number): string => String.fromCharCode('a'.charCodeAt(0) + index);

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** How a day is written, in short above its box and in full in its tip. */
const DAY = 'y-m-d';

function boxView({ id, kind, label, tip, unit = '', choices = [], expected = '', lines = 1 }: Box) {
  return {
    id,
    kind,
    label: kind === 'date' ? [label, DAY].filter((words) => words !== '').join(', ') : label,
    tip: kind === 'date' ? `${tip} (year-month-day, as 2026-03-14)` : unit === '' ? tip : `${tip} [${unit}]`,
    unit,
    expected,
    lines: String(lines),
    choices: choices.map((words) => ({ words })),
  };
}
