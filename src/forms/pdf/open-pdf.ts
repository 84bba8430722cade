/** Opens a PDF as far as its form goes: objects, catalogue, and what the file says of itself. */
import { EngineError } from '../../issues/issue.js';
import { findObjects } from './find-objects.js';
import { type Budget, freshBudget, LIMITS } from './limits.js';
import { standsAt } from './signs.js';
import { type Resolve, unpackObjects } from './unpack.js';
import { isKind, type PdfGroup, type PdfValue } from './value.js';

/** A PDF whose objects are known. */
export interface OpenPdf {
  readonly resolve: Resolve;
  readonly catalog: PdfGroup;
  /** What the file says of itself: title, keywords. */
  readonly about: PdfGroup | undefined;
  /** Whether some streams could not be read, so that fields may be missing. */
  readonly isDamaged: boolean;
  /** Whether there is a script in it. */
  readonly hasScript: boolean;
  readonly budget: Budget;
}

/** The mark of a PDF stands within the first bytes. */
const MARK_WITHIN = 1024;

/**
 * Opens a PDF.
 *
 * @param bytes - the file
 * @returns its objects
 * @throws EngineError `fieldwork.form.not-pdf`, `.too-large`, `.encrypted`, `.cut-off`, `.no-catalog`, `.too-much`, `.too-deep`
 */
export function openPdf(bytes: Uint8Array): OpenPdf {
  if (bytes.length > LIMITS.file)
    throw new EngineError('fieldwork.form.too-large', { size: bytes.length, limit: LIMITS.file });
  if (!hasMark(bytes)) throw new EngineError('fieldwork.form.not-pdf');
  const budget = freshBudget();
  const { objects, packed, trailers, isCutOff } = findObjects(bytes, budget);
  const resolve: Resolve = (value) => {
    let found = value;
    for (let step = 0; isKind(found, 'ref'); step++) {
      if (step > LIMITS.depth) return undefined;
      found = objects.get(found.number)?.value;
    }
    return found;
  };
  if (trailers.some(({ entries }) => isKind(resolve(entries.get('Encrypt')), 'group')))
    throw new EngineError('fieldwork.form.encrypted');
  // What was filled in stands at the end: half of it would pass for the whole.
  if (isCutOff) throw new EngineError('fieldwork.form.cut-off');
  let isDamaged = false;
  for (const stream of packed) if (!unpackObjects(stream, objects, resolve, budget)) isDamaged = true;
  const groupAt = (key: string): PdfGroup | undefined => {
    // The last trailer that says it: an appended one says only what has changed.
    for (const { entries } of [...trailers].reverse()) {
      const value = resolve(entries.get(key));
      if (isKind(value, 'group')) return value;
    }
    return undefined;
  };
  const values = [...objects.values()].map(({ value }) => value);
  const catalog = groupAt('Root');
  if (!catalog) throw new EngineError('fieldwork.form.no-catalog');
  const hasScript = values.some((value) => holdsScript(value, 0));
  return { resolve, catalog, about: groupAt('Info'), isDamaged, hasScript, budget };
}

function hasMark(bytes: Uint8Array): boolean {
  for (let at = 0; at < Math.min(bytes.length, MARK_WITHIN); at++)
    if (standsAt(bytes, at, '%PDF-')) return true;
  return false;
}

/** Whether a value holds a script, at any depth. */
function holdsScript(value: PdfValue, depth: number): boolean {
  if (isKind(value, 'list')) return value.items.some((item) => holdsScript(item, depth + 1));
  if (!isKind(value, 'group')) return false;
  const action = value.entries.get('S');
  if (value.entries.has('JS') || (isKind(action, 'name') && action.name === 'JavaScript')) return true;
  for (const inner of value.entries.values()) if (holdsScript(inner, depth + 1)) return true;
  return false;
}
