import { expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameSupport } from '../../src/model/frame/frame.js';
import { anchor, condition, frame, GRAVITY, of, pipe, prop, restraint, support } from './small-frames.js';

const UP: Vec3 = [0, 0, 1];

/** A rigid part of 300 kg between two pipes, held by what is given at three places in line. */
const heldBy = (...supports: readonly FrameSupport[]): Frame =>
  frame({
    points: { a: [0, 0, 0], b: [2, 0, 0], c: [2.5, 0, 0], d: [3, 0, 0], e: [5, 0, 0] },
    members: [pipe('ab', 'a', 'b'), pipe('de', 'd', 'e')],
    bodies: [
      {
        name: 'pump',
        points: ['b', 'c', 'd'],
        masses: [{ name: 'lump', at: [2.5, 0, 0], mass: 300, contents: 0, contentsGroup: 'pump' }],
      },
    ],
    supports: [anchor('A', 'a'), anchor('E', 'e'), ...supports],
    conditions: [condition({ gravity: GRAVITY })],
  });
const solved = (built: Frame) => of(solveFrame(built).conditions, 'test').supports;

test('three rigid supports in line on one rigid part: nothing says how they share', () => {
  const answer = solved(heldBy(prop('H1', 'b', UP), prop('H2', 'c', UP), prop('H3', 'd', UP)));
  for (const mark of ['H1', 'H2', 'H3']) expect(of(answer, mark).undetermined).toEqual(['vertical']);
  // The least sum of squares by symmetry: a third of the weight each.
  expect(-of(answer, 'H2').load.force[2]).toBeCloseTo((300 * 9.80665) / 3, 6);
  expect(of(answer, 'A').undetermined).toBeUndefined();
});

test('with a stiffness each they share by it, and one of two in line is told by statics', () => {
  const soft = (name: string, point: string, stiffness: number) =>
    support(name, point, [restraint(UP, { stiffness })]);
  const elastic = solved(heldBy(soft('H1', 'b', 2e7), soft('H2', 'c', 4e7), soft('H3', 'd', 2e7)));
  for (const mark of ['H1', 'H2', 'H3']) expect(of(elastic, mark).undetermined).toBeUndefined();
  const ratio = of(elastic, 'H2').load.force[2] / of(elastic, 'H1').load.force[2];
  expect(ratio).toBeCloseTo(2, 6);
  const two = solved(heldBy(prop('H1', 'b', UP), prop('H3', 'd', UP)));
  for (const mark of ['H1', 'H3']) expect(of(two, mark).undetermined).toBeUndefined();
});

test('an anchor on the part leaves forces and moments open; twice the same direction in one support does not', () => {
  const anchored = solved(heldBy(anchor('C', 'c'), prop('H1', 'b', UP)));
  expect(of(anchored, 'C').undetermined).toEqual(['vertical', 'moment']);
  expect(of(anchored, 'H1').undetermined).toEqual(['vertical']);
  const twice = solved(heldBy(support('H2', 'c', [restraint(UP), restraint(UP)])));
  expect(of(twice, 'H2').undetermined).toBeUndefined();
});
