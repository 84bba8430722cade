import { numberIn } from '../../readings/read-box.js';
import { siteLimit } from '../../readings/site-limit.js';
import { ROD_LEAN } from '../../report/limits/rods.js';
import { namedSupports, supportBoxes } from '../../sheet/support-ids.js';
import type { FieldComparison, Judge } from '../judge.js';

/** Rods hang plumb: one that leans pulls sideways with its load. */
export const rodLean: Judge = {
  id: 'rod-lean',
  title: 'Rod out of plumb, over its length',
  part: 'supports',
  trade: 'pipe fitter',
  compare: ({ readings, review }) =>
    namedSupports(review.layout.supports).flatMap(({ support, word }): readonly FieldComparison[] => {
      const rods = support.part?.rods;
      if (rods === undefined) return [];
      const ids = supportBoxes(word);
      const lean = numberIn(readings, ids.lean);
      const length = numberIn(readings, ids.rodLength) ?? rods.length;
      return [
        {
          kind: 'measured',
          at: support.mark,
          boxes: [ids.lean, ids.rodLength],
          demand: lean === undefined || length === undefined ? undefined : Math.abs(lean) / length,
          measured: 'share',
          limit: siteLimit(readings, 'supports.lean-limit', 'share') ?? ROD_LEAN,
          expected: 0,
          data: { mark: support.mark },
        },
      ];
    }),
};
