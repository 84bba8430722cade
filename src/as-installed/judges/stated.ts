/** Questions that are answered by a word: one entry of the table each. */

import { choiceIn } from '../../readings/read-box.js';
import { namedSupports } from '../../sheet/support-ids.js';
import type { FieldComparison, FieldSubject, Judge } from '../judge.js';
import { questions } from './questions.js';
import type { Stated } from './stated-question.js';

const PARTS = /^[a-z-]+/u;

/** Judges of all questions. */
export const statedJudges: readonly Judge[] = questions.map((question): Judge => {
  const { id, title, trade, box } = question;
  const sample = box.source.replace(/^\^/u, '').replaceAll('\\', '');
  return {
    id,
    title,
    part: question.part ?? PARTS.exec(sample)?.[0] ?? '',
    trade,
    compare: (subject) => comparisons(question, subject),
  };
});

function comparisons(question: Stated, subject: FieldSubject): readonly FieldComparison[] {
  const { box, wanted = ['yes'], citation, unsure = [] } = question;
  return [...subject.asked]
    .filter((id) => box.test(id))
    .map((id): FieldComparison => {
      const told = choiceIn(subject.readings, id);
      return {
        kind: 'stated',
        at: placeOf(id, question.at, subject),
        boxes: [id],
        holds: told === undefined || unsure.includes(told) ? undefined : wanted.includes(told),
        told,
        wanted: wanted[0] ?? 'yes',
        ...(citation && { limit: { citation } }),
        data: { told: told ?? '' },
      };
    });
}

function placeOf(id: string, at: string, { review }: FieldSubject): string {
  const [, word = ''] = id.split('.');
  if (at === 'flange') return `${word} flange`;
  if (at !== 'support') return at;
  return namedSupports(review.layout.supports).find((each) => each.word === word)?.support.mark ?? word;
}
