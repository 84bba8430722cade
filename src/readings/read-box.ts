/** Looking up readings by the ids of their boxes. */
import type { ReadingsById } from './reading.js';

/** Number in a box [SI], where one was read. */
export function numberIn(readings: ReadingsById, id: string): number | undefined {
  const reading = readings.get(id);
  return reading?.kind === 'number' ? reading.value : undefined;
}

/** Numbers in several boxes; nothing unless all are there. */
export function numbersIn(readings: ReadingsById, ids: readonly string[]): readonly number[] | undefined {
  const found = ids.flatMap((id) => numberIn(readings, id) ?? []);
  return found.length === ids.length ? found : undefined;
}

/** Answer in a box of choices. */
export function choiceIn(readings: ReadingsById, id: string): string | undefined {
  const reading = readings.get(id);
  return reading?.kind === 'choice' ? reading.choice : undefined;
}

/** Words in a box. */
export function textIn(readings: ReadingsById, id: string): string | undefined {
  const reading = readings.get(id);
  return reading?.kind === 'text' ? reading.text : undefined;
}

/** Day in a box, as `2026-10-02`. */
export function dateIn(readings: ReadingsById, id: string): string | undefined {
  const reading = readings.get(id);
  return reading?.kind === 'date' ? reading.date : undefined;
}

/** Words that stand where a name should, and are none. */
const NO_NAME = /^(?:n\.? ?\/? ?a\.?|none|nobody|unknown|tbd|not applicable)$/iu;

/** Name of a person in a box: two letters at least, and no word for nobody. */
export function nameIn(readings: ReadingsById, id: string): string | undefined {
  const text = textIn(readings, id)?.trim().replace(/\s+/gu, ' ');
  return text !== undefined && /\p{L}{2}/u.test(text) && !NO_NAME.test(text) ? text : undefined;
}
