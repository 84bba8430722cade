/** The height over the motor that drawing it takes. */

import { givenIn } from '../../analysis/citation-of.js';
import type { Subject } from '../../analysis/subject.js';
import { accessOf } from '../../checks/room/access-subject.js';
import type { FieldLimit } from './field-limit.js';

/**
 * Height needed over the motor, as the maker gives it.
 *
 * @param subject - pump and room
 * @returns limit [m]; nothing where nobody gives it
 */
export function headroomLimit(subject: Subject): FieldLimit | undefined {
  const { withdrawal, withdrawalSource } = accessOf(subject);
  return withdrawal === undefined
    ? undefined
    : {
        value: withdrawal,
        measured: 'distance',
        words: 'at least',
        citation: givenIn(withdrawalSource ?? 'pump.outline.withdrawal'),
      };
}
