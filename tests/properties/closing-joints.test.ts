// Invariants of joints pulled shut, on lines made at random.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jointClosing, type MisfitWay, wayOf } from '../../src/mechanics/what-ifs/fit-up.js';
import { dot } from '../../src/model/vector.js';
import { CONDITIONS, steps, walkedFrame } from './random-line.js';

const WAYS: readonly MisfitWay[] = ['gap', 'rise', 'offset', 'twist', 'tilt-upright', 'tilt-sideways'];
const [filled] = CONDITIONS.filter(({ name }) => name === 'filled');

/** Six by six closing stiffness at a rigid block put into the first pipe of a random line. */
function stiffnessOf(walk: Parameters<typeof walkedFrame>[0], oneWay: boolean): readonly number[][] {
  const built = walkedFrame(walk, { oneWay });
  const [first] = built.members;
  if (first === undefined || filled === undefined) throw new Error('the line is empty');
  const frame = {
    ...built,
    bodies: [...built.bodies, { name: 'block', points: [first.to], masses: [] }],
  };
  const face = { which: 'suction' as const, point: first.to, axis: [1, 0, 0] as const };
  // What is cut off must lie beyond the block: the pipe before it stays with it by way of a second body point.
  const near = `${first.to} before`;
  const kept = {
    ...frame,
    points: { ...frame.points, [near]: frame.points[first.to] ?? [0, 0, 0] },
    members: frame.members.map((each) => (each === first ? { ...each, to: near } : each)),
    bodies: frame.bodies.map((body) =>
      body.name === 'block' ? { ...body, points: [first.to, near] } : body,
    ),
  };
  const found = jointClosing(kept, filled, 'block', [face]);
  if (found === undefined) throw new Error('nothing beyond the block');
  return WAYS.map((way) =>
    WAYS.map((along) => {
      const { acts, direction } = wayOf(along, found.axes);
      const { force, moment } = found.loads[way].own;
      return dot(acts === 'translation' ? force : moment, direction);
    }),
  );
}

const at = (matrix: readonly number[][], row: number, column: number) => matrix[row]?.[column] ?? Number.NaN;

test('closing a joint costs the same both ways round, and always costs', () => {
  fc.assert(
    fc.property(steps, fc.boolean(), (walk, oneWay) => {
      const K = stiffnessOf(walk, oneWay);
      for (let i = 0; i < 6; i++) {
        expect(at(K, i, i)).toBeGreaterThan(0);
        for (let j = 0; j < i; j++) {
          const size = Math.sqrt(at(K, i, i) * at(K, j, j));
          expect(Math.abs(at(K, i, j) - at(K, j, i)) / size).toBeLessThan(1e-8);
        }
      }
    }),
    { numRuns: 30, seed: 1955 },
  );
});
