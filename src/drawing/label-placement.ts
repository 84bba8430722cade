/**
 * Finds a place for every label: near what it belongs to, inside the frame, never on another label, off the pipe
 * where that can be had. First come the important ones; then each in turn moves to where it lies best. No chance
 * is involved: the same picture always comes out the same.
 */
import type { Xy } from './drawing.js';
import { type Label, type LabelRow, labelSize, nearestOnBox, type PlacedLabel } from './label.js';
import {
  type Box,
  boxesOverlap,
  boxInside,
  type Capsule,
  distance,
  grown,
  nearestApproach,
  segmentCrossesBox,
} from './plane.js';

export interface PlacementTask {
  readonly frame: Box;
  readonly labels: readonly Label[];
  readonly obstacles: readonly Capsule[];
  /** Boxes that no label may touch: north arrow, notes. */
  readonly reserved: readonly Box[];
}

export interface Placement {
  readonly placed: readonly PlacedLabel[];
  /** Labels there was no room for. */
  readonly omitted: readonly Label[];
  /** Labels of which only the short form fitted. */
  readonly shortened: readonly Label[];
}

const DISTANCES = [2, 7, 13, 21, 31, 44, 60, 80, 105];
const DIRECTIONS = 20;
/** Clear room between two plates [1/72 in]. */
const BETWEEN_PLATES = 1.5;
const ROUNDS = 6;
/** A label that lies worse than this may push another away; so many of its places are tried. */
const PUSH_ABOVE = 30;
const PUSHES_TRIED = 24;

interface Candidate {
  readonly box: Box;
  /** Cost without regard to other labels. */
  readonly cost: number;
  readonly leader: readonly [Xy, Xy];
}

interface Seat {
  readonly label: Label;
  readonly rows: readonly LabelRow[];
  readonly candidate: Candidate;
  readonly candidates: readonly Candidate[];
}

/**
 * Places labels.
 *
 * @param task - frame, labels and what they should keep clear of
 * @returns places; no two boxes overlap and all lie in the frame
 */
export function placeLabels(task: PlacementTask): Placement {
  const order = task.labels
    .map((label, i) => ({ label, i }))
    .sort((a, b) => b.label.priority - a.label.priority || a.i - b.i);
  const seats: Seat[] = [];
  const omitted: Label[] = [];
  for (const { label } of order) {
    const seat =
      seatFor(label, label.rows, task, seats) ??
      (label.short === undefined ? undefined : seatFor(label, label.short, task, seats));
    if (seat === undefined) omitted.push(label);
    else seats.push(seat);
  }
  for (let round = 0; round < ROUNDS; round++) if (!improve(seats)) break;
  const placed = seats.map(({ label, rows, candidate }) => ({ label, rows, box: candidate.box }));
  return { placed, omitted, shortened: placed.filter((p) => p.rows !== p.label.rows).map((p) => p.label) };
}

function seatFor(
  label: Label,
  rows: readonly LabelRow[],
  task: PlacementTask,
  seats: readonly Seat[],
): Seat | undefined {
  const near = candidatesFor(label, rows, task);
  const first = cheapest(near, seats);
  if (first !== undefined) return { label, rows, candidate: first, candidates: near };
  const anywhere = gridCandidates(label, rows, task);
  const found = cheapest(anywhere, seats);
  return found === undefined
    ? undefined
    : { label, rows, candidate: found, candidates: [...near, ...anywhere] };
}

function cheapest(candidates: readonly Candidate[], others: readonly Seat[]): Candidate | undefined {
  let best: Candidate | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    if (candidate.cost >= least) continue;
    const total = candidate.cost + costAmong(candidate, others, least - candidate.cost);
    if (total < least) [best, least] = [candidate, total];
  }
  return best;
}

/** Cost of a place among others already placed; infinite on top of one. */
function costAmong(candidate: Candidate, others: readonly Seat[], enough: number): number {
  let cost = 0;
  const [a, b] = candidate.leader;
  for (const { candidate: other, label } of others) {
    if (boxesOverlap(candidate.box, other.box, BETWEEN_PLATES)) return Number.POSITIVE_INFINITY;
    if (segmentCrossesBox(a, b, other.box)) cost += 150;
    if (segmentCrossesBox(other.leader[0], other.leader[1], candidate.box)) cost += 150;
    if (
      nearestApproach(
        { from: a, to: b, radius: 0 },
        { from: other.leader[0], to: other.leader[1], radius: 0 },
      ).gap < 0.5
    )
      cost += 45;
    if (boxesOverlap(candidate.box, around(label.anchor, Math.min(label.reach, 6)))) cost += 35;
    if (cost >= enough) return cost;
  }
  return cost;
}

const costOf = (candidate: Candidate, others: readonly Seat[]): number =>
  candidate.cost + costAmong(candidate, others, Number.POSITIVE_INFINITY);

/** One round in which every label may move to a better place, or push one neighbour to another place. */
function improve(seats: Seat[]): boolean {
  let moved = false;
  seats.forEach((first, i) => {
    const seat = seats[i] ?? first;
    const others = seats.filter((_, j) => j !== i);
    const now = costOf(seat.candidate, others);
    const better = cheapest(seat.candidates, others);
    if (better !== undefined && costOf(better, others) < now - 0.5) {
      seats[i] = { ...seat, candidate: better };
      moved = true;
    } else if (now > PUSH_ABOVE && push(seats, i, now)) moved = true;
  });
  return moved;
}

/** Takes a place that exactly one other label holds, when both together lie better after that one has moved. */
function push(seats: Seat[], i: number, now: number): boolean {
  const seat = seats[i] as Seat;
  for (const candidate of seat.candidates
    .filter((c) => c.cost < now - 5)
    .sort((a, b) => a.cost - b.cost)
    .slice(0, PUSHES_TRIED)) {
    const blocking = seats
      .map((_, j) => j)
      .filter((j) => j !== i && clash(candidate, (seats[j] as Seat).candidate));
    const [j] = blocking;
    if (blocking.length !== 1 || j === undefined) continue;
    const rest = seats.filter((_, k) => k !== i && k !== j);
    const other = seats[j] as Seat;
    const mine: Seat = { ...seat, candidate };
    const own = costOf(candidate, rest);
    const away = cheapest(other.candidates, [...rest, mine]);
    if (away === undefined) continue;
    const before = now + costOf(other.candidate, rest);
    if (own + costOf(away, [...rest, mine]) > before - 2) continue;
    seats[i] = mine;
    seats[j] = { ...other, candidate: away };
    return true;
  }
  return false;
}

/** On top of each other, or one's leader through the other. */
function clash(a: Candidate, b: Candidate): boolean {
  return (
    boxesOverlap(a.box, b.box, BETWEEN_PLATES) ||
    segmentCrossesBox(a.leader[0], a.leader[1], b.box) ||
    segmentCrossesBox(b.leader[0], b.leader[1], a.box)
  );
}

function candidatesFor(label: Label, rows: readonly LabelRow[], task: PlacementTask): readonly Candidate[] {
  const { width, height } = labelSize(rows);
  const [x, y] = label.anchor;
  const found: Candidate[] = [];
  DISTANCES.forEach((gap) => {
    for (let i = 0; i < DIRECTIONS; i++) {
      const angle = (2 * Math.PI * i) / DIRECTIONS;
      const way: Xy = [Math.cos(angle), -Math.sin(angle)];
      const reach = label.reach + gap;
      // The middle lies so far out that the nearest edge keeps the distance.
      const push = reach + Math.abs(way[0]) * (width / 2) + Math.abs(way[1]) * (height / 2);
      const middle: Xy = [x + way[0] * push, y + way[1] * push];
      const candidate = judged(label, boxAbout(middle, width, height), task);
      if (candidate !== undefined) found.push(candidate);
    }
  });
  return found;
}

/** Every place of the frame, for a label whose surroundings are full. */
function gridCandidates(label: Label, rows: readonly LabelRow[], task: PlacementTask): readonly Candidate[] {
  const { width, height } = labelSize(rows);
  const found: Candidate[] = [];
  for (let top = task.frame.top; top + height <= task.frame.bottom; top += height / 2)
    for (let left = task.frame.left; left + width <= task.frame.right; left += width / 3) {
      const candidate = judged(label, { left, top, right: left + width, bottom: top + height }, task);
      if (candidate !== undefined) found.push(candidate);
    }
  return found;
}

const boxAbout = (middle: Xy, width: number, height: number): Box => ({
  left: middle[0] - width / 2,
  top: middle[1] - height / 2,
  right: middle[0] + width / 2,
  bottom: middle[1] + height / 2,
});

const around = (at: Xy, reach: number): Box => ({
  left: at[0] - reach,
  top: at[1] - reach,
  right: at[0] + reach,
  bottom: at[1] + reach,
});

/** A place with its cost: distance, what it covers and what its leader crosses. */
function judged(label: Label, box: Box, task: PlacementTask): Candidate | undefined {
  if (!boxInside(box, task.frame) || task.reserved.some((r) => boxesOverlap(box, r, BETWEEN_PLATES)))
    return undefined;
  const edge = nearestOnBox(box, label.anchor);
  const gap = Math.max(0, distance(edge, label.anchor) - label.reach);
  let cost = gap + (gap > 3 ? 6 : 0);
  for (const obstacle of task.obstacles) {
    const depth = coveredDepth(box, obstacle);
    if (depth > 0) cost += 55 + 3 * depth;
    else if (gap > 3 && segmentCrossesCapsule(edge, label, obstacle))
      cost += 6 + Math.min(18, obstacle.radius);
  }
  return { box, cost, leader: [edge, label.anchor] };
}

/** How deep a stroke reaches into a box; 0 when it stays out. */
function coveredDepth(box: Box, capsule: Capsule): number {
  const { from, to, radius } = capsule;
  const wide = grown(box, radius + 0.5);
  if (Math.max(from[0], to[0]) < wide.left || Math.min(from[0], to[0]) > wide.right) return 0;
  if (Math.max(from[1], to[1]) < wide.top || Math.min(from[1], to[1]) > wide.bottom) return 0;
  if (!segmentCrossesBox(from, to, wide)) return 0;
  return Math.min(12, radius + 2);
}

function segmentCrossesCapsule(edge: Xy, label: Label, obstacle: Capsule): boolean {
  const { from, to, radius } = obstacle;
  const [x, y] = label.anchor;
  if (
    Math.min(from[0], to[0]) - radius > Math.max(edge[0], x) ||
    Math.max(from[0], to[0]) + radius < Math.min(edge[0], x)
  )
    return false;
  if (
    Math.min(from[1], to[1]) - radius > Math.max(edge[1], y) ||
    Math.max(from[1], to[1]) + radius < Math.min(edge[1], y)
  )
    return false;
  // What stands at the anchor itself is meant to be reached.
  const gap = distance(edge, label.anchor);
  const share = Math.max(0, gap - label.reach - 3) / Math.max(gap, 1e-9);
  const end: Xy = [
    edge[0] + (label.anchor[0] - edge[0]) * share,
    edge[1] + (label.anchor[1] - edge[1]) * share,
  ];
  return nearestApproach({ from: edge, to: end, radius: 0 }, obstacle).gap < obstacle.radius;
}
