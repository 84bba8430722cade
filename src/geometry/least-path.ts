/** A net of numbered places in which a way is looked for. */
export interface Net {
  /** Number of places [-]. */
  readonly count: number;
  readonly start: number;
  readonly goal: number;
  /** Places that can be gone to from a place. */
  readonly neighbours: (place: number) => readonly number[];
  /** Cost of a way prolonged from a place to the next, never less than before; nothing where there is no going. */
  readonly prolonged: (cost: number, from: number, to: number) => number | undefined;
}

/**
 * Way of least cost through a net. Of equal ways that over smaller numbers is taken, so that the answer is always the
 * same.
 *
 * @param net - places, neighbours and costs [-]
 * @returns numbers of the places from start to goal, or nothing when the goal is not reached [-]
 * After Dijkstra, Numerische Mathematik 1 (1959) 269.
 */
export function leastPath(net: Net): readonly number[] | undefined {
  const best = new Float64Array(net.count).fill(Number.POSITIVE_INFINITY);
  const before = new Int32Array(net.count).fill(-1);
  const done = new Uint8Array(net.count);
  const waiting: Waiting[] = [];
  best[net.start] = 0;
  push(waiting, { place: net.start, cost: 0 });
  for (let next = pop(waiting); next !== undefined; next = pop(waiting)) {
    const { place, cost } = next;
    if (done[place] === 1) continue;
    done[place] = 1;
    if (place === net.goal) return wayTo(place, before);
    for (const neighbour of net.neighbours(place)) {
      if (done[neighbour] === 1) continue;
      const longer = net.prolonged(cost, place, neighbour);
      if (longer === undefined || !(longer < (best[neighbour] ?? 0))) continue;
      best[neighbour] = longer;
      before[neighbour] = place;
      push(waiting, { place: neighbour, cost: longer });
    }
  }
  return undefined;
}

function wayTo(goal: number, before: Int32Array): readonly number[] {
  const way: number[] = [];
  for (let place = goal; place >= 0; place = before[place] ?? -1) way.push(place);
  return way.reverse();
}

interface Waiting {
  readonly place: number;
  readonly cost: number;
}

function isBefore(one: Waiting, other: Waiting): boolean {
  return one.cost < other.cost || (one.cost === other.cost && one.place < other.place);
}

/** Puts an entry into a heap, the least on top. */
function push(heap: Waiting[], entry: Waiting): void {
  let index = heap.length;
  heap.push(entry);
  while (index > 0) {
    const above = (index - 1) >> 1;
    const other = heap[above];
    if (other === undefined || !isBefore(entry, other)) break;
    heap[index] = other;
    heap[above] = entry;
    index = above;
  }
}

/** Takes the least entry from a heap. */
function pop(heap: Waiting[]): Waiting | undefined {
  const top = heap[0];
  const entry = heap.pop();
  if (entry === undefined || heap.length === 0) return top;
  let index = 0;
  heap[0] = entry;
  for (;;) {
    const [left, right] = [heap[2 * index + 1], heap[2 * index + 2]];
    if (left === undefined) return top;
    const toRight = right !== undefined && isBefore(right, left);
    const least = toRight ? right : left;
    if (!isBefore(least, entry)) return top;
    heap[index] = least;
    index = 2 * index + (toRight ? 2 : 1);
    heap[index] = entry;
  }
}
