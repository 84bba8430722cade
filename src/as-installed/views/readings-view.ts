/** Readings judged, readings as they were written, and what is missing. */
import { printIssue, sentenceOf } from '../../issues/print.js';
import { isBareNumber } from '../../readings/bare-number.js';
import type { FieldReading } from '../../readings/reading.js';
import { boxesOf } from '../../sheet/sheet.js';
import type { AsInstalled } from '../as-installed.js';
import { judgementRow } from '../judgement-row.js';

/**
 * Judged readings, part by part.
 *
 * @param visit - what came of the visit
 * @returns parts with rows; a part in which nothing was read is left to what is missing
 */
export function judgedView(visit: AsInstalled) {
  return visit.sheet.parts.flatMap(({ id, title }) => {
    const rows = visit.judgements
      .filter(({ part }) => part === id)
      .filter(({ boxes }) => boxes.some((box) => visit.readings.has(box)))
      .map((judgement) => judgementRow(judgement, visit));
    return rows.length === 0 ? [] : [{ title, rows }];
  });
}

/**
 * Every reading as written.
 *
 * @param visit - what came of the visit
 * @returns parts with rows
 */
export function writtenView(visit: AsInstalled) {
  const boxes = boxesOf(visit.sheet);
  return visit.sheet.parts.flatMap(({ id, title }) => {
    const rows = boxes
      .filter(({ part }) => part.id === id)
      .flatMap(({ box, row }) => {
        const reading = visit.readings.get(box.id);
        // A reason stands at every box of its row; it is told once.
        if (reading === undefined || (reading.kind === 'not-read' && !isFirst(box.id, row))) return [];
        const label = row === undefined ? box.label : `${row.label}: ${box.label}`;
        return [{ label, text: textOf(reading), place: placeOf(reading) }];
      });
    return rows.length === 0 ? [] : [{ title, rows }];
  });
}

function isFirst(
  id: string,
  row: { readonly boxes: readonly { readonly id: string }[] } | undefined,
): boolean {
  return row === undefined || row.boxes[0]?.id === id || !row.boxes.some((box) => box.id === id);
}

function textOf(reading: FieldReading): string {
  if (reading.kind === 'not-read')
    return `not read: ${reading.reason === '' ? 'no reason given' : reading.reason}`;
  if (reading.kind === 'unreadable') return `${reading.text} (cannot be read)`;
  const { unit = '' } = reading;
  const isBare = reading.kind === 'number' && isBareNumber(reading.text);
  return isBare && unit !== '' ? `${reading.text} ${unit}` : reading.text;
}

function placeOf({ place }: FieldReading): string {
  if (place.page !== undefined) return `page ${place.page}`;
  return place.text === undefined ? '' : `line ${place.text.line}`;
}

/**
 * What is missing, part by part: readings that were not taken, told with the reason where there is one.
 *
 * @param visit - what came of the visit
 * @returns parts with the places that could not be told
 */
export function missingView(visit: AsInstalled) {
  return visit.sheet.parts.flatMap(({ id, title, trade }) => {
    const open = visit.judgements.filter(({ part, verdict }) => part === id && verdict === 'cannot-tell');
    const reasons = new Map<string, string[]>();
    for (const { reason, title: what, at } of open) {
      const why = whyWords(reason);
      reasons.set(why, [...(reasons.get(why) ?? []), what === at ? at : `${what}, ${at}`]);
    }
    const items = [...reasons].map(([why, places]) => ({ why, places: places.join('; ') }));
    return items.length === 0 ? [] : [{ title, trade, items }];
  });
}

/** Why something cannot be told, in words that stand for several places. */
function whyWords(reason: AsInstalled['judgements'][number]['reason']): string {
  switch (reason?.code) {
    case 'fieldwork.not-filled':
      return 'left empty';
    case 'fieldwork.not-read':
      return String(reason.data.why ?? '');
    case 'fieldwork.unreadable':
      return 'written so that it cannot be read';
    case 'fieldwork.no-limit':
    case 'fieldwork.no-nozzle-basis':
      return 'no limit was given';
    default:
      return reason === undefined ? '' : sentenceOf(reason).message;
  }
}

/** What could not be read or does not belong, in the words of the command line. */
export function unreadView({ issues }: AsInstalled) {
  return issues.map((issue) => {
    const [message = '', ...others] = printIssue(issue);
    return {
      message: message.replace(/^\w+\[[^\]]*\]: /u, ''),
      rest: others.map((line) => line.trim()).join('; '),
    };
  });
}
