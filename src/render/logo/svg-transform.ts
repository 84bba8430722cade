/** Transforms of SVG: `translate(…) rotate(…)` to one matrix. */

/** x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [number, number, number, number, number, number];

export const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/** First `inner`, then `outer`. */
export const combined = (outer: Matrix, inner: Matrix): Matrix => {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
};

export const moveBy = ([a, b, c, d, e, f]: Matrix, x: number, y: number): readonly [number, number] => [
  a * x + c * y + e,
  b * x + d * y + f,
];

/**
 * Factor by which a matrix makes lines longer, where it does so alike in all directions.
 *
 * @param matrix - the matrix
 * @returns the factor, or undefined where a stroke would come out of uneven width
 */
export function evenScale([a, b, c, d]: Matrix): number | undefined {
  const [first, second] = [Math.hypot(a, b), Math.hypot(c, d)];
  const skew = Math.abs(a * c + b * d);
  const isEven = Math.abs(first - second) < 1e-3 * first && skew < 1e-3 * first * second;
  return isEven ? Math.sqrt(Math.abs(a * d - b * c)) : undefined;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** What each word makes of its numbers; undefined where there are too few or too many. */
const WORDS: Readonly<Record<string, (n: readonly number[]) => Matrix | undefined>> = {
  matrix: (n) =>
    n.length === 6 ? [n[0] ?? 1, n[1] ?? 0, n[2] ?? 0, n[3] ?? 1, n[4] ?? 0, n[5] ?? 0] : undefined,
  translate: ([x = 0, y = 0, ...more]) => (more.length === 0 ? [1, 0, 0, 1, x, y] : undefined),
  scale: ([x = 1, y = x, ...more]) => (more.length === 0 ? [x, 0, 0, y, 0, 0] : undefined),
  rotate: ([angle = 0, x = 0, y = 0, ...more]) => {
    const [sin, cos] = [Math.sin(radians(angle)), Math.cos(radians(angle))];
    const turn: Matrix = [cos, sin, -sin, cos, 0, 0];
    return more.length > 0 ? undefined : combined(combined([1, 0, 0, 1, x, y], turn), [1, 0, 0, 1, -x, -y]);
  },
  skewX: ([angle = 0]) => [1, 0, Math.tan(radians(angle)), 1, 0, 0],
  skewY: ([angle = 0]) => [1, Math.tan(radians(angle)), 0, 1, 0, 0],
};

/**
 * Reads a transform.
 *
 * @param text - as in the attribute
 * @returns the matrix, or undefined where it cannot be read
 */
export function readTransform(text: string): Matrix | undefined {
  let matrix: Matrix | undefined = IDENTITY;
  let rest = text.trim();
  while (rest !== '') {
    const [whole, word = '', inside = ''] = /^([A-Za-z]+)\s*\(([^()]*)\)[\s,]*/.exec(rest) ?? [];
    const make = Object.hasOwn(WORDS, word) ? WORDS[word] : undefined;
    const numbers = inside
      .split(/[\s,]+/)
      .filter(Boolean)
      .map(Number);
    const next = numbers.length > 0 && numbers.every(Number.isFinite) ? make?.(numbers) : undefined;
    if (whole === undefined || !next) return undefined;
    matrix = combined(matrix, next);
    rest = rest.slice(whole.length);
  }
  return matrix;
}
