/**
 * Pairs two sequences in order so that as little as possible is left over: the longest common subsequence with a cost
 * for pairs that are alike but not the same.
 *
 * @param before - one sequence
 * @param after - the other
 * @param cost - 0 for the same, up to 2 for as different as taking one out and putting one in; Infinity for no pair
 * @returns pairs of places in both, in order
 */
export function align<Item>(
  before: readonly Item[],
  after: readonly Item[],
  cost: (one: Item, other: Item) => number,
): readonly (readonly [number, number])[] {
  const width = after.length + 1;
  const least = new Float64Array((before.length + 1) * width);
  const at = (i: number, j: number): number => least[i * width + j] ?? 0;
  const pairCost = (i: number, j: number): number => {
    const [one, other] = [before[i], after[j]];
    return one === undefined || other === undefined ? Number.POSITIVE_INFINITY : cost(one, other);
  };
  for (let i = before.length; i >= 0; i--) {
    for (let j = after.length; j >= 0; j--) {
      if (i === before.length || j === after.length)
        least[i * width + j] = before.length - i + after.length - j;
      else
        least[i * width + j] = Math.min(
          pairCost(i, j) + at(i + 1, j + 1),
          1 + at(i + 1, j),
          1 + at(i, j + 1),
        );
    }
  }
  const pairs: (readonly [number, number])[] = [];
  let [i, j] = [0, 0];
  while (i < before.length && j < after.length) {
    if (pairCost(i, j) + at(i + 1, j + 1) <= at(i, j)) {
      pairs.push([i, j]);
      [i, j] = [i + 1, j + 1];
    } else if (1 + at(i + 1, j) <= at(i, j)) i += 1;
    else j += 1;
  }
  return pairs;
}
