/** What a rigid spacer coupling keeps to once it is bolted up again, where its maker gives nothing. */
import type { UnitSystem } from '../../units/index.js';
import type { FieldLimit } from './field-limit.js';

/** Two thousandths of an inch, or five hundredths of a millimetre, as the units of the sheet have it [m]. */
const FINE: Readonly<Record<UnitSystem, number>> = { us: 0.0508e-3, si: 0.05e-3 };

/** Difference of the gaps of the two splits, all round [m]. */
export const gapEvenness = (system: UnitSystem): FieldLimit => ({
  value: FINE[system],
  measured: 'gap',
  words: 'at most',
  citation: {
    source: 'common-practice',
    clause: 'gaps of a coupling even all round to 0.05 mm (0.002 in), after manuals of pumps in general',
    confidence: 'common practice',
  },
});

/** Total indicator reading of the shaft above the seal [m]. */
export const shaftRunoutLimit = (system: UnitSystem): FieldLimit => ({
  value: FINE[system],
  measured: 'gap',
  words: 'at most',
  citation: {
    source: 'common-practice',
    clause: 'runout of the shaft at the seal, 0.05 mm (0.002 in)',
    confidence: 'common practice',
  },
});
