/** Places a label may take, each with what it costs: how far it is, what it covers and what its leader crosses. */
import type { Xy } from '../drawing.js';
import {
  type Box,
  boxesOverlap,
  boxInside,
  type Capsule,
  distance,
  grown,
  nearestApproach,
  segmentCrossesBox,
} from '../plane.js';
import { type Label, type LabelRow, labelSize, nearestOnBox } from './label.js';

/** Clear room between two plates [1/72 in]. */
export const BETWEEN_PLATES = 1.5;

/** A stroke this near to a plate counts as covered by it [1/72 in]. */
const CLEARANCE = 0.5;

const DIRECTIONS = 20;

const DISTANCES = [2, 7, 13, 21, 31, 44, 60, 80, 105];

/** What is to be placed, and what is in the way. */
export interface PlacementTask {
  readonly frame: Box;
  readonly labels: readonly Label[];
  readonly obstacles: readonly Capsule[];
  /** Boxes that no label may touch: north arrow, notes. */
  readonly reserved: readonly Box[];
}

/** A place a label may take. */
export interface Candidate {
  readonly box: Box;
  /** Cost without regard to other labels. */
  readonly cost: number;
  readonly leader: readonly [Xy, Xy];
}

/** Places round the thing a label belongs to, cheapest first. @param label - the label @param rows - what is printed of it @param task - frame and obstacles @returns places */
export function candidatesFor(
  label: Label,
  rows: readonly LabelRow[],
  task: PlacementTask,
): readonly Candidate[] {
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
  return found.sort((a, b) => a.cost - b.cost);
}

/** Every place of the frame, for a label whose environment are full. @param label - the label @param rows - what is printed of it @param task - frame and obstacles @returns places */
export function gridCandidates(
  label: Label,
  rows: readonly LabelRow[],
  task: PlacementTask,
): readonly Candidate[] {
  const { width, height } = labelSize(rows);
  const found: Candidate[] = [];
  for (let top = task.frame.top; top + height <= task.frame.bottom; top += height / 2)
    for (let left = task.frame.left; left + width <= task.frame.right; left += width / 3) {
      const candidate = judged(label, { left, top, right: left + width, bottom: top + height }, task);
      if (candidate !== undefined) found.push(candidate);
    }
  return found.sort((a, b) => a.cost - b.cost);
}

const boxAbout = (middle: Xy, width: number, height: number): Box => ({
  left: middle[0] - width / 2,
  top: middle[1] - height / 2,
  right: middle[0] + width / 2,
  bottom: middle[1] + height / 2,
});

/** A place with its cost: distance, what it covers and what its leader crosses. */
function judged(label: Label, box: Box, task: PlacementTask): Candidate | undefined {
  if (!boxInside(box, task.frame) || task.reserved.some((r) => boxesOverlap(box, r, BETWEEN_PLATES)))
    return undefined;
  const edge = nearestOnBox(box, label.anchor);
  const gap = Math.max(0, distance(edge, label.anchor) - label.reach);
  let cost = gap + (gap > 3 ? 6 : 0);
  const [x, y] = label.anchor;
  // Plate and leader together: what stays clear of this box costs nothing.
  const left = Math.min(box.left, x);
  const right = Math.max(box.right, x);
  const top = Math.min(box.top, y);
  const bottom = Math.max(box.bottom, y);
  for (const { obstacle, bounds } of boundedObstacles(task.obstacles)) {
    if (bounds.left > right || bounds.right < left || bounds.top > bottom || bounds.bottom < top) continue;
    const depth = coveredDepth(box, obstacle);
    if (depth > 0) cost += 55 + 3 * depth;
    else if (gap > 3 && segmentCrossesCapsule(edge, label, obstacle))
      cost += 6 + Math.min(18, obstacle.radius);
  }
  return { box, cost, leader: [edge, label.anchor] };
}

interface Bounded {
  readonly obstacle: Capsule;
  readonly bounds: Box;
}

const bounded = new WeakMap<readonly Capsule[], readonly Bounded[]>();

/** Obstacles with the boxes they can touch anything in, worked out once for all labels of a picture. */
function boundedObstacles(obstacles: readonly Capsule[]): readonly Bounded[] {
  const before = bounded.get(obstacles);
  if (before !== undefined) return before;
  const boxes = obstacles.map((obstacle): Bounded => {
    const { from, to, radius } = obstacle;
    const extent: Box = {
      left: Math.min(from[0], to[0]),
      top: Math.min(from[1], to[1]),
      right: Math.max(from[0], to[0]),
      bottom: Math.max(from[1], to[1]),
    };
    return { obstacle, bounds: grown(extent, radius + CLEARANCE) };
  });
  bounded.set(obstacles, boxes);
  return boxes;
}

/** How deep a stroke reaches into a box; 0 when it stays out. */
function coveredDepth(box: Box, capsule: Capsule): number {
  const { from, to, radius } = capsule;
  const wide = grown(box, radius + CLEARANCE);
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
