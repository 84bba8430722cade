import { numbersIn } from '../../readings/read-box.js';
import { noSiteLimit, siteLimit } from '../../readings/site-limit.js';
import type { Judge } from '../judge.js';

/** The shaft stands plumb, by the maker's limit where it is written on the sheet. */
export const plumbShaft: Judge = {
  id: 'plumb-shaft',
  title: 'Shaft out of plumb',
  part: 'plumb',
  trade: 'millwright',
  compare: ({ readings }) => {
    const boxes = ['plumb.along', 'plumb.across'];
    const read = numbersIn(readings, boxes);
    return [
      {
        kind: 'measured',
        at: 'pump shaft',
        boxes,
        demand: read === undefined ? undefined : Math.max(...read.map(Math.abs)),
        measured: 'gap',
        limit: siteLimit(readings, 'plumb.limit', 'gap'),
        noLimit: noSiteLimit(readings, 'plumb.limit'),
      },
    ];
  },
};
