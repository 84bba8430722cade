/** Which field of a file is which box of the sheet: viewers and programs that put files together rename fields. */
import type { Box } from '../sheet/sheet.js';
import type { PdfField } from './pdf/find-fields.js';

/** Fields by the box they are. */
export interface MatchedFields {
  /** Fields of each box; more than one where a viewer made two of one. */
  readonly byBox: ReadonlyMap<string, readonly PdfField[]>;
  /** Fields that are no box of the sheet. */
  readonly unknown: readonly PdfField[];
}

/** Most words that a program puts before the name of a field. */
const MOST_PREFIXES = 3;

/**
 * Finds the field of each box. The exact name comes first; a name with a number behind a sign or in brackets, as
 * `gap-top#1` or `gap-top[0]`, and one with further words before it are taken where nothing has the exact one.
 *
 * @param fields - fields of the file
 * @param boxes - boxes of the sheet
 * @param own - names of hidden fields that are no boxes
 * @returns fields by box, and the rest
 */
export function matchFields(
  fields: readonly PdfField[],
  boxes: readonly Box[],
  own: ReadonlySet<string>,
): MatchedFields {
  const ids = new Set(boxes.map(({ id }) => id));
  const byBox = new Map<string, PdfField[]>();
  const unknown: PdfField[] = [];
  for (const field of fields) {
    const isBox = (name: string): boolean => ids.has(name);
    const id = idOf(field.name, isBox) ?? idOf(field.givenName ?? '', isBox);
    if (id === undefined) {
      if (idOf(field.name, (name) => own.has(name)) === undefined) unknown.push(field);
      continue;
    }
    const known = byBox.get(id);
    if (known) known.push(field);
    else byBox.set(id, [field]);
  }
  return { byBox, unknown };
}

/**
 * The known name that a name stands for.
 *
 * @param name - as the file has it
 * @param isKnown - whether a name is one of those looked for
 * @returns the known name, if there is one
 */
export function idOf(name: string, isKnown: (name: string) => boolean): string | undefined {
  if (isKnown(name)) return name;
  const words = name.split('.').map((word) => word.replace(/#\d+$|\[\d+\]$/, ''));
  for (let from = 0; from <= Math.min(MOST_PREFIXES, words.length - 1); from++) {
    const candidate = words.slice(from).join('.');
    if (isKnown(candidate)) return candidate;
  }
  return undefined;
}
