/**
 * Finds a place for every label: near what it belongs to, inside the frame, never on another label, off the pipe
 * where that can be had. First come the important ones; then each in turn moves to where it lies best. No chance
 * is involved: the same picture always comes out the same.
 */
import type { Xy } from '../drawing.js';
import { type Box, boxesOverlap, segmentCrossesBox, segmentsCross } from '../plane.js';
import type { Label, LabelRow, PlacedLabel } from './label.js';
import {
  BETWEEN_PLATES,
  type Candidate,
  candidatesFor,
  gridCandidates,
  type PlacementTask,
} from './label-candidates.js';

export interface Placement {
  readonly placed: readonly PlacedLabel[];
  /** Labels there was no room for. */
  readonly omitted: readonly Label[];
  /** Labels of which only the short form fitted. */
  readonly shortened: readonly Label[];
}

const ROUNDS = 6;
/** A label that lies worse than this may push another away; so many of its places are tried. */
const PUSH_ABOVE = 30;
const PUSHES_TRIED = 24;

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
    : { label, rows, candidate: found, candidates: [...near, ...anywhere].sort((a, b) => a.cost - b.cost) };
}

function cheapest(candidates: readonly Candidate[], others: readonly Seat[]): Candidate | undefined {
  let best: Candidate | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    // Candidates come cheapest first.
    if (candidate.cost >= least) break;
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
    if (segmentsCross(a, b, other.leader[0], other.leader[1])) cost += 45;
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
  for (const candidate of seat.candidates.filter((c) => c.cost < now - 5).slice(0, PUSHES_TRIED)) {
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

const around = (at: Xy, reach: number): Box => ({
  left: at[0] - reach,
  top: at[1] - reach,
  right: at[0] + reach,
  bottom: at[1] + reach,
});
