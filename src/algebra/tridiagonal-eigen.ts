import { EngineError } from '../issues/issue.js';

/** Eigenvalues in falling order, each with its vector. */
export interface TridiagonalEigen {
  readonly values: readonly number[];
  /** One vector of the matrix's size for each value. */
  readonly vectors: readonly Float64Array[];
}

/**
 * All eigenvalues and vectors of a symmetric matrix with one diagonal beside the main one, by implicit QL with shifts.
 *
 * @param main - main diagonal [-]
 * @param beside - the diagonal beside it, one shorter [-]
 * @returns eigenvalues in falling order and orthonormal vectors [-]
 * @throws EngineError `algebra.not-converged`; data: `what`, `rounds`
 * After Golub and Van Loan, Matrix Computations, 4th ed., 2013.
 */
export function tridiagonalEigen(main: readonly number[], beside: readonly number[]): TridiagonalEigen {
  const n = main.length;
  const d = Float64Array.from(main);
  const e = new Float64Array(n);
  e.set(beside.slice(0, Math.max(0, n - 1)));
  const turns = Array.from({ length: n }, (_, i) => {
    const row = new Float64Array(n);
    row[i] = 1;
    return row;
  });
  for (let from = 0; from < n; from++) {
    for (let round = 0; ; round++) {
      let to = from;
      while (to < n - 1 && Math.abs(e[to]!) > Number.EPSILON * (Math.abs(d[to]!) + Math.abs(d[to + 1]!)))
        to++;
      if (to === from) break;
      if (round === ROUNDS)
        throw new EngineError('algebra.not-converged', { what: 'small eigenvalues', rounds: ROUNDS });
      sweep(d, e, turns, from, to);
    }
  }
  const order = Array.from({ length: n }, (_, i) => i).sort((i, j) => d[j]! - d[i]! || i - j);
  return { values: order.map((i) => d[i]!), vectors: order.map((i) => turns[i]!) };
}

const ROUNDS = 60;

/** One sweep with the shift of the upper corner; row i of `turns` is the vector of entry i. */
function sweep(d: Float64Array, e: Float64Array, turns: Float64Array[], from: number, to: number): void {
  let g = (d[from + 1]! - d[from]!) / (2 * e[from]!);
  let r = Math.hypot(g, 1);
  g = d[to]! - d[from]! + e[from]! / (g + (g >= 0 ? r : -r));
  let sine = 1;
  let cosine = 1;
  let p = 0;
  for (let i = to - 1; i >= from; i--) {
    const f = sine * e[i]!;
    const b = cosine * e[i]!;
    r = Math.hypot(f, g);
    e[i + 1] = r;
    if (r === 0) {
      d[i + 1]! -= p;
      e[to] = 0;
      return;
    }
    sine = f / r;
    cosine = g / r;
    g = d[i + 1]! - p;
    r = (d[i]! - g) * sine + 2 * cosine * b;
    p = sine * r;
    d[i + 1] = g + p;
    g = cosine * r - b;
    const [low, high] = [turns[i]!, turns[i + 1]!];
    for (let k = 0; k < low.length; k++) {
      const above = high[k]!;
      high[k] = sine * low[k]! + cosine * above;
      low[k] = cosine * low[k]! - sine * above;
    }
  }
  d[from]! -= p;
  e[from] = g;
  e[to] = 0;
}
