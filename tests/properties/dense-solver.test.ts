// Outside check: plain pipes solved again with the textbook 12 × 12 stiffness, written apart from the product, and a dense
// factor of a general-purpose library.
import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { expect, test } from 'vitest';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame } from '../../src/model/frame/frame.js';
import { cross, norm, subtract, unit } from '../../src/model/vector.js';
import { anchor, condition, force, frame, NPS4, of, pipe, STEEL } from '../mechanics/small-frames.js';
import { furthestApart } from './random-line.js';

const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
const A = (Math.PI / 4) * (NPS4.outsideDiameter ** 2 - inside ** 2);
const I = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - inside ** 4);
const E = STEEL.modulus;
const G = E / 2.6;

/** Textbook stiffness of a space beam with shear area A/2, local axes x y z at both ends. */
function textbook(L: number): Matrix {
  const phi = (12 * E * I) / (G * (A / 2) * L ** 2);
  const [a, b, c, d, t, e] = [
    (12 * E * I) / (L ** 3 * (1 + phi)),
    (6 * E * I) / (L ** 2 * (1 + phi)),
    ((4 + phi) * E * I) / (L * (1 + phi)),
    ((2 - phi) * E * I) / (L * (1 + phi)),
    (G * 2 * I) / L,
    (E * A) / L,
  ];
  const k = Matrix.zeros(12, 12);
  const put = (i: number, j: number, value: number) => {
    k.set(i, j, value);
    k.set(j, i, value);
  };
  put(0, 0, e);
  put(6, 6, e);
  put(0, 6, -e);
  put(3, 3, t);
  put(9, 9, t);
  put(3, 9, -t);
  put(1, 1, a);
  put(7, 7, a);
  put(1, 7, -a);
  put(1, 5, b);
  put(1, 11, b);
  put(5, 7, -b);
  put(7, 11, -b);
  put(5, 5, c);
  put(11, 11, c);
  put(5, 11, d);
  put(2, 2, a);
  put(8, 8, a);
  put(2, 8, -a);
  put(2, 4, -b);
  put(2, 10, -b);
  put(4, 8, b);
  put(8, 10, b);
  put(4, 4, c);
  put(10, 10, c);
  put(4, 10, d);
  return k;
}

function denseMovements(built: Frame): readonly number[] {
  const names = Object.keys(built.points);
  const K = Matrix.zeros(6 * names.length, 6 * names.length);
  const f = Matrix.zeros(6 * names.length, 1);
  for (const member of built.members) {
    const [from, to] = [of(built.points, member.from), of(built.points, member.to)];
    const x = unit(subtract(to, from));
    const z = unit(cross(x, Math.abs(x[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0]));
    const y = cross(z, x);
    const T = Matrix.zeros(12, 12);
    for (let block = 0; block < 12; block += 3) {
      [x, y, z].forEach((axis, row) => {
        axis.forEach((value, column) => {
          T.set(block + row, block + column, value);
        });
      });
    }
    const k = T.transpose()
      .mmul(textbook(norm(subtract(to, from))))
      .mmul(T);
    const at = [member.from, member.to].flatMap((name) =>
      Array.from({ length: 6 }, (_, i) => 6 * names.indexOf(name) + i),
    );
    at.forEach((row, i) => {
      at.forEach((column, j) => {
        K.set(row, column, K.get(row, column) + k.get(i, j));
      });
    });
  }
  for (const { point, wrench } of built.conditions[0]?.loads ?? []) {
    [...wrench.force, ...wrench.moment].forEach((value, i) => {
      f.set(6 * names.indexOf(point) + i, 0, value);
    });
  }
  const held = new Set(built.supports.map(({ point }) => names.indexOf(point)));
  const free = Array.from({ length: 6 * names.length }, (_, i) => i).filter(
    (i) => !held.has(Math.floor(i / 6)),
  );
  const u = solve(K.selection(free, free), f.selection(free, [0]));
  const all = new Array<number>(6 * names.length).fill(0);
  free.forEach((i, row) => {
    all[i] = u.get(row, 0);
  });
  return all;
}

const place = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -4, max: 4, noNaN: true }))) as fc.Arbitrary<
  [number, number, number]
>;

test('a net of pipes moves as a dense solver says', () => {
  fc.assert(
    fc.property(
      fc.array(place, { minLength: 4, maxLength: 8 }),
      fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { maxLength: 4 }),
      (places, links) => {
        const name = (i: number) => `p${i % places.length}`;
        const pairs = [...places.slice(1).map((_, i) => [i, i + 1] as const), ...links];
        const apart = (i: number, j: number) =>
          norm(subtract(places[i % places.length] ?? [0, 0, 0], places[j % places.length] ?? [0, 0, 0]));
        fc.pre(pairs.slice(0, places.length - 1).every(([i, j]) => apart(i, j) > 0.3));
        const real = pairs.filter(([i, j]) => apart(i, j) > 0.3);
        const built = frame({
          points: Object.fromEntries(places.map((at, i): [string, Vec3] => [name(i), at])),
          members: real.map(([i, j], n) => pipe(`m${n}`, name(i), name(j))),
          supports: [anchor('A', 'p0')],
          conditions: [
            condition({
              loads: places
                .slice(1)
                .map((_, i) => force(name(i + 1), [100 * i, -200, 300], [10, 20 * i, -30])),
            }),
          ],
        });
        const solved = of(solveFrame(built).conditions, 'test');
        const ours = Object.values(solved.movements).flatMap(({ translation, rotation }) => [
          ...translation,
          ...rotation,
        ]);
        expect(furthestApart(ours, denseMovements(built))).toBeLessThan(1e-8);
      },
    ),
    { numRuns: 40, seed: 1955, endOnFailure: true },
  );
});
