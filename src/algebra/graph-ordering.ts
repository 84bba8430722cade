/** Undirected graph in compressed rows: neighbours of node n stand at `start[n]` to `start[n + 1]`. */
export interface Graph {
  readonly count: number;
  readonly start: Int32Array;
  readonly neighbours: Int32Array;
}

/**
 * Graph of pairs of nodes; pairs named twice and pairs of a node with itself are kept once or dropped.
 *
 * @param count - number of nodes [-]
 * @param pairs - node numbers, two by two [-]
 * @returns the graph [-]
 * After George and Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981.
 */
export function graphOfPairs(count: number, pairs: Int32Array): Graph {
  const room = new Int32Array(count + 1);
  for (let i = 0; i < pairs.length; i += 2) {
    if (pairs[i] === pairs[i + 1]) continue;
    room[pairs[i]!]!++;
    room[pairs[i + 1]!]!++;
  }
  const start = new Int32Array(count + 1);
  for (let n = 0; n < count; n++) start[n + 1] = start[n]! + room[n]!;
  const next = start.slice(0, count);
  const all = new Int32Array(start[count]!);
  for (let i = 0; i < pairs.length; i += 2) {
    const a = pairs[i]!;
    const b = pairs[i + 1]!;
    if (a === b) continue;
    all[next[a]!++] = b;
    all[next[b]!++] = a;
  }
  return withoutRepeats(count, start, all);
}

function withoutRepeats(count: number, start: Int32Array, all: Int32Array): Graph {
  const kept = new Int32Array(count + 1);
  const seen = new Int32Array(count).fill(-1);
  let write = 0;
  for (let n = 0; n < count; n++) {
    for (let i = start[n]!; i < start[n + 1]!; i++) {
      const other = all[i]!;
      if (seen[other] === n) continue;
      seen[other] = n;
      all[write++] = other;
    }
    kept[n + 1] = write;
  }
  return { count, start: kept, neighbours: all.slice(0, write) };
}

/**
 * Pieces of a graph that hang together.
 *
 * @param graph - the graph [-]
 * @returns piece number of every node, and how many pieces there are [-]
 * After George and Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981.
 */
export function connectedPieces(graph: Graph): { readonly pieceOf: Int32Array; readonly pieces: number } {
  const pieceOf = new Int32Array(graph.count).fill(-1);
  const queue = new Int32Array(graph.count);
  let pieces = 0;
  for (let root = 0; root < graph.count; root++) {
    if (pieceOf[root] !== -1) continue;
    let tail = 1;
    queue[0] = root;
    pieceOf[root] = pieces;
    for (let head = 0; head < tail; head++) {
      const node = queue[head]!;
      for (let i = graph.start[node]!; i < graph.start[node + 1]!; i++) {
        const other = graph.neighbours[i]!;
        if (pieceOf[other] !== -1) continue;
        pieceOf[other] = pieces;
        queue[tail++] = other;
      }
    }
    pieces++;
  }
  return { pieceOf, pieces };
}

/**
 * Order of the nodes that keeps the profile of a matrix small: breadth first from an end of the graph, fewest
 * neighbours first, then turned round (reverse Cuthill-McKee).
 *
 * @param graph - the graph [-]
 * @returns nodes in their new order [-]
 * After George and Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981.
 */
export function reverseCuthillMcKee(graph: Graph): Int32Array {
  const { count } = graph;
  const order = new Int32Array(count);
  const placed = new Uint8Array(count);
  const level = new Int32Array(count);
  const queue = new Int32Array(count);
  let filled = 0;
  for (let seed = 0; seed < count; seed++) {
    if (placed[seed] === 1) continue;
    const first = farEnd(graph, seed, level, queue);
    order[filled] = first;
    placed[first] = 1;
    let tail = filled + 1;
    for (let head = filled; head < tail; head++) {
      const from = tail;
      const node = order[head]!;
      for (let i = graph.start[node]!; i < graph.start[node + 1]!; i++) {
        const other = graph.neighbours[i]!;
        if (placed[other] === 1) continue;
        placed[other] = 1;
        insertByDegree(graph, order, from, tail++, other);
      }
    }
    filled = tail;
  }
  return order.reverse();
}

function degree(graph: Graph, node: number): number {
  return graph.start[node + 1]! - graph.start[node]!;
}

function insertByDegree(graph: Graph, order: Int32Array, from: number, end: number, node: number): void {
  const own = degree(graph, node);
  let at = end;
  while (at > from && degree(graph, order[at - 1]!) > own) {
    order[at] = order[at - 1]!;
    at--;
  }
  order[at] = node;
}

/** A node at the far end of the graph: repeats breadth-first walks while they get deeper. */
function farEnd(graph: Graph, seed: number, level: Int32Array, queue: Int32Array): number {
  let start = seed;
  let depth = -1;
  for (;;) {
    const reached = walk(graph, start, level, queue);
    const last = queue[reached - 1]!;
    const deepest = level[last]!;
    let best = last;
    for (let i = reached - 1; i >= 0 && level[queue[i]!] === deepest; i--) {
      if (degree(graph, queue[i]!) < degree(graph, best)) best = queue[i]!;
    }
    for (let i = 0; i < reached; i++) level[queue[i]!] = 0;
    if (deepest <= depth) return start;
    depth = deepest;
    start = best;
  }
}

/** Levels from 1 at the start; 0 means not reached. */
function walk(graph: Graph, start: number, level: Int32Array, queue: Int32Array): number {
  queue[0] = start;
  level[start] = 1;
  let tail = 1;
  for (let head = 0; head < tail; head++) {
    const node = queue[head]!;
    for (let i = graph.start[node]!; i < graph.start[node + 1]!; i++) {
      const other = graph.neighbours[i]!;
      if (level[other] !== 0) continue;
      level[other] = level[node]! + 1;
      queue[tail++] = other;
    }
  }
  return tail;
}
