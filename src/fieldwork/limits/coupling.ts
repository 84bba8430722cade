/** What a rigid spacer coupling keeps to once it is bolted up again, where its maker gives nothing. */
import type { FieldLimit } from '../field-limit.js';

/** Difference of the gaps of the two splits, all round [m]. */
export const GAP_EVENNESS: FieldLimit = {
  value: 0.05e-3,
  measured: 'gap',
  words: 'at most',
  citation: {
    source: 'common-practice',
    clause: 'gaps of a coupling even all round to 0.05 mm (0.002 in), after manuals of pumps in general',
    confidence: 'common practice',
  },
};

/** Total indicator reading of the shaft above the seal [m]. */
export const SHAFT_RUNOUT: FieldLimit = {
  value: 0.05e-3,
  measured: 'gap',
  words: 'at most',
  citation: {
    source: 'common-practice',
    clause: 'runout of the shaft at the seal, 0.05 mm (0.002 in)',
    confidence: 'common practice',
  },
};
