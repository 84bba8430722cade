/** Where a function is largest, and how large. */
export interface Largest {
  readonly at: number;
  readonly value: number;
}

/**
 * Largest value of a smooth function on 0 to 1: the best of equally spaced samples, then golden section between its
 * neighbours.
 *
 * @param of - the function [-]
 * @param samples - number of equal steps, enough that each hump holds one [-]
 * @returns place and value [-]
 */
export function largestOnUnit(of: (at: number) => number, samples: number): Largest {
  let best: Largest = { at: 0, value: of(0) };
  for (let i = 1; i <= samples; i++) {
    const value = of(i / samples);
    if (value > best.value) best = { at: i / samples, value };
  }
  let low = Math.max(0, best.at - 1 / samples);
  let high = Math.min(1, best.at + 1 / samples);
  let a = high - GOLDEN * (high - low);
  let b = low + GOLDEN * (high - low);
  let fa = of(a);
  let fb = of(b);
  for (let step = 0; step < 40; step++) {
    if (fa >= fb) {
      [high, b, fb] = [b, a, fa];
      a = high - GOLDEN * (high - low);
      fa = of(a);
    } else {
      [low, a, fa] = [a, b, fb];
      b = low + GOLDEN * (high - low);
      fb = of(b);
    }
  }
  // Ends and samples win ties, so that a stationary end is named as the end.
  const tie = Math.abs(best.value) * 1e-12;
  if (fa > best.value + tie) best = { at: a, value: fa };
  if (fb > best.value + tie) best = { at: b, value: fb };
  return best;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
