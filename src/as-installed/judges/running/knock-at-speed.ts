import type { FieldComparison, Judge } from '../../judge.js';
import { knockMarginJudge } from '../knock-margin.js';

/** A tenth of running speed is the least margin that a published case ran with [-]. */
const LEAST_MARGIN = 0.1;

/** A natural frequency that the hammer finds at running speed itself: no margin that was found allows it. */
export const knockAtSpeed: Judge = {
  id: 'knock-at-speed',
  title: 'Natural frequency at running speed',
  part: 'knock-test',
  trade: 'vibration technician',
  compare: (subject) =>
    knockMarginJudge.compare(subject).map((comparison): FieldComparison => {
      if (comparison.kind !== 'measured' || comparison.limit === undefined) return comparison;
      const { comparison: _decidesNothing, ...rest } = comparison;
      const own = Math.max(comparison.limit.value, 1 - LEAST_MARGIN);
      return {
        ...rest,
        limit: {
          ...comparison.limit,
          value: own,
          citation: {
            source: 'common-practice',
            clause: 'a tenth of running speed, the least margin of a published case',
            confidence: 'read',
          },
        },
      };
    }),
};
