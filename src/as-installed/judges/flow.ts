import { numberIn } from '../../readings/read-box.js';
import { noSiteLimit, siteLimit } from '../../readings/site-limit.js';
import type { Judge } from '../judge.js';

/** The flow is that of the duty. */
export const flow: Judge = {
  id: 'flow',
  title: 'Flow against the duty',
  part: 'hydraulic',
  trade: 'balancing contractor',
  compare: ({ readings, review }) => {
    const duty = review.installation.pump.duty.flow;
    const read = numberIn(readings, 'hydraulic.flow');
    const share = siteLimit(readings, 'hydraulic.flow-limit', 'share', 'within');
    return [
      {
        kind: 'measured',
        at: 'pump',
        boxes: ['hydraulic.flow'],
        demand: read === undefined ? undefined : Math.abs(read - duty),
        read,
        expected: duty,
        measured: 'flow',
        limit: share && { ...share, value: share.value * duty, measured: 'flow' },
        noLimit: noSiteLimit(readings, 'hydraulic.flow-limit'),
        data: { way: (read ?? 0) < duty ? 'below' : 'above' },
      },
    ];
  },
};
