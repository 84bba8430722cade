/** Widths of table columns, from what stands in them and their shares. */

export interface ColumnNeed {
  /** Widest number: never broken, or it would read as two [points]. */
  readonly firm: number;
  /** Widest word [points]. */
  readonly narrowest: number;
  /** Widest cell on one line [points]. */
  readonly natural: number;
  /** Weight by which spare width is shared. */
  readonly share: number;
}

/**
 * Shares a width among columns: each gets its widest word; what is left goes by share to the columns whose text
 * would wrap, and what is then still left goes by share and natural width to all.
 *
 * @param needs - what each column needs, padding included [points]
 * @param width - width of the table, enough for all firm needs [points]
 * @returns widths that add up to the width of the table; words wider than theirs will be broken
 */
export function columnWidths(needs: readonly ColumnNeed[], width: number): readonly number[] {
  const narrowest = needs.map((need) => need.narrowest);
  const least = sum(narrowest);
  if (least >= width) return shrink(needs, width);
  const widths = [...narrowest];
  let spare = width - least;
  // Water-filling: a column that has reached its natural width hands its share on.
  for (let round = 0; round <= needs.length && spare > 1e-6; round++) {
    const wanting = needs.map((need, i) => Math.max(0, need.natural - (widths[i] ?? 0)));
    const weights = needs.map((need, i) =>
      (wanting[i] ?? 0) > 1e-6 ? need.share * Math.sqrt(wanting[i] ?? 0) : 0,
    );
    const total = sum(weights);
    if (total === 0) break;
    const given = weights.map((weight, i) => Math.min(wanting[i] ?? 0, (spare * weight) / total));
    given.forEach((gift, i) => {
      widths[i] = (widths[i] ?? 0) + gift;
    });
    spare -= sum(given);
  }
  const weights = needs.map((need) => need.share * Math.max(need.natural, 20));
  const total = sum(weights);
  return widths.map((column, i) => column + (spare * (weights[i] ?? 0)) / total);
}

/** Too many wide words: every column keeps its numbers, and those that want least beyond them get it first. */
function shrink(needs: readonly ColumnNeed[], width: number): readonly number[] {
  const widths = needs.map((need) => need.firm);
  let left = Math.max(0, width - sum(widths));
  const order = needs
    .map((need, i) => ({ want: Math.max(0, need.narrowest - need.firm), i }))
    .sort((a, b) => a.want - b.want || a.i - b.i);
  order.forEach(({ want, i }, done) => {
    const gift = Math.min(want, left / (order.length - done));
    widths[i] = (widths[i] ?? 0) + gift;
    left -= gift;
  });
  return widths.map((column) => column + left / widths.length);
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
