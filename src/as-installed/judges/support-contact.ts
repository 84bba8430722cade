import { supportFacts } from '../../model/support-parts.js';
import { numberIn } from '../../readings/read-box.js';
import { siteText } from '../../sheet/field-context.js';
import { loadOf } from '../../sheet/parts/support-expectations.js';
import { namedSupports, supportBoxes } from '../../sheet/support-ids.js';
import type { FieldComparison, Judge } from '../judge.js';

/** What the review takes as carrying carries: paper is held under it. */
export const supportContact: Judge = {
  id: 'support-contact',
  title: 'Support carries',
  part: 'supports',
  trade: 'pipe fitter',
  compare: (subject) =>
    namedSupports(subject.review.layout.supports).flatMap(({ support, word }): readonly FieldComparison[] => {
      const box = supportBoxes(word).gap;
      if (!supportFacts(support).bears || !subject.asked.has(box)) return [];
      const gap = numberIn(subject.readings, box);
      const predicted = loadOf(support.mark, 'filled', subject);
      const carries = predicted !== undefined && predicted > 0;
      return [
        {
          kind: 'stated',
          at: support.mark,
          boxes: [box],
          holds: gap === undefined ? undefined : gap === 0 || !carries,
          told:
            gap === undefined
              ? undefined
              : gap === 0
                ? 'paper held'
                : `gap of ${siteText(gap, 'gap', subject)}`,
          wanted: carries ? `carries ${siteText(predicted, 'force', subject)}` : 'lifted in the review too',
          data: { mark: support.mark, load: siteText(predicted, 'force', subject) ?? '' },
        },
      ];
    }),
};
