import { FLANGES, gapBeyondGasket, gapIds } from '../../as-installed/read-flange.js';
import { alignmentLimits } from '../../report/limits/alignment.js';
import { flangeBoxes } from '../../sheet/parts/before-bolt-up.js';
import type { Judge } from '../judge.js';

/** The gap is that of the gasket: what is wider or narrower is pulled or pressed by the bolts. */
export const flangeGap: Judge = {
  id: 'flange-gap',
  title: 'Gap beyond the gasket',
  part: 'before-bolt-up',
  trade: 'pipe fitter',
  compare: (subject) =>
    FLANGES.map((which) => {
      const beyond = gapBeyondGasket(which, subject);
      return {
        kind: 'measured',
        at: `${which} flange`,
        boxes: [...gapIds(which), flangeBoxes(which).gasket],
        demand: beyond,
        measured: 'gap',
        limit: alignmentLimits(subject.review, which).gap,
        expected: 0,
        data: { which, way: (beyond ?? 0) < 0 ? 'narrower than' : 'wider than' },
      };
    }),
};
