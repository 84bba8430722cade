import type { PlacedSupport } from '../../model/layout/layout.js';
import { supportFacts } from '../../model/support-parts.js';

/**
 * Trade word of a support, as printed in tables.
 *
 * @param support - placed support
 * @returns for example `spring hanger`
 */
export function supportWord(support: PlacedSupport): string {
  return supportFacts(support).word;
}

/**
 * Whether a support can carry weight: all but guides and stops, which hold sideways or along the pipe only.
 *
 * @param support - placed support
 * @returns true where its load on the structure includes weight
 */
export function carriesWeight(support: PlacedSupport): boolean {
  return supportFacts(support).carriesWeight;
}

/**
 * Rods of a support in one phrase.
 *
 * @param support - placed support
 * @returns for example `2 × 5/8 in`; a dash where it has none
 */
export function rodText(support: PlacedSupport): string {
  const rods = support.part?.rods;
  if (rods === undefined) return '–';
  const size = rods.size === undefined ? 'size not given' : `${rods.size.replace(/\s*in$/, '')} in`;
  return `${rods.count} × ${size}`;
}
