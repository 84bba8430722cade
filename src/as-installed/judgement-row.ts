/** One judgement as printed text. */
import { sentenceOf } from '../issues/print.js';
import type { ReadingsById } from '../readings/reading.js';
import { limitText, sourceText } from '../report/limits/field-limit.js';
import { type FieldContext, siteText } from '../sheet/field-context.js';
import type { Judgement } from './judgement.js';

/**
 * A judgement as strings and truth values.
 *
 * @param judgement - the judgement
 * @param context - writer and readings
 * @returns what was read, what was expected, the limit, its source, the verdict, and why
 */
export function judgementRow(
  judgement: Judgement,
  context: FieldContext & { readonly readings: ReadingsById },
) {
  const { measured, demand, limit, limitWords, citation, expected, told, wanted, verdict, reason } =
    judgement;
  const raw = judgement.read ?? demand;
  const number = measured === undefined ? undefined : siteText(raw, measured, context);
  const off =
    judgement.read !== undefined && demand !== undefined && measured !== undefined && demand > 0
      ? `, off by ${siteText(demand, measured, context)}`
      : '';
  const hasLimit = limit !== undefined && measured !== undefined && citation !== undefined;
  const words = limitWords === 'within' || limitWords === 'at least' ? limitWords : 'at most';
  const whole = hasLimit ? limitText({ value: limit, measured, citation, words }, context) : '';
  return {
    at: judgement.at,
    title: judgement.title,
    read: told ?? (number === undefined ? asWritten(judgement, context) : `${number}${off}`),
    expected: (measured === undefined ? undefined : siteText(expected, measured, context)) ?? '–',
    limit: whole === '' ? (wanted ?? '') : whole,
    source: citation === undefined ? '' : sourceText({ citation }),
    verdict,
    comparison: judgement.comparison,
    exceeds: verdict === 'exceeds',
    ratio: context.write.ratio(judgement.ratio),
    why: reason === undefined ? '' : sentenceOf(reason).message,
  };
}

/** What stands in the boxes, where no number came of them. */
function asWritten({ boxes }: Judgement, { readings }: { readonly readings: ReadingsById }): string {
  const [broken] = boxes.flatMap((id) => {
    const reading = readings.get(id);
    if (reading?.kind === 'unreadable') return [`“${reading.text}”`];
    return reading?.kind === 'not-read' && reading.reason !== '' ? [`not read: ${reading.reason}`] : [];
  });
  return broken ?? 'not read';
}
