import { choiceIn } from '../../readings/read-box.js';
import { namedSupports, supportBoxes } from '../../sheet/support-ids.js';
import type { Judge } from '../judge.js';

/** The pump stands as the review takes it: bolted, or free to slide. Every load turns on it. */
export const baseState: Judge = {
  id: 'base-state',
  title: 'Pump base as reviewed',
  part: 'supports',
  trade: 'millwright',
  compare: ({ readings, review, asked }) =>
    namedSupports(review.layout.supports).flatMap(({ support, word }) => {
      const box = supportBoxes(word).bolts;
      if (support.kind !== 'pump base' || !asked.has(box)) return [];
      const told = choiceIn(readings, box);
      const wanted = review.installation.pump.mount === 'bolted' ? 'bolted tight' : 'free to slide';
      return [
        {
          kind: 'stated' as const,
          at: 'pump base',
          boxes: [box],
          holds: told === undefined ? undefined : told === wanted,
          told,
          wanted,
          data: { told: told ?? '', wanted },
        },
      ];
    }),
};
