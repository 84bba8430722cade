/** How far the motor top may move at the start. */
import { citationOf } from '../../analysis/citation-of.js';
import type { Installation } from '../../input/installation.js';
import type { FieldLimit } from './field-limit.js';

/**
 * The limit of the file, where there is one: nobody publishes one.
 *
 * @param installation - limits
 * @returns limit [m]
 */
export function startMovementLimit({ limits }: Installation): FieldLimit | undefined {
  const given = limits.startMovement;
  return given === undefined
    ? undefined
    : {
        value: given.value,
        measured: 'gap',
        words: 'at most',
        citation: citationOf(given, { source: 'input', clause: 'limits.start-movement', confidence: 'read' }),
      };
}
