import { FLANGES } from '../../as-installed/read-flange.js';
import { numberIn } from '../../readings/read-box.js';
import { alignmentLimits } from '../../report/limits/alignment.js';
import { flangeBoxes } from '../../sheet/parts/before-bolt-up.js';
import type { Judge } from '../judge.js';

/** The bolt holes stand opposite each other. */
export const boltHoles: Judge = {
  id: 'bolt-holes',
  title: 'Bolt holes turned',
  part: 'before-bolt-up',
  trade: 'pipe fitter',
  compare: (subject) =>
    FLANGES.map((which) => {
      const { holes } = flangeBoxes(which);
      return {
        kind: 'measured',
        at: `${which} flange`,
        boxes: [holes],
        demand: numberIn(subject.readings, holes),
        measured: 'gap',
        limit: alignmentLimits(subject.review, which).holes,
        expected: 0,
        data: { which },
      };
    }),
};
