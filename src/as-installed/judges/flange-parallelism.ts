import { FLANGES, gapIds, gapsAt } from '../../as-installed/read-flange.js';
import { alignmentLimits } from '../../report/limits/alignment.js';
import { faceSide } from '../../report/words/flange-words.js';
import { siteText } from '../../sheet/field-context.js';
import type { Judge } from '../judge.js';

/** The faces are parallel: the difference of the gap across the face, and the side it opens to. */
export const flangeParallelism: Judge = {
  id: 'flange-parallelism',
  title: 'Faces out of parallel',
  part: 'before-bolt-up',
  trade: 'pipe fitter',
  compare: (subject) =>
    FLANGES.map((which) => {
      const gaps = gapsAt(which, subject);
      return {
        kind: 'measured',
        at: `${which} flange`,
        boxes: gapIds(which),
        demand: gaps?.difference,
        measured: 'gap',
        limit: alignmentLimits(subject.review, which).parallelism,
        expected: 0,
        data: {
          which,
          side: gaps === undefined ? '' : faceSide(gaps.widest, subject.write),
          off: siteText(gaps?.offPlane, 'gap', subject) ?? '',
        },
      };
    }),
};
