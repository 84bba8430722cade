/** The ways in which disagreements between sheets may be settled. */
import type { FieldReading, ReadingsById } from './reading.js';

/** Most ways that are tried. */
const MOST = 32;

/** Ways, and whether some were left out. */
export interface Variants {
  readonly variants: readonly ReadingsById[];
  readonly isCut: boolean;
}

/**
 * All ways in which disagreements may be settled: each of the readings of a box with each of those of every other. Where that is
 * more than are tried, each reading is tried by itself with the other boxes in conflict not known, and the caller is told.
 *
 * @param readings - one reading a box, those in conflict unreadable
 * @param conflicts - the readings that stand, by box
 * @returns at least one set of readings
 */
export function variantsOf(
  readings: ReadingsById,
  conflicts: ReadonlyMap<string, readonly FieldReading[]>,
): Variants {
  const ways = [...conflicts.values()].reduce((product, each) => Math.min(1e9, product * each.length), 1);
  if (ways > MOST) {
    const single = [...conflicts].flatMap(([id, each]) => each.map((reading) => [id, reading] as const));
    return {
      isCut: true,
      variants: [
        readings,
        ...single.slice(0, 4 * MOST).map(([id, reading]) => new Map(readings).set(id, reading)),
      ],
    };
  }
  let variants: readonly ReadingsById[] = [readings];
  for (const [id, each] of conflicts) {
    variants = variants.flatMap((known) => each.map((reading) => new Map(known).set(id, reading)));
  }
  return { variants, isCut: false };
}
