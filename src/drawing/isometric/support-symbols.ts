/** Symbols of what holds the pipe, drawn generically: rods, springs, feet, bars and hatched blocks. */
import type { Shape, Xy } from '../drawing.js';
import { offset } from '../plane.js';
import { ISOMETRIC_SHARE } from './projection.js';
import { line } from './tube.js';

/** Where a support stands on paper. */
export interface SupportPlace {
  readonly at: Xy;
  /** Direction of the pipe on paper [-]. */
  readonly way: Xy;
  /** Level direction across the pipe on paper [-]. */
  readonly across: Xy;
  /** Half width of the pipe [1/72 in]. */
  readonly radius: number;
  /** True on a riser. */
  readonly upright: boolean;
  /** Half of a unit ring round the pipe that the reader sees. */
  readonly ring: readonly Xy[];
}

/** How far a rod goes up on paper [1/72 in]. */
export const ROD_LENGTH = 27;
const UP: Xy = [0, -1];
const DOWN: Xy = [0, 1];

/** Short piece of structure: a line with slanted strokes on its far side. */
function structure(at: Xy, side: 'over' | 'under', half: number): readonly Shape[] {
  const away = side === 'over' ? -1 : 1;
  const strokes = Array.from({ length: 4 }, (_, i): Shape => {
    const x = at[0] - half + (2 * half * (i + 0.5)) / 4;
    return line(
      [
        [x - 1.4, at[1]],
        [x + 1.4, at[1] + away * 2.8],
      ],
      'fine',
    );
  });
  return [
    line(
      [
        [at[0] - half, at[1]],
        [at[0] + half, at[1]],
      ],
      'medium',
    ),
    ...strokes,
  ];
}

function rod(foot: Xy, top: Xy, spring: boolean): readonly Shape[] {
  if (!spring) return [line([foot, top], 'fine')];
  const middle = (foot[1] + top[1]) / 2;
  const [low, high] = [middle + 6, middle - 6];
  const coil = Array.from(
    { length: 8 },
    (_, i): Xy => [
      foot[0] + (i === 0 || i === 7 ? 0 : i % 2 === 0 ? -2.6 : 2.6),
      low + ((high - low) * i) / 7,
    ],
  );
  const box = line(
    [
      [foot[0] - 4, low],
      [foot[0] + 4, low],
      [foot[0] + 4, high],
      [foot[0] - 4, high],
    ],
    'fine',
    'white',
  );
  return [
    line([foot, [foot[0], low]], 'fine'),
    box,
    line(coil, 'fine'),
    line([[foot[0], high], top], 'fine'),
  ];
}

/** Height on paper from the axis of a level pipe to its upper outline, seen from a corner. */
const overPipe = (radius: number): number => radius * 1.16;

/**
 * Hanger: clevis and rod up to the structure; two rods carry a bar under the pipe, or a clamp on a riser.
 *
 * @param place - where it stands
 * @param rods - number of rods [-]
 * @param spring - true for a spring hanger
 * @returns shapes
 */
export function hangerShapes(place: SupportPlace, rods: number, spring: boolean): readonly Shape[] {
  const { at, across, radius, upright } = place;
  if (rods < 2 && !upright) {
    const crown = offset(at, UP, ISOMETRIC_SHARE * (radius + 0.6));
    const foot = offset(crown, UP, 3.5);
    const top = offset(at, UP, overPipe(radius) + ROD_LENGTH);
    const ring = place.ring.map((p): Xy => [at[0] + p[0] * (radius + 0.6), at[1] + p[1] * (radius + 0.6)]);
    const strap = [line(ring, 'medium'), line([crown, foot], 'medium')];
    return [
      ...strap,
      { kind: 'circle', centre: foot, radius: 0.9, stroke: 'fine', fill: 'dark', ink: 'black' },
      ...rod(foot, top, spring),
      ...structure(top, 'over', 6),
    ];
  }
  const half = radius + 5;
  const middle = upright ? at : offset(at, DOWN, overPipe(radius) + 1);
  const ends = [offset(middle, across, half), offset(middle, across, -half)];
  const high = overPipe(radius) + ROD_LENGTH;
  return [
    line(ends, 'heavy'),
    ...ends.flatMap((end) => {
      const top: Xy = [end[0], at[1] - high + (end[1] - middle[1])];
      return [...rod(end, top, spring), ...structure(top, 'over', 4)];
    }),
  ];
}

/** Rest: a triangle under the pipe on hatched ground; under both ears of a clamp on a riser. @param place - where it stands @returns shapes */
export function restShapes(place: SupportPlace): readonly Shape[] {
  return footings(place).flatMap((apex) => {
    const base = apex[1] + 7;
    return [
      line([apex, [apex[0] + 4.5, base], [apex[0] - 4.5, base]], 'medium', 'white'),
      ...structure([apex[0], base], 'under', 6),
    ];
  });
}

/** Stand: a post with a saddle on hatched ground. @param place - where it stands @returns shapes */
export function standShapes(place: SupportPlace): readonly Shape[] {
  return footings(place).flatMap((top) => {
    const base: Xy = [top[0], top[1] + 19];
    const half = Math.max(3, Math.min(5, place.radius));
    return [
      line(
        [
          [top[0] - half, top[1] + 0.5],
          [top[0] + half, top[1] + 0.5],
        ],
        'medium',
      ),
      line(
        [
          [top[0] - 1.3, top[1] + 0.5],
          [top[0] + 1.3, top[1] + 0.5],
          [base[0] + 1.3, base[1]],
          [base[0] - 1.3, base[1]],
        ],
        'fine',
        'white',
      ),
      ...structure(base, 'under', 6),
    ];
  });
}

/** Where feet stand: under a level pipe, or under both ears of the clamp that is drawn on a riser. */
function footings(place: SupportPlace): readonly Xy[] {
  const { at, across, radius, upright } = place;
  if (!upright) return [offset(at, DOWN, overPipe(radius))];
  return [1, -1].map((sign) => offset(at, across, sign * (radius + 5)));
}

/** Clamp on a riser that feet stand under; nothing on a level pipe. @param place - where it stands @returns shapes */
export function clampShapes(place: SupportPlace): readonly Shape[] {
  if (!place.upright) return [];
  const half = place.radius + 8;
  return [line([offset(place.at, place.across, half), offset(place.at, place.across, -half)], 'heavy')];
}

/** Guide: a bar on either side along the pipe. @param place - where it stands @returns shapes */
export function guideShapes(place: SupportPlace): readonly Shape[] {
  const side: Xy = [-place.way[1], place.way[0]];
  return [1, -1].flatMap((sign) => {
    const middle = offset(place.at, side, sign * (place.radius + 2.2));
    const tie = offset(middle, side, sign * 4.5);
    return [
      line([offset(middle, place.way, 6), offset(middle, place.way, -6)], 'heavy'),
      line([middle, tie], 'fine'),
      line([offset(tie, place.way, 3), offset(tie, place.way, -3)], 'medium'),
    ];
  });
}

/** Stop: a lug on the pipe between two fixed blocks. @param place - where it stands @returns shapes */
export function stopShapes(place: SupportPlace): readonly Shape[] {
  const side: Xy = [-place.way[1], place.way[0]];
  const down = side[1] >= 0 ? side : offset([0, 0], side, -1);
  const foot = offset(place.at, down, place.radius);
  const block = (shift: number): readonly Shape[] => {
    const near = offset(offset(foot, place.way, shift), down, 1.4);
    const corner = (a: number, b: number): Xy => offset(offset(near, place.way, a), down, b);
    const box = [corner(-1.8, 0), corner(1.8, 0), corner(1.8, 6), corner(-1.8, 6)];
    return [
      line(box, 'medium', 'white'),
      line([corner(-1.8, 3), corner(1.8, 0.4)], 'fine'),
      line([corner(-1.8, 5.6), corner(1.8, 3)], 'fine'),
    ];
  };
  return [line([foot, offset(foot, down, 6.5)], 'heavy'), ...block(-4.2), ...block(4.2)];
}

/** Anchor: a hatched block round the pipe. @param place - where it stands @returns shapes */
export function anchorShapes(place: SupportPlace): readonly Shape[] {
  const { at, way } = place;
  const side: Xy = [-way[1], way[0]];
  const [reach, half] = [place.radius + 4.5, 4];
  const corner = (a: number, b: number): Xy => offset(offset(at, way, a * half), side, b * reach);
  const count = Math.max(4, Math.round((2 * reach) / 3));
  const hatch = Array.from({ length: count }, (_, i): Shape => {
    const low = -1 + (2 * i) / count;
    return line([corner(-1, low), corner(1, Math.min(1, low + 2 / count))], 'fine');
  });
  return [line([corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)], 'medium', 'white'), ...hatch];
}
