/** The checks of the review that turn on the supports, made again on the line as found. */
import type { Finding } from '../checks/finding.js';
import { allChecks } from '../checks/index.js';
import { runCheck } from '../checks/run-check.js';
import type { AsFound } from './as-found.js';

/** Checks that turn on where supports stand and what they carry. */
const TURN_ON_SUPPORTS: readonly string[] = [
  'nozzle-loads',
  'nozzle-principal-stress',
  'nozzle-combined',
  'sustained-stress',
  'support-span',
  'rod-load',
  'attachment-load',
  'support-load',
  'first-support-pump',
  'first-support-bend',
  'support-uplift',
];

/**
 * Findings of the line as found.
 *
 * @param found - the line as found
 * @returns findings; none where nothing read differs from the drawing
 */
export function foundFindings(found: AsFound): readonly Finding[] {
  if (found.kind !== 'solved') return [];
  return allChecks
    .filter(({ id }) => TURN_ON_SUPPORTS.includes(id))
    .flatMap((check) => runCheck(check, found.subject));
}
