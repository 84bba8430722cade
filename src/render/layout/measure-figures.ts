/** Measure step for figures: a drawing with its caption, or two half-width ones side by side. */
import { EngineError } from '../../issues/issue.js';
import { breakLines, type Line } from './break-lines.js';
import type { Item, Piece, Tag } from './piece.js';
import { placeLine } from './place-lines.js';
import type { Space } from './space.js';
import { GAP, STYLES } from './style-sheet.js';
import type { StyledFigure } from './styled.js';

/** Gap between a drawing and its caption [points]. */
const CAPTION_GAP = 5;

interface Measured {
  readonly items: readonly Item[];
  readonly height: number;
}

/**
 * Measures one figure, or two that share the width. A drawing too wide or too tall for its place is made smaller as
 * a whole, never cut.
 *
 * @param figures - one figure, or two of half width
 * @param space - where they may stand
 * @returns one piece that holds drawings and captions
 * @throws EngineError `render.unknown-drawing` when no drawing has the name
 */
export function measureFigures(figures: readonly StyledFigure[], space: Space): readonly Piece[] {
  const half = (space.width - GAP.halfFigures) / 2;
  const measured = figures.map((figure, i) => {
    const width = figure.half ? half : space.width;
    return measureFigure(figure, { ...space, x: space.x + i * (half + GAP.halfFigures), width });
  });
  const height = Math.max(...measured.map((one) => one.height));
  return [{ before: GAP.block, height, hold: 'free', items: measured.flatMap((one) => one.items) }];
}

function measureFigure(figure: StyledFigure, space: Space): Measured {
  const drawing = Object.hasOwn(space.drawings, figure.drawing) ? space.drawings[figure.drawing] : undefined;
  if (!drawing)
    throw new EngineError('render.unknown-drawing', {
      found: figure.drawing,
      line: figure.line,
      available: Object.keys(space.drawings),
    });
  const lines = breakLines(figure.caption, space.width, space.measure);
  const captionHeight = lines.length === 0 ? 0 : CAPTION_GAP + lines.length * STYLES.caption.leading;
  const room = space.tallest - captionHeight;
  if (room < 20)
    throw new EngineError('render.block-too-tall', {
      block: `figure ${figure.drawing}`,
      height: captionHeight,
      available: space.tallest,
    });
  const scale = Math.min(1, space.width / drawing.width, room / drawing.height);
  const group: Tag = { role: 'Div', parent: space.parent };
  const picture: Item = {
    kind: 'drawing',
    x: space.x,
    y: 0,
    width: drawing.width * scale,
    height: drawing.height * scale,
    scale,
    drawing,
    tag: { role: 'Figure', parent: group, alt: drawing.alt },
  };
  const caption: Tag = { role: 'Caption', parent: group };
  const top = picture.height + CAPTION_GAP;
  const words = lines.flatMap((line: Line, i) =>
    placeLine(
      line,
      { x: space.x, y: top + i * STYLES.caption.leading, width: space.width },
      STYLES.caption,
      'left',
      caption,
    ),
  );
  return { items: [picture, ...words], height: picture.height + captionHeight };
}
