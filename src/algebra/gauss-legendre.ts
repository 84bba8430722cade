/** Points and weights on 0 to 1. */
export interface Quadrature {
  readonly points: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Gauss-Legendre rule on 0 to 1, exact for polynomials of degree 2 n − 1; nodes are the roots of the Legendre
 * polynomial, found by Newton's method from their asymptotic places.
 *
 * @param count - number of points n [-]
 * @returns points and weights, the weights summing to one [-]
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function gaussLegendre(count: number): Quadrature {
  const points: number[] = [];
  const weights: number[] = [];
  for (let i = 0; i < count; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let step = 0; step < 50; step++) {
      let value = x;
      let before = 1;
      for (let k = 2; k <= count; k++)
        [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
      slope = (count * (before - x * value)) / (1 - x * x);
      const move = value / slope;
      x -= move;
      if (Math.abs(move) < 1e-16) break;
    }
    points.push((1 - x) / 2);
    weights.push(1 / ((1 - x * x) * slope * slope));
  }
  return { points, weights };
}
