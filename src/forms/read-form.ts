/** Reads a filled sheet back, whoever's viewer filled it. */
import { coded, EngineError, type Issue, issueOf } from '../issues/issue.js';
import type { FilledBox, FormReading } from '../readings/form-reading.js';
import { boxOfItem } from '../sheet/box-of-item.js';
import { type Box, boxesOf, type FieldSheet, type SheetRow } from '../sheet/sheet.js';
import { STATED } from './compose-sheet.js';
import { filledValue } from './fill-value.js';
import { matchFields } from './match-fields.js';
import { findFields, type PdfField } from './pdf/find-fields.js';
import { LIMITS } from './pdf/limits.js';
import { type OpenPdf, openPdf } from './pdf/open-pdf.js';
import { isKind } from './pdf/value.js';
import { statedIn } from './stated-in.js';

/**
 * Reads a filled sheet.
 *
 * @param bytes - the PDF as it came back
 * @param sheet - the sheet it should be
 * @returns what stands in each box, what the file says it was made from, and everything that could not be read
 * @throws EngineError `fieldwork.form.not-pdf`, `.too-large`, `.too-much`, `.too-deep`, `.encrypted`, `.no-catalog`,
 *   `.no-fields` for a sheet that was printed or flattened, `.only-xfa`, `.other-form`
 */
export async function readForm(bytes: Uint8Array, sheet: FieldSheet): Promise<FormReading> {
  return readFields(openForm(bytes), sheet);
}

/**
 * Reads a filled sheet that may ask for less, as one of a later visit does: rows of which nothing is there are not on
 * it, and a row of which only a part is there has lost it. The file is gone through once.
 *
 * @param bytes - the PDF as it came back
 * @param sheet - the whole sheet
 * @returns as `readForm`, of the rows that are on it
 * @throws EngineError as `readForm`
 */
export async function readPartOfForm(bytes: Uint8Array, sheet: FieldSheet): Promise<FormReading> {
  const form = openForm(bytes);
  const { boxes } = readFields(form, sheet);
  const isThere = (row: SheetRow) => row.boxes.some(({ id }) => boxes[id] !== undefined);
  const parts = sheet.parts.map((part) => ({ ...part, rows: part.rows.filter(isThere) }));
  const onIt = parts.filter(({ rows }) => rows.length > 0);
  return readFields(form, onIt.length === 0 ? sheet : { ...sheet, parts: onIt });
}

/** A PDF gone through, with its fields. */
interface OpenForm {
  readonly pdf: OpenPdf;
  readonly fields: readonly PdfField[];
  readonly stated: ReturnType<typeof statedIn>;
}

function openForm(bytes: Uint8Array): OpenForm {
  const pdf = openPdf(bytes);
  const fields = findFields(pdf);
  const stated = statedIn(pdf, fields);
  refuseWithoutFields(pdf, fields, stated.isOurs);
  return { pdf, fields, stated };
}

function readFields({ pdf, fields, stated }: OpenForm, sheet: FieldSheet): FormReading {
  const onSheet = boxesOf(sheet).map(({ box }) => box);
  // Boxes of earlier items are named by the items, and stand on the sheets of later visits.
  const wanted = [...onSheet, ...fields.flatMap(({ name }) => boxOfItem(name) ?? [])];
  const own = new Set<string>(Object.values(STATED));
  const matched = matchFields(fields, wanted, own);
  if (matched.byBox.size === 0)
    throw new EngineError('fieldwork.form.other-form', {
      found: fields.length,
      example: fields[0]?.name ?? '',
    });

  const unread: Issue[] = [];
  const boxes: Record<string, FilledBox> = {};
  for (const box of wanted) {
    const filled = readBox(pdf, box, matched.byBox.get(box.id) ?? [], unread);
    if (filled) boxes[box.id] = filled;
  }
  // A sheet written before some boxes were thought of has not lost them.
  const isOlder = !wanted.some(({ id, since }) => since !== undefined && matched.byBox.has(id));
  const missing = wanted.filter(
    ({ id, since }) => !matched.byBox.has(id) && !(isOlder && since !== undefined),
  );
  const issues = [
    ...(pdf.isDamaged ? [issueOf('warning', { code: 'fieldwork.form.damaged', data: {} })] : []),
    ...(pdf.hasScript ? [issueOf('warning', { code: 'fieldwork.form.script-ignored', data: {} })] : []),
    ...shortened(unread),
    ...shortened(
      missing.map(({ id, tip }) =>
        issueOf('error', { code: 'fieldwork.form.field-missing', data: { field: id, box: tip } }),
      ),
    ),
    ...shortened(
      matched.unknown.map((field) =>
        issueOf('warning', { code: 'fieldwork.form.field-unknown', data: placed(field) }),
      ),
    ),
  ];
  const { fingerprint, content, mark, revision, units } = stated;
  return {
    boxes,
    ...(fingerprint === undefined ? {} : { fingerprint }),
    ...(content === undefined ? {} : { content }),
    ...(mark === undefined ? {} : { mark }),
    ...(revision === undefined ? {} : { revision }),
    ...(units === undefined ? {} : { units }),
    issues,
  };
}

/** Name and page of a field for a message. */
function placed(field: PdfField) {
  return { field: field.name.slice(0, 200), ...(field.page === undefined ? {} : { page: field.page }) };
}

function refuseWithoutFields(
  { catalog, resolve }: OpenPdf,
  fields: readonly PdfField[],
  isOurs: boolean,
): void {
  const form = resolve(catalog.entries.get('AcroForm'));
  const hasXfa = isKind(form, 'group') && form.entries.has('XFA');
  if (fields.length > 0) return;
  if (hasXfa) throw new EngineError('fieldwork.form.only-xfa');
  throw new EngineError('fieldwork.form.no-fields', { isOurs: isOurs ? 'yes' : 'no' });
}

/** Reads a box from the field that is it; where a viewer made two of one, they must not contradict each other. */
function readBox(
  pdf: OpenPdf,
  box: Box,
  candidates: readonly PdfField[],
  issues: Issue[],
): FilledBox | undefined {
  const read = candidates.map((field) => ({ field, value: filledValue(pdf, field, box) }));
  for (const { field, value } of read)
    if ('code' in value)
      issues.push(
        issueOf(
          'error',
          coded(value.code, {
            ...placed(field),
            box: box.tip,
            found: value.found.slice(0, 200),
            wanted: box.kind,
            choices: box.choices ?? [],
          }),
        ),
      );
  const texts = read.flatMap(({ field, value }) => ('text' in value ? [{ field, text: value.text }] : []));
  if (texts.length < read.length) return undefined;
  const said = texts.filter(({ text }) => text.trim() !== '');
  if (new Set(said.map(({ text }) => text.trim())).size > 1) {
    const found = said.map(({ text }) => text.slice(0, 100));
    const data = { ...placed(candidates[0] as PdfField), box: box.tip, found };
    issues.push(issueOf('error', { code: 'fieldwork.form.field-twice', data }));
    return undefined;
  }
  const chosen = said[0] ?? texts[0];
  if (!chosen) return undefined;
  const { field, text } = chosen;
  return { id: box.id, text, field: field.name, ...(field.page === undefined ? {} : { page: field.page }) };
}

/** Hundreds of equal complaints help nobody: the rest of a kind is counted. */
function shortened(issues: readonly Issue[]): readonly Issue[] {
  const rest = issues.slice(LIMITS.issues);
  const [first] = rest;
  if (!first) return issues;
  const kept = issues.slice(0, LIMITS.issues);
  return [...kept, issueOf(first.severity, { code: 'fieldwork.form.more', data: { count: rest.length } })];
}
