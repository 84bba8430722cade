import { numberIn } from '../../../readings/read-box.js';
import { alignmentLimits } from '../../../report/limits/alignment.js';
import { flangeBoxes } from '../../../sheet/parts/before-bolt-up.js';
import type { FieldSubject, Judge } from '../../judge.js';
import { FLANGES, gapsAt, type Which } from '../../read-flange.js';

/** Flanges whose moment has passed: the gaps were not read before bolt-up. */
export function unreadFlanges(subject: FieldSubject): readonly Which[] {
  return FLANGES.filter((which) => gapsAt(which, subject) === undefined);
}

/** Where the gaps were not read, the shaft stands still while the bolts are slackened: what the bolts held would let go. */
export const recovery: Judge = {
  id: 'recovery',
  title: 'Pipe strain at bolt-up not known',
  part: 'before-bolt-up',
  trade: 'pipe fitter',
  compare: (subject) =>
    unreadFlanges(subject).map((which) => {
      const box = flangeBoxes(which).slackened;
      const read = numberIn(subject.readings, box);
      return {
        kind: 'measured',
        at: `${which} flange`,
        boxes: [box],
        demand: read === undefined ? undefined : Math.abs(read),
        measured: 'gap',
        limit: alignmentLimits(subject.review, which).shaft,
        expected: 0,
        data: { which },
      };
    }),
};
