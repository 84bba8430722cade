import { numberIn } from '../../readings/read-box.js';
import { decides } from '../../report/limits/field-limit.js';
import { STOPPED, STOPPED_SHARE } from '../../report/limits/vibration.js';
import type { Judge } from '../judge.js';
import { vibrationLimitOf } from './vibration.js';

/** With the pump stopped little is left: what is left comes from its neighbours, and spoils the readings. */
export const vibrationStopped: Judge = {
  id: 'vibration-stopped',
  title: 'Vibration with the pump stopped',
  part: 'vibration',
  trade: 'vibration technician',
  compare: (subject) => {
    const limit = vibrationLimitOf(subject);
    return [
      {
        kind: 'measured',
        at: 'motor bottom',
        boxes: ['vibration.stopped'],
        demand: numberIn(subject.readings, 'vibration.stopped'),
        measured: 'velocity',
        limit: limit && { ...limit, value: STOPPED_SHARE * limit.value, citation: STOPPED },
        comparison: limit === undefined || !decides(limit.citation),
      },
    ];
  },
};
