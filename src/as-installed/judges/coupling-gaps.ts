import { numbersIn } from '../../readings/read-box.js';
import { siteLimit } from '../../readings/site-limit.js';
import { gapEvenness } from '../../report/limits/coupling.js';
import { COUPLING_GAPS } from '../../sheet/parts/coupling.js';
import type { Judge } from '../judge.js';

/** The gaps of a split coupling are alike: else it stands crooked, and the shaft runs out at the seal. */
export const couplingGaps: Judge = {
  id: 'coupling-gaps',
  title: 'Gaps of the coupling differ',
  part: 'coupling',
  trade: 'millwright',
  compare: ({ readings, asked, write }) => {
    const boxes = COUPLING_GAPS.map((key) => `coupling.gap-${key}`);
    if (!boxes.every((box) => asked.has(box))) return [];
    const read = numbersIn(readings, boxes);
    return [
      {
        kind: 'measured',
        at: 'coupling',
        boxes,
        demand: read === undefined ? undefined : Math.max(...read) - Math.min(...read),
        measured: 'gap',
        expected: 0,
        limit: siteLimit(readings, 'coupling.gap-limit', 'gap') ?? gapEvenness(write.system),
      },
    ];
  },
};
