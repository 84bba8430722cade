/** How far a hanger rod may lean. */
import type { FieldLimit } from './field-limit.js';

/** Lean of a rod from the upright: four degrees, as sideways over length [-]. */
export const ROD_LEAN: FieldLimit = {
  value: Math.tan((4 * Math.PI) / 180),
  measured: 'share',
  words: 'at most',
  citation: { source: 'mss-sp-58', clause: 'swing of a hanger rod, four degrees', confidence: 'memory' },
};
