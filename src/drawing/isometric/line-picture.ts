/**
 * The line in isometric view, without words: from which corner, how large, how far long runs are shortened, and all
 * shapes in the order of painting. Shared by every picture of the whole line.
 */
import type { Installation } from '../../input/installation.js';
import type { Layout } from '../../model/layout/layout.js';
import type { Shape, Xy } from '../drawing.js';
import { type Box, type Capsule, distance, shapeBox, unionBox } from '../plane.js';
import { apart } from '../space.js';
import { fittingPieces } from './fitting-pieces.js';
import { linePieces } from './line-pieces.js';
import { depthBetween, type LaidPiece, laidPieces, type Piece, paintOrder } from './paint-order.js';
import { cornerViews, type Projection, project, type View } from './projection.js';
import { pumpPieces } from './pump-shapes.js';
import { type ShortenedLine, shortenedLine } from './shortened-line.js';
import { supportPieces } from './support-pieces.js';

export interface LinePicture {
  readonly projection: Projection;
  readonly drawn: ShortenedLine;
  /** In the order of painting. */
  readonly shapes: readonly Shape[];
  /** What labels should keep clear of. */
  readonly obstacles: readonly Capsule[];
}

/** Lengths tried for the longest piece of straight pipe drawn [m]. */
const LIMITS = [8, 6, 4.5, 3.4, 2.6, 2, 1.6, 1.3, 1];
/** The pump is readable when it is at least this high on paper, and the pipe at least this wide [1/72 in]. */
const READABLE_PUMP = 78;
const READABLE_PIPE = 6.5;
/** No use in drawing larger than this [points per metre]. */
const LARGEST_SCALE = 150;

/** What symbols add to the extent of the line on paper [1/72 in]. */
const SYMBOL_ROOM = 40;

/**
 * Chooses view, scale and shortening and draws the line into a part of the paper.
 *
 * @param installation - pump and kinds of parts
 * @param layout - what stands where [m]
 * @param room - part of the paper to fill
 * @returns the picture without words
 */
export function linePicture(installation: Installation, layout: Layout, room: Box): LinePicture {
  const key = `${room.left} ${room.top} ${room.right} ${room.bottom}`;
  const kept = known.get(layout) ?? new Map<string, Kept>();
  known.set(layout, kept);
  const before = kept.get(key);
  if (before !== undefined && before.installation === installation) return before.picture;
  const picture = newPicture(installation, layout, room);
  kept.set(key, { installation, picture });
  return picture;
}

interface Kept {
  readonly installation: Installation;
  readonly picture: LinePicture;
}

/** Loads and movements are drawn over the same line: it is worked out once for each layout. */
const known = new WeakMap<Layout, Map<string, Kept>>();

function newPicture(installation: Installation, layout: Layout, room: Box): LinePicture {
  const trials = cornerViews.map((view) => {
    const drawn = readableLine(installation, layout, view, room);
    // Near enough to the final scale to compare corners by.
    const projection: Projection = {
      view,
      scale: Math.min(LARGEST_SCALE, roughScale(drawn, layout, view, room)),
      origin: [0, 0],
    };
    const laid = laidPieces(piecesAt(installation, layout, drawn, projection), projection);
    return { view, drawn, scale: projection.scale, muddle: muddle(laid, layout, drawn, projection) };
  });
  const largest = Math.max(...trials.map((t) => t.scale));
  const cost = (t: (typeof trials)[number]) => t.muddle + 25 * (largest / t.scale - 1);
  const least = Math.min(...trials.map(cost));
  const { view, drawn } = trials.find((t) => cost(t) <= least + 1e-6) as (typeof trials)[number];
  const { projection, pieces } = fitted(installation, layout, drawn, view, room);
  const laid = laidPieces(pieces, projection);
  const shapes = paintOrder(laid, projection).flatMap(({ piece }) => piece.shapes);
  return { projection, drawn, shapes, obstacles: laid.flatMap(obstaclesOf) };
}

/** Shortens long runs as little as makes pump and pipe large enough to read. */
function readableLine(installation: Installation, layout: Layout, view: View, room: Box): ShortenedLine {
  const pipe = layout.nozzles.discharge.section.outsideDiameter;
  const height =
    installation.pump.outline.motorTop.value + installation.pump.outline.casingDiameter.value / 2;
  const wanted = Math.min(
    LARGEST_SCALE,
    Math.max(READABLE_PUMP / Math.max(0.3, height), READABLE_PIPE / pipe),
  );
  const longest = Math.max(...layout.strokes.map((s) => apart(s.from, s.to)));
  const lengths = LIMITS.filter((most) => most >= 4 * pipe && most < longest);
  let best = shortenedLine(layout, Number.POSITIVE_INFINITY);
  for (const limit of lengths) {
    if (roughScale(best, layout, view, room) >= wanted) break;
    best = shortenedLine(layout, limit);
  }
  return best;
}

/** Scale at which the ends of all strokes and the pump would fit. */
function roughScale(drawn: ShortenedLine, layout: Layout, view: View, room: Box): number {
  const flat: Projection = { view, scale: 1, origin: [0, 0] };
  const places = [
    ...drawn.strokes.flatMap((s) => [s.from, s.to]),
    layout.nozzles.suction.at,
    layout.nozzles.discharge.at,
  ].map((p) => project(flat, p));
  const extent = (axis: 0 | 1) =>
    Math.max(...places.map((p) => p[axis])) - Math.min(...places.map((p) => p[axis]));
  const wide = (room.right - room.left - SYMBOL_ROOM) / Math.max(0.1, extent(0));
  return Math.min(wide, (room.bottom - room.top - SYMBOL_ROOM) / Math.max(0.1, extent(1)));
}

function piecesAt(
  installation: Installation,
  layout: Layout,
  drawn: ShortenedLine,
  projection: Projection,
): readonly Piece[] {
  return [
    ...linePieces(drawn, installation, layout, projection),
    ...pumpPieces(installation, layout, projection),
    ...supportPieces(layout, drawn, projection),
    ...fittingPieces(layout, drawn, projection),
  ];
}

/** Symbols keep their size on paper, so the scale that fits is found by trying. */
function fitted(
  installation: Installation,
  layout: Layout,
  drawn: ShortenedLine,
  view: View,
  room: Box,
): { readonly projection: Projection; readonly pieces: readonly Piece[] } {
  const [wide, high] = [room.right - room.left, room.bottom - room.top];
  let projection: Projection = {
    view,
    scale: Math.min(LARGEST_SCALE, 1.15 * Math.max(1e-3, roughScale(drawn, layout, view, room))),
    origin: [0, 0],
  };
  for (let round = 0; ; round++) {
    const pieces = piecesAt(installation, layout, drawn, projection);
    const box = unionBox(pieces.flatMap((piece) => piece.shapes.map(shapeBox)));
    const share = Math.min(wide / (box.right - box.left), high / (box.bottom - box.top));
    if (share >= 1 || round === 20) {
      const shift: Xy = [
        (room.left + room.right - box.left - box.right) / 2,
        (room.top + room.bottom - box.top - box.bottom) / 2,
      ];
      return {
        projection: { ...projection, origin: shift },
        pieces: piecesAt(installation, layout, drawn, { ...projection, origin: shift }),
      };
    }
    projection = { ...projection, scale: projection.scale * Math.max(0.3, Math.min(0.985, share)) };
  }
}

/** How much lies on top of each other, for comparing corners: crossings and crowded marks. */
function muddle(
  laid: readonly LaidPiece[],
  layout: Layout,
  drawn: ShortenedLine,
  projection: Projection,
): number {
  let crossings = 0;
  laid.forEach((a, i) => {
    for (let j = i + 1; j < laid.length; j++) {
      const depth = depthBetween(a, laid[j] as LaidPiece, projection);
      const pump = a.piece.body === true || laid[j]?.piece.body === true;
      if (depth !== undefined && Math.abs(depth) > (pump ? 0.5 : 0.15)) crossings += pump ? 8 : 2;
    }
  });
  const marks = layout.supports.map((s) => project(projection, drawn.place(s.at)));
  let crowding = 0;
  marks.forEach((a, i) => {
    for (const b of marks.slice(i + 1)) crowding += Math.max(0, 1 - distance(a, b) / 40);
  });
  return crossings + 2 * crowding;
}

/** Strokes of a piece, and its symbol where that reaches further. */
function obstaclesOf({ piece, capsules }: LaidPiece): readonly Capsule[] {
  if (piece.rank < 2 || piece.body === true) return capsules;
  const box = unionBox(piece.shapes.map(shapeBox));
  const middle = (box.top + box.bottom) / 2;
  const half = (box.bottom - box.top) / 2;
  const flat = Math.min(half, (box.right - box.left) / 2);
  const centre = (box.left + box.right) / 2;
  const tall = half > flat;
  const reach = tall ? half - flat : (box.right - box.left) / 2 - flat;
  const from = tall ? ([centre, middle - reach] as const) : ([centre - reach, middle] as const);
  const to = tall ? ([centre, middle + reach] as const) : ([centre + reach, middle] as const);
  return [{ from, to, radius: flat }];
}
