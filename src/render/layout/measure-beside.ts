/** Measure step for blocks side by side: in columns that run on, or as sides of one height. */
import type { Item, Piece } from './piece.js';
import { moved, stackHeight } from './piece.js';
import type { MeasureBlocks, Space } from './space.js';
import { GAP } from './style-sheet.js';
import type { StyledBlock, StyledSide } from './styled.js';

/**
 * Blocks in narrow columns. Every piece stands in the first column; the paginate step moves it on to where it goes.
 *
 * @param block - blocks and how many columns
 * @param space - where they may stand
 * @param measureBlocks - measures the blocks
 * @returns pieces of one flow
 */
export function measureColumns(
  block: Extract<StyledBlock, { kind: 'columns' }>,
  space: Space,
  measureBlocks: MeasureBlocks,
): readonly Piece[] {
  const width = (space.width - GAP.columns * (block.count - 1)) / block.count;
  const flow = { count: block.count, step: width + GAP.columns };
  return measureBlocks(block.blocks, { ...space, width }).map((piece) => ({ ...piece, flow }));
}

/**
 * Sides beside each other as one piece that is never parted; below each other when they are taller than a page.
 *
 * @param sides - blocks of each side, and its share of the width
 * @param space - where they may stand
 * @param measureBlocks - measures the blocks
 * @returns one piece, or many when they stand below each other
 */
export function measureBeside(
  sides: readonly StyledSide[],
  space: Space,
  measureBlocks: MeasureBlocks,
): readonly Piece[] {
  const room = space.width - GAP.columns * (sides.length - 1);
  const shares = sides.reduce((sum, side) => sum + side.share, 0);
  let x = space.x;
  const measured = sides.map((side) => {
    const width = (room * side.share) / shares;
    const pieces = measureBlocks(side.blocks, { ...space, x, width });
    x += width + GAP.columns;
    return pieces;
  });
  const height = Math.max(0, ...measured.map(stackHeight));
  if (height > space.tallest) return sides.flatMap((side) => measureBlocks(side.blocks, space));
  const all = measured.flat();
  const before = Math.max(0, ...measured.map(([first]) => first?.before ?? 0));
  const anchors = all.flatMap((piece) => piece.anchors ?? []);
  const items = measured.flatMap(stacked);
  return [{ before, height, hold: 'free', items, ...(anchors.length > 0 ? { anchors } : {}) }];
}

/** Items of pieces below each other, at their heights in the pile. */
function stacked(pieces: readonly Piece[]): readonly Item[] {
  let y = 0;
  return pieces.flatMap((piece, i) => {
    y += i === 0 ? 0 : piece.before;
    const items = piece.items.map((item) => moved(item, 0, y));
    y += piece.height;
    return items;
  });
}
