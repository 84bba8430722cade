import type { FrameCondition } from '../../../model/frame/frame.js';
import { jointsLeft } from '../hanging-joints.js';
import type { PreparedFrame } from '../prepare-frame.js';

/**
 * Which points move as one, for one set of removed bodies. Bodies that share a point form one rigid cluster with one
 * node of six freedoms, placed at the first of its points; a point on no body is a node of its own; a point to which
 * nothing is joined is no node at all.
 */
export interface Clusters {
  readonly key: string;
  readonly bodyStands: readonly boolean[];
  readonly jointStands: readonly boolean[];
  /** Node of each point, −1 where nothing is joined to it. */
  readonly nodeOf: Int32Array;
  readonly nodeCount: number;
  /** Point at which each node stands. */
  readonly nodePoint: Int32Array;
  /** Points of clusters in the order in which growth is passed on: point, the point before it, the body between if one is. */
  readonly growth: readonly { readonly point: number; readonly before: number; readonly body?: number }[];
}

/**
 * Joins the bodies that stand into rigid clusters.
 *
 * A joint bolted to a removed body hangs from what stands at its other end, and moves with it as one (`jointsLeft`).
 *
 * Growth of a cluster is composed body by body: starting from the first point, each body passes growth on to its
 * other points as its own strain times the arm between them. Where bodies close a loop the growth by the first path
 * counts (bodies in the order of the frame, nearest first).
 *
 * @param prepared - the frame
 * @param condition - for the bodies removed
 * @returns nodes of points [-]
 * @source statics
 */
export function joinClusters(prepared: PreparedFrame, condition: FrameCondition): Clusters {
  const { frame, pointNumber, memberCount } = prepared;
  const count = prepared.places.length;
  const removed = new Set(condition.removed);
  const bodyStands = frame.bodies.map((body) => !removed.has(body.name));
  const { stands: jointStands, hanging } = jointsLeft(frame, removed);
  const links = new Map<number, number[]>();
  for (const { loose, from } of hanging) {
    const ends = [pointNumber.get(loose)!, pointNumber.get(from)!] as const;
    for (const [near, far] of [ends, [ends[1], ends[0]] as const])
      links.set(near, [...(links.get(near) ?? []), far]);
  }
  const joined = new Uint8Array(count);
  const bodiesAt = new Map<number, number[]>();
  frame.bodies.forEach((body, index) => {
    for (const name of body.points) {
      const point = pointNumber.get(name)!;
      if (bodyStands[index] === false) continue;
      joined[point] = 1;
      const list = bodiesAt.get(point);
      if (list === undefined) bodiesAt.set(point, [index]);
      else list.push(index);
    }
  });
  for (let e = 0; e < prepared.elementCount; e++) {
    if (e >= memberCount && jointStands[e - memberCount] === false) continue;
    joined[prepared.from[e]!] = 1;
    joined[prepared.to[e]!] = 1;
  }

  const nodeOf = new Int32Array(count).fill(-1);
  const nodePoint: number[] = [];
  const growth: { point: number; before: number; body?: number }[] = [];
  for (let seed = 0; seed < count; seed++) {
    if (joined[seed] === 0 || nodeOf[seed] !== -1) continue;
    const node = nodePoint.push(seed) - 1;
    nodeOf[seed] = node;
    const queue = [seed];
    for (const before of queue) {
      for (const body of bodiesAt.get(before) ?? []) {
        for (const name of frame.bodies[body]!.points) {
          const point = pointNumber.get(name)!;
          if (nodeOf[point] !== -1) continue;
          nodeOf[point] = node;
          growth.push({ point, before, body });
          queue.push(point);
        }
      }
      for (const point of links.get(before) ?? []) {
        if (nodeOf[point] !== -1) continue;
        nodeOf[point] = node;
        growth.push({ point, before });
        queue.push(point);
      }
    }
  }
  return {
    key: [...removed].sort().join('\u0000'),
    bodyStands,
    jointStands,
    nodeOf,
    nodeCount: nodePoint.length,
    nodePoint: Int32Array.from(nodePoint),
    growth,
  };
}
