import { FLANGES } from '../../as-installed/read-flange.js';
import { numbersIn } from '../../readings/read-box.js';
import { alignmentLimits } from '../../report/limits/alignment.js';
import { flangeBoxes } from '../../sheet/parts/before-bolt-up.js';
import type { Judge } from '../judge.js';

/** The shaft stands still while the bolts are pulled: the plainest proof that the pipe does not pull on the pump. */
export const shaftMovement: Judge = {
  id: 'shaft-movement',
  title: 'Shaft moves while bolts are pulled',
  part: 'before-bolt-up',
  trade: 'pipe fitter',
  compare: (subject) =>
    FLANGES.map((which) => {
      const ids = flangeBoxes(which);
      const boxes = [ids.shaftAlong, ids.shaftAcross];
      const read = numbersIn(subject.readings, boxes);
      return {
        kind: 'measured',
        at: `${which} flange`,
        boxes,
        demand: read === undefined ? undefined : Math.max(...read.map(Math.abs)),
        measured: 'gap',
        limit: alignmentLimits(subject.review, which).shaft,
        expected: 0,
        data: { which },
      };
    }),
};
