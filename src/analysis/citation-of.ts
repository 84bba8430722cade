import type { Sourced } from '../input/installation.js';
import type { Citation } from '../sources/index.js';

/**
 * Grounds of a number that came in with the installation: the user's file where it was given, the table where it
 * was looked up.
 *
 * @param sourced - number with its origin
 * @param otherwise - grounds for a value that was assumed
 * @returns citation for the finding
 */
export function citationOf(sourced: Sourced, otherwise: Citation): Citation {
  const { origin } = sourced;
  switch (origin.kind) {
    case 'given':
      return givenIn(origin.document ?? origin.path);
    case 'catalogue':
    case 'computed':
      return origin.citation;
    case 'assumed':
      return otherwise;
  }
}

/**
 * Grounds of a limit that the user's file gives.
 *
 * @param clause - path in the file, or the document it names
 * @returns citation of the input file
 */
export function givenIn(clause: string): Citation {
  return { source: 'input', clause, confidence: 'read' };
}
