// Source   Table of continuous beams with equal spans and uniform load, a civil-engineering formula handbook (table 2.1),
//          with a second page of formulas that agrees
// Printed  reactions over w L: 2 spans 3/8, 5/4, 3/8; 3 spans 4/10, 11/10, …; 4 spans 11/28, 32/28, 26/28, …; 5 spans
//          15/38, 43/38, 37/38, …; 6 spans 41/104, 118/104, 100/104, 106/104, …. Support moments over w L²: 1/8; 1/10; 3/28,
//          2/28; 4/38, 3/38; 11/104, 8/104, 9/104. Span moments: 0.0703; 0.080, 0.025; 0.0772, 0.0364; 0.0779, 0.0332, 0.0461.
//          Largest deflection of three spans over w L⁴/E I: 0.0069.
// Checked  by hand with the three-moment equation for two and three spans: M₁ = w L²/8; M₁ = M₂ = w L²/10.
// Limits   slender beam: shear deformation is left out. Ends and supports hold up and down only.
import { describe, expect, test } from 'vitest';
import { memberForces } from '../../src/mechanics/frame/recovery/member-forces.js';
import { sagAlong } from '../../src/mechanics/frame/recovery/movement-along.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import {
  condition,
  frame,
  NPS4,
  of,
  prop,
  restraint,
  runThrough,
  STEEL,
  support,
} from '../mechanics/small-frames.js';
import { relativeError, withinPrintedRounding } from './printed-value.js';

const L = 3.048;
const w = 238;
const inside = NPS4.outsideDiameter - 2 * NPS4.wall;
const EI = (STEEL.modulus * Math.PI * (NPS4.outsideDiameter ** 4 - inside ** 4)) / 64;
const UP: Vec3 = [0, 0, 1];

function spans(count: number, length = L) {
  const places = Array.from({ length: count + 1 }, (_, i): Vec3 => [i * length, 0, 0]);
  const run = runThrough(places, { mass: { metal: w / 9.80665, covering: 0 } });
  const names = Object.keys(run.points);
  const weighed = condition({ gravity: [0, 0, -9.80665] });
  const built = frame({
    ...run,
    supports: [
      ...names.map((name) => prop(name, name, UP)),
      prop('held', 'a', [1, 0, 0], [0, 1, 0]),
      support('turns', 'a', [
        restraint([1, 0, 0], { acts: 'rotation' }),
        restraint(UP, { acts: 'rotation' }),
      ]),
    ],
    conditions: [weighed],
    options: { withoutShear: true },
  });
  const answer = of(solveFrame(built).conditions, 'test');
  const names2 = run.members.map((member) => member.name);
  const momentAt = (member: string, share: number) =>
    memberForces(built, weighed, answer, member, [share])[0]?.bendingInPlane ?? Number.NaN;
  return {
    reactions: names.map((name) => -of(answer.supports, name).load.force[2] / (w * length)),
    supportMoments: names2.slice(1).map((name) => Math.abs(momentAt(name, 0)) / (w * length ** 2)),
    // The largest moment of a span lies where its shear vanishes: at V/w from its start.
    spanMoments: names2.map((name) => {
      const shear = memberForces(built, weighed, answer, name, [0])[0]?.shearInPlane ?? 0;
      return Math.abs(momentAt(name, Math.abs(shear) / (w * length))) / (w * length ** 2);
    }),
    sag: sagAlong(built, weighed, answer, names2.slice(0, 1)).sag / ((w * length ** 4) / EI),
  };
}

const printed = [
  { count: 2, reactions: [3, 10, 3], of: 8, moments: [1], over: 8 },
  { count: 3, reactions: [4, 11, 11, 4], of: 10, moments: [1, 1], over: 10 },
  { count: 4, reactions: [11, 32, 26, 32, 11], of: 28, moments: [3, 2, 3], over: 28 },
  { count: 5, reactions: [15, 43, 37, 37, 43, 15], of: 38, moments: [4, 3, 3, 4], over: 38 },
  { count: 6, reactions: [41, 118, 100, 106, 100, 118, 41], of: 104, moments: [11, 8, 9, 8, 11], over: 104 },
] as const;

describe.each(printed)('$count equal spans', ({ count, reactions, of: whole, moments, over }) => {
  const beam = spans(count);

  test(`reactions of ${count} spans, over w L`, () => {
    reactions.forEach((part, i) => {
      const value = { text: String(part), lastDigit: 1e-9, toSi: 1 };
      expect(withinPrintedRounding((beam.reactions[i] ?? 0) * whole, value)).toBe(true);
    });
  });

  test(`support moments of ${count} spans, over w L²`, () => {
    moments.forEach((part, i) => {
      const value = { text: String(part), lastDigit: 1e-9, toSi: 1 };
      expect(withinPrintedRounding((beam.supportMoments[i] ?? 0) * over, value)).toBe(true);
    });
  });
});

test.each([
  { count: 2, texts: ['0.0703'], lastDigit: 0.0001 },
  { count: 3, texts: ['0.080', '0.025', '0.080'], lastDigit: 0.001 },
  { count: 4, texts: ['0.0772', '0.0364'], lastDigit: 0.0001 },
  { count: 5, texts: ['0.0779', '0.0332', '0.0461'], lastDigit: 0.0001 },
])('largest moments within $count spans, over w L²', ({ count, texts, lastDigit }) => {
  const beam = spans(count);
  texts.forEach((text, i) => {
    expect(withinPrintedRounding(beam.spanMoments[i] ?? 0, { text, lastDigit, toSi: 1 })).toBe(true);
  });
});

test('largest deflection of three spans, over w L⁴/E I', () => {
  expect(withinPrintedRounding(spans(3).sag, { text: '0.0069', lastDigit: 0.0001, toSi: 1 })).toBe(true);
});

test('largest deflections of two, four and five spans are the exact ones', () => {
  expect(relativeError(spans(2).sag, 0.00541)).toBeLessThan(2e-3);
  expect(relativeError(spans(4).sag, 0.00646)).toBeLessThan(2e-3);
  expect(relativeError(spans(5).sag, 0.00657)).toBeLessThan(2e-3);
});

test('the check can fail: the reactions of tributary lengths are refused', () => {
  expect(withinPrintedRounding(1 * 10, { text: '11', lastDigit: 1e-9, toSi: 1 })).toBe(false);
  expect(spans(3).reactions[1]).toBeGreaterThan(1.09);
});
