import { EngineError } from '../../issues/issue.js';

/**
 * How much of a PDF from a stranger is read. A filled sheet takes some hundred kilobytes, a thousand objects and no
 * nesting to speak of; what goes past these bounds is refused by name, before it costs more than a second or two.
 */
export const LIMITS = {
  /** Largest file [bytes]: room for photographs beside the form. */
  file: 16 * 1024 * 1024,
  /** Objects in the file, those in packed streams included. */
  objects: 40_000,
  /** Values in all objects together. */
  values: 300_000,
  /** Bytes of text read in all objects together. */
  signs: 24 * 1024 * 1024,
  /** Bytes unpacked from all streams together. */
  unpacked: 24 * 1024 * 1024,
  /** Lists and groups in each other; the same for pages, groups of fields and references to references. */
  depth: 60,
  /** Pages looked at for the place of a field. */
  pages: 2000,
  /** Fields and groups of fields looked at. */
  fields: 10_000,
  /** Signs in one field. */
  text: 20_000,
  /** Issues of a kind told one by one; the rest is counted. */
  issues: 20,
} as const;

/** What is left to be spent on one file. */
export interface Budget {
  objects: number;
  values: number;
  signs: number;
  unpacked: number;
}

/** A budget that nothing has been taken from. */
export const freshBudget = (): Budget => ({
  objects: LIMITS.objects,
  values: LIMITS.values,
  signs: LIMITS.signs,
  unpacked: LIMITS.unpacked,
});

/** Takes bytes of text from the budget. @throws EngineError `fieldwork.form.too-much` when there are none left */
export function spendSigns(budget: Budget, signs: number): void {
  budget.signs -= signs;
  if (budget.signs < 0)
    throw new EngineError('fieldwork.form.too-much', { what: 'bytes of text', limit: LIMITS.signs });
}
