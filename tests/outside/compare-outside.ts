/**
 * The product's solution beside the outside solver's, refined until its own error is known.
 *
 * Chords leave an error that falls with the square of their number n and, next, with its fourth power. So
 *
 *     x* = x(2n) + (x(2n) − x(n)) / 3
 *
 * is free of the first part, and two such values, of n, 2n and of 2n, 4n, differ by fifteen times the error that the
 * second one still has. In the same way what the short stiff beams give way falls with their stiffness S, then with its
 * square, and every x above is
 *
 *     x = x(10 S) + (x(10 S) − x(S)) / 9
 *
 * of which two, of S/10, S and of S, 10 S, differ by 99 times what the second one still has.
 *
 * The tolerance is made of what the outside solver leaves open and of nothing else: both differences whole, and half a
 * unit of the last printed place, as often as the two formulas take it: (4/3 + 1/3) (10/9 + 1/9).
 */
import type { ConditionResponse } from '../../src/mechanics/frame/response.js';
import type { Frame } from '../../src/model/frame/frame.js';
import { of } from '../mechanics/small-frames.js';
import { beamsOf, type Fineness } from './beams-of-frame.js';
import { solveOutside } from './run-solver.js';
import type { Printed } from './solver-files.js';

/** Upright and level forces apart, since the weight would hide the level ones. */
const KINDS = ['upright forces', 'level forces', 'moments', 'movements', 'rotations'] as const;
export type Kind = (typeof KINDS)[number];

/** How far apart the two are for one kind of result; every figure is over the largest of its kind [-]. */
export interface Comparison {
  readonly kind: Kind;
  /** Largest by the product, in SI. */
  readonly largest: number;
  /** With n, 2n and 4n chords. */
  readonly byChords: readonly number[];
  /** From the value that is free of the first part of the chords' error. */
  readonly extrapolated: number;
  readonly tolerance: number;
}

type Values = Readonly<Record<Kind, readonly Printed[]>>;

/** Chords of a bend, coarse to fine, and stiffness of what is rigid; stiffer, rounding in the solver shows. */
const CHORDS = [4, 8, 16] as const;
const STIFFNESS = 1e3;

/** Compares one condition; `shown` is the frame that the outside solver is given, if it is not the same. */
export function compareOutside(
  frame: Frame,
  solved: ConditionResponse,
  shown: Frame = frame,
): readonly Comparison[] {
  const solve = (chords: number, stiffness: number) => outsideValues(shown, solved, { chords, stiffness });
  const pairs = CHORDS.map((chords) => [solve(chords, STIFFNESS), solve(chords, 10 * STIFFNESS)] as const);
  const softest = solve(CHORDS[0], STIFFNESS / 10);
  const ours = productValues(frame, solved);
  return KINDS.map((kind) => {
    const own = numbers(ours[kind]);
    const largest = Math.max(...own.map(Math.abs));
    const byChords = pairs.map(([soft, stiff]) => extrapolate(numbers(soft[kind]), numbers(stiff[kind]), 9));
    const [n = [], twice = [], fourTimes = []] = byChords;
    const softer = extrapolate(numbers(softest[kind]), numbers(pairs[0]?.[0][kind] ?? []), 9);
    const first = extrapolate(n, twice, 3);
    const second = extrapolate(twice, fourTimes, 3);
    const half = Math.max(...pairs.flat().flatMap((values) => values[kind].map((each) => each.half)));
    const open = furthest(second, first) + furthest(n, softer) + (5 / 3) * (11 / 9) * half;
    return {
      kind,
      largest,
      byChords: byChords.map((values) => furthest(values, own) / largest),
      extrapolated: furthest(second, own) / largest,
      tolerance: open / largest,
    };
  });
}

const numbers = (values: readonly Printed[]) => values.map(({ value }) => value);

const extrapolate = (rough: readonly number[], fine: readonly number[], parts: number) =>
  fine.map((value, index) => value + (value - (rough[index] ?? Number.NaN)) / parts);

function furthest(some: readonly number[], others: readonly number[]): number {
  if (some.length !== others.length) throw new Error('not as many values');
  return Math.max(...some.map((value, index) => Math.abs(value - (others[index] ?? Number.NaN))));
}

const exact = (value: number): Printed => ({ value, half: 0 });

function productValues(frame: Frame, solved: ConditionResponse): Values {
  const loads = frame.supports.map(({ name }) => of(solved.supports, name).load);
  const moved = Object.keys(frame.points).map((point) => of(solved.movements, point));
  return {
    'upright forces': loads.map(({ force }) => exact(force[2])),
    'level forces': loads.flatMap(({ force }) => force.slice(0, 2).map(exact)),
    moments: loads.flatMap(({ moment }) => moment.map(exact)),
    movements: moved.flatMap(({ translation }) => translation.map(exact)),
    rotations: moved.flatMap(({ rotation }) => rotation.map(exact)),
  };
}

function outsideValues(frame: Frame, solved: ConditionResponse, fineness: Fineness): Values {
  const model = beamsOf(frame, solved, fineness);
  const results = solveOutside(model);
  const loads = frame.supports.map(({ name }) => {
    const pieces = of(model.measured, name).map((piece) => results.forces[piece] ?? []);
    return Array.from({ length: 6 }, (_, index): Printed => {
      const parts = pieces.map((forces) => forces[index] ?? exact(0));
      return {
        value: parts.reduce((sum, { value }) => sum + value, 0),
        half: parts.reduce((sum, { half }) => sum + half, 0),
      };
    });
  });
  const moved = Object.keys(frame.points).map((point) => results.movements[of(model.named, point)] ?? []);
  return {
    'upright forces': loads.flatMap((six) => six.slice(2, 3)),
    'level forces': loads.flatMap((six) => six.slice(0, 2)),
    moments: loads.flatMap((six) => six.slice(3)),
    movements: moved.flatMap((six) => six.slice(0, 3)),
    rotations: moved.flatMap((six) => six.slice(3)),
  };
}
