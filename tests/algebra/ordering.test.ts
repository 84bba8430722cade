import fc from 'fast-check';
import { expect, test } from 'vitest';
import { connectedPieces, graphOfPairs, reverseCuthillMcKee } from '../../src/algebra/graph-ordering.js';

const graph = fc
  .integer({ min: 1, max: 40 })
  .chain((count) =>
    fc.tuple(fc.constant(count), fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), { maxLength: 80 })),
  );

test('the order names every node once, whatever the graph', () => {
  fc.assert(
    fc.property(graph, ([count, pairs]) => {
      const order = reverseCuthillMcKee(graphOfPairs(count, Int32Array.from(pairs.flat())));
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i));
    }),
  );
});

test('nodes of a pair are in one piece, and pieces are not joined', () => {
  fc.assert(
    fc.property(graph, ([count, pairs]) => {
      const { pieceOf, pieces } = connectedPieces(graphOfPairs(count, Int32Array.from(pairs.flat())));
      for (const [a, b] of pairs) expect(pieceOf[a]).toBe(pieceOf[b]);
      expect(new Set(pieceOf).size).toBe(pieces);
    }),
  );
});

test('pairs named twice and pairs of a node with itself are kept once or dropped', () => {
  const { start, neighbours } = graphOfPairs(3, Int32Array.from([0, 1, 1, 0, 0, 1, 2, 2]));
  expect([...start]).toEqual([0, 1, 2, 2]);
  expect([...neighbours]).toEqual([1, 0]);
});

test('a chain whose nodes are numbered at random comes out as a chain', () => {
  const count = 500;
  // 211 has no factor in common with 500: the numbers jump about and come back once round.
  const name = (i: number) => (211 * i) % count;
  const pairs = Array.from({ length: count - 1 }, (_, i) => [name(i), name(i + 1)]).flat();
  const order = reverseCuthillMcKee(graphOfPairs(count, Int32Array.from(pairs)));
  const place = new Int32Array(count);
  order.forEach((node, at) => {
    place[node] = at;
  });
  const bandwidth = Array.from({ length: count - 1 }, (_, i) =>
    Math.abs((place[name(i)] ?? 0) - (place[name(i + 1)] ?? 0)),
  );
  expect(Math.max(...bandwidth)).toBe(1);
});

test('a chain with side branches keeps a narrow band', () => {
  const pairs: number[] = [];
  for (let i = 0; i < 299; i++) pairs.push(i, i + 1);
  for (let i = 0; i < 300; i += 10) pairs.push(i, 300 + i / 10);
  const order = reverseCuthillMcKee(graphOfPairs(330, Int32Array.from(pairs)));
  const place = new Int32Array(330);
  order.forEach((node, at) => {
    place[node] = at;
  });
  let widest = 0;
  for (let i = 0; i < pairs.length; i += 2) {
    widest = Math.max(widest, Math.abs((place[pairs[i] ?? 0] ?? 0) - (place[pairs[i + 1] ?? 0] ?? 0)));
  }
  expect(widest).toBeLessThanOrEqual(3);
});
