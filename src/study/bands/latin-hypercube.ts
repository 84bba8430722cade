/** Samples that cover the range of every uncertainty evenly, the same for the same seed. */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/**
 * A Latin hypercube: each column has one sample in each of `samples` strata of equal probability, in an order of its own.
 *
 * @param columns - number of uncertainties [-]
 * @param samples - number of samples [-]
 * @param seed - a whole number [-]
 * @returns one row a sample, amounts from −1 to 1 [-]
 * @source latin-hypercube
 */
export function latinHypercube(
  columns: number,
  samples: number,
  seed: number,
): readonly (readonly number[])[] {
  const random = xoroshiro128plus(seed);
  const rows = Array.from({ length: samples }, () => new Array<number>(columns).fill(0));
  for (let column = 0; column < columns; column++) {
    const strata = Array.from({ length: samples }, (_, index) => index);
    for (let last = samples - 1; last > 0; last--) {
      const other = uniformInt(random, 0, last);
      [strata[last], strata[other]] = [strata[other] ?? 0, strata[last] ?? 0];
    }
    rows.forEach((row, index) => {
      row[column] = (2 * ((strata[index] ?? 0) + uniformFloat64(random))) / samples - 1;
    });
  }
  return rows;
}

/**
 * Seed of an input: from its fingerprint, so that the same file gives the same samples.
 *
 * @param fingerprint - SHA-256 in hex
 * @returns a whole number below 2³² [-]
 */
export function seedOf(fingerprint: string): number {
  return Number.parseInt(fingerprint.slice(0, 8), 16) >>> 0;
}
