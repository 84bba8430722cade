/**
 * The line as drawn: long straight runs are shortened so that the pump and what stands round it stay readable.
 * Everything beyond a shortened run moves with it; directions are kept.
 */
import type { Vec3 } from '../../model/conventions.js';
import type { Layout, Stroke } from '../../model/layout/layout.js';
import { add, between, scale, subtract } from '../../model/vector.js';
import { along, apart, nearestShare } from '../space.js';
import { strokeAxis } from './stroke-axis.js';

/** A stroke as drawn. */
export interface DrawnStroke {
  readonly stroke: Stroke;
  /** Ends as drawn [m]. */
  readonly from: Vec3;
  readonly to: Vec3;
  /** Centre of an arc as drawn [m]. */
  readonly centre?: Vec3;
  /** Direction of travel along it, also where it has no length [-]. */
  readonly axis: Vec3;
  /** True where the run is drawn shorter than it is. */
  readonly shortened: boolean;
}

export interface ShortenedLine {
  readonly strokes: readonly DrawnStroke[];
  /** Where a place of the layout is drawn [m]. */
  readonly place: (at: Vec3) => Vec3;
  readonly anyShortened: boolean;
}

/** Ends nearer than this are the same place [m]. */
const SAME_PLACE = 1e-3;
/** Side of the cells in which ends are looked up [m]. */
const CELL = 0.05;
/** Least drawn length of a part, in diameters. */
const LEAST_LENGTH: Readonly<Record<string, number>> = { valve: 1.25, connector: 1.1, flange: 0.22 };
/** A support this near to a run's axis stands on it [m]. */
const ON_AXIS = 0.02;

/**
 * Cuts the runs at the supports on them and draws none of the pieces longer than the limit.
 *
 * @param layout - what stands where [m]
 * @param longest - longest piece of straight pipe to draw; Infinity leaves all as it is [m]
 * @returns strokes as drawn and the mapping of places
 */
export function shortenedLine(layout: Layout, longest: number): ShortenedLine {
  const lines = known.get(layout) ?? new Map<number, ShortenedLine>();
  known.set(layout, lines);
  const line = lines.get(longest) ?? newLine(layout, longest);
  lines.set(longest, line);
  return line;
}

/** Every picture of a layout tries the same lengths: each is worked out once. */
const known = new WeakMap<Layout, Map<number, ShortenedLine>>();

function newLine(layout: Layout, longest: number): ShortenedLine {
  const { pieces, nodes, axes } = cutLine(layout);
  const places = drawnPlaces(pieces, nodes, layout, longest);
  const strokes = pieces.map((stroke, i): DrawnStroke => {
    const ends = nodes.ends[i] as readonly [number, number];
    const from = places[ends[0]] as Vec3;
    const shift = subtract(from, stroke.from);
    const shortened = isShortened(stroke, longest);
    const axis = axes[i] as Vec3;
    if (stroke.kind === 'arc')
      return { stroke, from, to: add(stroke.to, shift), centre: add(stroke.centre, shift), axis, shortened };
    return { stroke, from, to: places[ends[1]] as Vec3, axis, shortened };
  });
  const placed = new WeakMap<Vec3, Vec3>();
  const place = (at: Vec3): Vec3 => {
    const before = placed.get(at) ?? placeOn(strokes, at);
    placed.set(at, before);
    return before;
  };
  return { strokes, place, anyShortened: strokes.some((s) => s.shortened) };
}

/** What does not depend on the length drawn: pieces, the numbers of their ends, and their directions. */
interface CutLine {
  readonly pieces: readonly Stroke[];
  readonly nodes: Ends;
  readonly axes: readonly Vec3[];
}

const cut = new WeakMap<Layout, CutLine>();

function cutLine(layout: Layout): CutLine {
  const before = cut.get(layout);
  if (before !== undefined) return before;
  const pieces = layout.strokes.filter((s) => !isPump(s)).flatMap((s) => cutAtSupports(s, layout));
  const axes = pieces.map((stroke) => strokeAxis(stroke, layout.strokes));
  const line: CutLine = { pieces, nodes: numberedEnds(pieces), axes };
  cut.set(layout, line);
  return line;
}

const isPump = (stroke: Stroke): boolean => stroke.kind === 'straight' && stroke.role === 'pump';

function isShortened(stroke: Stroke, longest: number): boolean {
  return (
    stroke.kind === 'straight' && stroke.role === 'pipe' && apart(stroke.from, stroke.to) > longest * 1.001
  );
}

/** Drawn length over length: long runs shorter, short valves and flanges long enough for their symbol. */
function drawnShare(stroke: Stroke, longest: number): number {
  const length = apart(stroke.from, stroke.to);
  if (isShortened(stroke, longest)) return longest / length;
  const least = stroke.kind === 'straight' ? (LEAST_LENGTH[stroke.role] ?? 0) * stroke.diameter : 0;
  return length > SAME_PLACE && length < least ? least / length : 1;
}

/** A straight pipe in pieces between the supports that stand on it. */
function cutAtSupports(stroke: Stroke, layout: Layout): readonly Stroke[] {
  if (stroke.kind !== 'straight' || stroke.role !== 'pipe') return [stroke];
  const length = apart(stroke.from, stroke.to);
  const margin = (2 * ON_AXIS) / Math.max(length, 4 * ON_AXIS);
  const cuts = layout.supports
    .map((support) => ({
      at: support.at,
      point: support.point,
      share: nearestShare(support.at, stroke.from, stroke.to),
    }))
    .filter(
      ({ at, share }) =>
        share > margin && share < 1 - margin && apart(at, between(stroke.from, stroke.to, share)) < ON_AXIS,
    )
    .sort((a, b) => a.share - b.share);
  const stations = [{ share: 0, point: stroke.points[0] }, ...cuts, { share: 1, point: stroke.points[1] }];
  return stations.slice(1).map((end, i) => {
    const start = stations[i] as (typeof stations)[number];
    const place = (share: number) => between(stroke.from, stroke.to, share);
    return { ...stroke, from: place(start.share), to: place(end.share), points: [start.point, end.point] };
  });
}

interface Ends {
  readonly places: readonly Vec3[];
  /** Numbers of the two ends of every piece. */
  readonly ends: readonly (readonly [number, number])[];
}

function numberedEnds(pieces: readonly Stroke[]): Ends {
  const places: Vec3[] = [];
  const cells = new Map<string, number[]>();
  // A place near the side of its cell may have been filed in the next one.
  const spans = (x: number): readonly number[] => {
    const [low, high] = [Math.floor((x - SAME_PLACE) / CELL), Math.floor((x + SAME_PLACE) / CELL)];
    return low === high ? [low] : [low, high];
  };
  const keys = (at: Vec3): readonly string[] =>
    spans(at[0]).flatMap((x) => spans(at[1]).flatMap((y) => spans(at[2]).map((z) => `${x} ${y} ${z}`)));
  const number = (at: Vec3): number => {
    const near = keys(at);
    for (const key of near)
      for (const known of cells.get(key) ?? [])
        if (apart(places[known] as Vec3, at) < SAME_PLACE) return known;
    for (const key of near) cells.set(key, [...(cells.get(key) ?? []), places.length]);
    return places.push(at) - 1;
  };
  return { ends: pieces.map((piece) => [number(piece.from), number(piece.to)] as const), places };
}

/** Walks outward from the pump and lays every end down; a part without contact moves with its nearest neighbour. */
function drawnPlaces(
  pieces: readonly Stroke[],
  nodes: Ends,
  layout: Layout,
  longest: number,
): readonly Vec3[] {
  const drawn: (Vec3 | undefined)[] = nodes.places.map(() => undefined);
  const touching: number[][] = nodes.places.map(() => []);
  nodes.ends.forEach(([a, b], i) => {
    touching[a]?.push(i);
    touching[b]?.push(i);
  });
  const queue: number[] = [];
  const settle = (node: number, at: Vec3): void => {
    if (drawn[node] !== undefined) return;
    drawn[node] = at;
    queue.push(node);
  };
  const spread = (): void => {
    for (let node = queue.shift(); node !== undefined; node = queue.shift()) {
      for (const i of touching[node] ?? []) {
        const [a, b] = nodes.ends[i] as readonly [number, number];
        const other = a === node ? b : a;
        const run = subtract(nodes.places[other] as Vec3, nodes.places[node] as Vec3);
        settle(other, add(drawn[node] as Vec3, scale(run, drawnShare(pieces[i] as Stroke, longest))));
      }
    }
  };
  for (const nozzle of [layout.nozzles.suction, layout.nozzles.discharge])
    nodes.places.forEach((at, i) => {
      if (apart(at, nozzle.at) < SAME_PLACE) settle(i, at);
    });
  spread();
  for (let loose = drawn.indexOf(undefined); loose >= 0; loose = drawn.indexOf(undefined)) {
    const at = nodes.places[loose] as Vec3;
    const neighbour = nearestSettled(at, nodes.places, drawn);
    settle(
      loose,
      neighbour === undefined
        ? at
        : add(at, subtract(drawn[neighbour] as Vec3, nodes.places[neighbour] as Vec3)),
    );
    spread();
  }
  return drawn as Vec3[];
}

function nearestSettled(
  at: Vec3,
  places: readonly Vec3[],
  drawn: readonly (Vec3 | undefined)[],
): number | undefined {
  let best: number | undefined;
  places.forEach((place, i) => {
    if (drawn[i] !== undefined && (best === undefined || apart(place, at) < apart(places[best] as Vec3, at)))
      best = i;
  });
  return best;
}

/** Drawn place of any place: as far along, and as far beside, the nearest stroke. */
function placeOn(strokes: readonly DrawnStroke[], at: Vec3): Vec3 {
  let best: { readonly gap: number; readonly drawn: Vec3 } | undefined;
  for (const { stroke, from, to } of strokes) {
    const share = nearestShare(at, stroke.from, stroke.to);
    const foot = between(stroke.from, stroke.to, share);
    const gap = apart(at, foot);
    if (best !== undefined && gap >= best.gap - 1e-9) continue;
    const drawn =
      stroke.kind === 'arc'
        ? add(at, subtract(from, stroke.from))
        : along(between(from, to, share), subtract(at, foot), 1);
    best = { gap, drawn };
  }
  return best?.drawn ?? at;
}
