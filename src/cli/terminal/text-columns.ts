/** Text in columns of fixed width. */

/**
 * Text cut or filled to a width; what is cut shows by an ellipsis.
 *
 * @param text - one line
 * @param width - signs wide; negative to set it against the right side
 * @returns exactly that many signs
 */
export function column(text: string, width: number): string {
  const size = Math.abs(width);
  const fitting = text.length > size ? `${text.slice(0, size - 1)}…` : text;
  return width < 0 ? fitting.padStart(size) : fitting.padEnd(size);
}

/**
 * One row of columns with a blank between.
 *
 * @param cells - texts
 * @param widths - width of each, negative for the right side
 * @returns the row
 */
export function columns(cells: readonly string[], widths: readonly number[]): string {
  return cells.map((cell, index) => column(cell, widths[index] ?? cell.length)).join(' ');
}

/**
 * One row of columns, on as many lines as its longest cell needs.
 *
 * @param cells - texts
 * @param widths - width of each, negative for the right side
 * @returns lines
 */
export function brokenColumns(cells: readonly string[], widths: readonly number[]): readonly string[] {
  const broken = cells.map((cell, index) => wrapped(cell, Math.abs(widths[index] ?? cell.length)));
  const height = Math.max(...broken.map((lines) => lines.length));
  return Array.from({ length: height }, (_, row) =>
    columns(
      broken.map((lines) => lines[row] ?? ''),
      widths,
    ),
  );
}

/**
 * A paragraph broken at blanks. A word longer than the width stands alone and is not cut: it may be a file name.
 *
 * @param text - the paragraph
 * @param width - signs wide
 * @returns lines
 */
export function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
