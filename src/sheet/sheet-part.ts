/** One part of the sheet as it is written: a file in `parts`, one line in the registry. */
import type { FieldContext } from './field-context.js';
import type { SheetPart, SheetRow } from './sheet.js';

/** A part before it is made for a unit. */
export interface PartDefinition extends Omit<SheetPart, 'rows' | 'how' | 'caution'> {
  readonly how: string | ((context: FieldContext) => string);
  readonly caution?: string | ((context: FieldContext) => string | undefined);
  /** Rows for what this unit has; none, and the part is left out. */
  readonly rows: (context: FieldContext) => readonly SheetRow[];
}

/**
 * Makes a part of the sheet of one unit.
 *
 * @param part - the definition
 * @param context - review and writer
 * @returns the part; nothing where the unit has nothing of the kind
 */
export function partOf(part: PartDefinition, context: FieldContext): SheetPart | undefined {
  const rows = part.rows(context);
  if (rows.length === 0) return undefined;
  const told = <T>(words: T | ((context: FieldContext) => T)): T =>
    typeof words === 'function' ? (words as (context: FieldContext) => T)(context) : words;
  const caution = told(part.caution);
  return {
    id: part.id,
    title: part.title,
    trade: part.trade,
    how: told(part.how),
    ...(caution !== undefined && { caution }),
    ...(part.commonLimit !== undefined && { commonLimit: part.commonLimit }),
    ...(part.abreast !== undefined && { abreast: part.abreast }),
    rows,
  };
}
