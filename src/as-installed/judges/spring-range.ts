import { numberIn } from '../../readings/read-box.js';
import { loadOf } from '../../sheet/parts/support-expectations.js';
import { namedSupports, supportBoxes } from '../../sheet/support-ids.js';
import type { FieldComparison, Judge } from '../judge.js';

const RANGE = { source: 'input', clause: 'working range of the spring', confidence: 'read' } as const;

const STATES = [
  ['dry', 'empty', 'dry'],
  ['filled', 'filled', 'filled, cold'],
  ['hot', 'hot', 'hot'],
] as const;

/** Each spring shows a load inside its working range, in every state it was read in: not coil-bound, not topped out. */
export const springRange: Judge = {
  id: 'spring-range',
  title: 'Spring within its range',
  part: 'supports',
  trade: 'pipe fitter',
  compare: (subject) =>
    namedSupports(subject.review.layout.supports).flatMap(({ support, word }) => {
      const spring = support.part?.spring;
      if (spring === undefined) return [];
      const { minimum, maximum } = spring;
      return STATES.map(([state, condition, words]): FieldComparison => {
        const box = supportBoxes(word)[state];
        const read = numberIn(subject.readings, box);
        // The nearer end is the one that decides.
        const nearTop =
          read !== undefined &&
          minimum !== undefined &&
          maximum !== undefined &&
          read > (minimum + maximum) / 2;
        const end = nearTop ? maximum : minimum;
        return {
          kind: 'measured',
          at: `${support.mark}, ${words}`,
          boxes: [box],
          demand: read,
          measured: 'force',
          expected: loadOf(support.mark, condition, subject),
          limit:
            end === undefined || maximum === undefined || minimum === undefined
              ? undefined
              : { value: end, measured: 'force', words: nearTop ? 'at most' : 'at least', citation: RANGE },
          // A state that the visit did not see is no gap in it.
          comparison: read === undefined && state !== 'filled',
          data: { mark: support.mark },
        };
      });
    }),
};
