/** Visits made of a few readings, for tests. */

import { type AsInstalled, asInstalled } from '../../src/as-installed/as-installed.js';
import type { Judgement } from '../../src/as-installed/judgement.js';
import type { Review } from '../../src/index.js';
import type { Answers } from '../../src/readings/answers.js';

/** Answers as if filled in on the sheet of a review. */
export function answersFor(
  review: Review,
  readings: Readonly<Record<string, string>>,
  file = 'a.yaml',
): Answers {
  const { fingerprint, pump } = review.installation;
  return {
    file,
    fingerprint,
    mark: pump.mark,
    issues: [],
    answers: Object.entries(readings).map(([id, text]) => ({
      id,
      text,
      place: { file, text: { file, line: 1, column: 1, path: id } },
    })),
  };
}

export function visitOf(review: Review, readings: Readonly<Record<string, string>>): AsInstalled {
  return asInstalled(review, [answersFor(review, readings)]);
}

/** Judgements of one judge, at one place where a place is named. */
export function judgedBy(visit: AsInstalled, judge: string, at?: string): readonly Judgement[] {
  return visit.judgements.filter(
    (each) => each.judge === judge && (at === undefined || each.at.startsWith(at)),
  );
}
