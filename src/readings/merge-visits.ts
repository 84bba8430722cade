/** Several sheets of one unit put together: the later day holds; what differs on one day is taken from neither. */
import type { Issue } from '../issues/issue.js';
import { boxesOf, type FieldSheet } from '../sheet/sheet.js';
import { dateIn } from './read-box.js';
import type { FieldReading, ReadingsById } from './reading.js';
import { issueAt, spotOf, type Understood } from './understand.js';

/** Box with the day of the visit. */
export const DATE_BOX = 'identity.date';

/**
 * Puts sheets together.
 *
 * @param visits - understood sheets
 * @param sheet - for the words of the boxes
 * @returns one set of readings, and what the sheets disagree on
 */
export function mergeVisits(
  visits: readonly Understood[],
  sheet: FieldSheet,
): { readonly readings: ReadingsById; readonly issues: readonly Issue[] } {
  const tips = new Map(boxesOf(sheet).map(({ box }) => [box.id, box.tip]));
  const dayOf = ({ readings }: Understood): string => dateIn(readings, DATE_BOX) ?? '';
  const inOrder = [...visits].sort((a, b) => (dayOf(a) < dayOf(b) ? -1 : dayOf(a) > dayOf(b) ? 1 : 0));
  const merged = new Map<string, { readonly reading: FieldReading; readonly day: string }>();
  const issues: Issue[] = [];
  for (const visit of inOrder) {
    const day = dayOf(visit);
    for (const [id, reading] of visit.readings) {
      const earlier = merged.get(id);
      // That something was not read takes no reading away.
      if (earlier !== undefined && reading.kind === 'not-read') continue;
      const differs =
        earlier !== undefined &&
        earlier.day === day &&
        earlier.reading.kind !== 'not-read' &&
        valueText(earlier.reading) !== valueText(reading);
      if (!differs) {
        merged.set(id, { reading, day });
        continue;
      }
      const issue = issueAt(
        {
          code: 'fieldwork.reading.differs',
          data: {
            ...spotOf(reading.place),
            label: tips.get(id) ?? id,
            found: reading.text,
            other: earlier.reading.text,
            otherFile: earlier.reading.place.file,
          },
        },
        reading.place,
      );
      issues.push(issue);
      const { text, place } = reading;
      merged.set(id, { reading: { id, text, place, kind: 'unreadable', issue }, day });
    }
  }
  return { readings: new Map([...merged].map(([id, { reading }]) => [id, reading])), issues };
}

function valueText(reading: FieldReading): string {
  switch (reading.kind) {
    case 'number':
      return String(reading.value);
    case 'choice':
      return reading.choice;
    case 'date':
      return reading.date;
    default:
      return reading.text;
  }
}
