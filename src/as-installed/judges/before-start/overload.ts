import { numberIn } from '../../../readings/read-box.js';
import type { Citation } from '../../../sources/index.js';
import { serviceFactorOf } from '../../decisions/service-factor.js';
import type { FieldSubject, Judge } from '../../judge.js';

const CODE = (clause: string): Citation => ({ source: 'nfpa-70', clause, confidence: 'two sources' });

/** Full-load current of the plate as read; else that of the file [A]. */
export function plateCurrent({ readings, review }: FieldSubject): number | undefined {
  return (
    numberIn(readings, 'identity.motor-current') ?? review.installation.pump.motor.fullLoadCurrent?.value
  );
}

/** The overload protects this motor: it is set to its plate, and no higher than the code allows. */
export const overload: Judge = {
  id: 'overload',
  title: 'Overload setting against the plate',
  part: 'electrical',
  trade: 'electrician',
  compare: (subject) => {
    const plate = plateCurrent(subject);
    const isStrong = (serviceFactorOf(subject) ?? 1) >= 1.15;
    return [
      {
        kind: 'measured',
        at: 'motor',
        boxes: ['electrical.overload'],
        demand: numberIn(subject.readings, 'electrical.overload'),
        measured: 'current',
        expected: plate,
        limit:
          plate === undefined
            ? undefined
            : {
                value: (isStrong ? 1.25 : 1.15) * plate,
                measured: 'current',
                words: 'at most',
                citation: CODE(
                  isStrong
                    ? '430.32(A)(1), 125 % of the plate at a service factor of 1.15'
                    : '430.32(A)(1), 115 % of the plate; a service factor of 1.15 was not read',
                ),
              },
        noLimit: 'fieldwork.no-rated-current',
      },
    ];
  },
};
