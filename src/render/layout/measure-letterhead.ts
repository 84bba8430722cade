/** Measure step for the letterhead: logo at the left, name and address beside it, a rule below. */
import type { Logo } from '../logo/logo-shape.js';
import { breakLines, type Line } from './break-lines.js';
import type { Item, Piece, Tag } from './piece.js';
import { placeLine } from './place-lines.js';
import type { Space } from './space.js';
import { GAP, LETTERHEAD, STYLES, type TextStyle } from './style-sheet.js';
import type { StyledLetterhead } from './styled.js';

/**
 * Measures the letterhead. The logo keeps its proportion; words beside it stand centred to it.
 *
 * @param head - name and lines, styled
 * @param space - where it may stand
 * @param logo - the logo, where there is one
 * @returns one piece
 */
export function measureLetterhead(head: StyledLetterhead, space: Space, logo: Logo | undefined): Piece {
  const group: Tag = { role: 'Div', parent: space.parent };
  const scale = logo ? Math.min(LETTERHEAD.logoHeight / logo.height, LETTERHEAD.logoWidth / logo.width) : 0;
  const [logoWidth, logoHeight] = logo ? [logo.width * scale, logo.height * scale] : [0, 0];
  const indent = logo ? logoWidth + LETTERHEAD.gap : 0;
  const room = space.width - indent;
  const nameWidth = room * (head.lines.length > 0 ? LETTERHEAD.nameShare : 1);
  const name = wrapped([head.name], nameWidth, space);
  const address = wrapped(head.lines, room - nameWidth - LETTERHEAD.gap, space);
  const height = Math.max(
    logoHeight,
    name.length * STYLES.letterheadName.leading,
    address.length * STYLES.letterheadLine.leading,
  );
  const column = (
    lines: readonly Line[],
    style: TextStyle,
    x: number,
    width: number,
    align: 'left' | 'right',
  ): readonly Item[] => {
    const tag: Tag = { role: 'P', parent: group };
    const top = (height - lines.length * style.leading) / 2;
    return lines.flatMap((line, i) =>
      placeLine(line, { x, y: top + i * style.leading, width }, style, align, tag),
    );
  };
  const picture: readonly Item[] = logo
    ? [
        {
          kind: 'logo',
          x: space.x,
          y: (height - logoHeight) / 2,
          width: logoWidth,
          height: logoHeight,
          logo,
          tag: { role: 'Figure', parent: group, alt: logo.alt },
        },
      ]
    : [];
  const right = space.x + space.width - (room - nameWidth - LETTERHEAD.gap);
  return {
    before: 0,
    height: height + LETTERHEAD.below + GAP.block,
    hold: 'strong',
    items: [
      ...picture,
      ...column(name, STYLES.letterheadName, space.x + indent, nameWidth, 'left'),
      ...column(address, STYLES.letterheadLine, right, room - nameWidth - LETTERHEAD.gap, 'right'),
      {
        kind: 'fill',
        x: space.x,
        y: height + LETTERHEAD.below,
        width: space.width,
        height: 0.8,
        ink: 'black',
      },
    ],
  };
}

const wrapped = (lines: StyledLetterhead['lines'], width: number, space: Space): readonly Line[] =>
  lines.flatMap((spans) => breakLines(spans, width, space.measure));
