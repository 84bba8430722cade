/** A limit that was written down on site, from the maker's manual or the specification. */

import type { FieldLimit } from '../report/limits/field-limit.js';
import type { Measured } from '../sheet/field-context.js';
import { numberIn, textIn } from './read-box.js';
import type { ReadingsById } from './reading.js';

/**
 * The limit written into a maker's row. Without the document it stands in, it is none.
 *
 * @param readings - readings
 * @param id - id of the row's first box
 * @param measured - what it limits
 * @param words - `at most` unless said otherwise
 * @returns limit [SI]; nothing where it or its document is missing
 */
export function siteLimit(
  readings: ReadingsById,
  id: string,
  measured: Measured,
  words: FieldLimit['words'] = 'at most',
): FieldLimit | undefined {
  const value = numberIn(readings, id);
  const document = textIn(readings, `${id}-from`);
  if (value === undefined || document === undefined || !(value > 0)) return undefined;
  return {
    value,
    measured,
    words,
    citation: { source: 'field-sheet', clause: document, confidence: 'read' },
  };
}

/** Code of why there is no limit: a number without its document is told apart from none. */
export function noSiteLimit(
  readings: ReadingsById,
  id: string,
): 'fieldwork.no-limit' | 'fieldwork.limit-without-source' {
  return numberIn(readings, id) === undefined ? 'fieldwork.no-limit' : 'fieldwork.limit-without-source';
}
