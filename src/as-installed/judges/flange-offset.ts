import { FLANGES } from '../../as-installed/read-flange.js';
import type { Vec3 } from '../../model/conventions.js';
import { nozzleAxes } from '../../model/nozzle-axes.js';
import { numbersIn } from '../../readings/read-box.js';
import { alignmentLimits } from '../../report/limits/alignment.js';
import { faceSide } from '../../report/words/flange-words.js';
import { flangeBoxes } from '../../sheet/parts/before-bolt-up.js';
import type { Judge } from '../judge.js';

/** The centre lines of line and pump meet. */
export const flangeOffset: Judge = {
  id: 'flange-offset',
  title: 'Centre lines off each other',
  part: 'before-bolt-up',
  trade: 'pipe fitter',
  compare: (subject) =>
    FLANGES.map((which) => {
      const ids = flangeBoxes(which);
      const boxes = [ids.rise, ids.offset];
      const read = numbersIn(subject.readings, boxes);
      const [rise = 0, offset = 0] = read ?? [];
      const size = Math.hypot(rise, offset);
      const { upright, across } = nozzleAxes(subject.review.layout.nozzles[which].axis);
      const part = (axis: 0 | 1 | 2) => (rise * upright[axis] + offset * across[axis]) / (size || 1);
      const towards: Vec3 = [part(0), part(1), part(2)];
      return {
        kind: 'measured',
        at: `${which} flange`,
        boxes,
        demand: read === undefined ? undefined : size,
        measured: 'gap',
        limit: alignmentLimits(subject.review, which).offset,
        expected: 0,
        data: { which, side: size === 0 ? '' : faceSide(towards, subject.write) },
      };
    }),
};
