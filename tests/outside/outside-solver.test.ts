// Outside check: whole lines with bends, solved again by a general finite-element program that knows nothing of pipes.
//
// Program   Z88 version 13 (Debian package `z88`), slender beams in space; its ways stand in solver-files.ts.
// Model     chords for bends, short stiff beams for bodies, nodal loads for weight and heat: beams-of-frame.ts.
// Limits    worked out from the outside solution alone: compare-outside.ts. Shear deformation is left out on both sides.
//
// Where the program is not on the path these tests are skipped and say so; with OUTSIDE_SOLVER=required they fail instead.
import { readFileSync } from 'node:fs';
import { beforeEach, expect, test } from 'vitest';
import { readInstallation } from '../../src/index.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../src/model/conventions.js';
import type { Frame, FrameMember } from '../../src/model/frame/frame.js';
import { buildLayout } from '../../src/model/layout/build-layout.js';
import { add, cross, dot, norm, scale, subtract, unit } from '../../src/model/vector.js';
import { withoutStructure } from '../input/sample-text.js';
import { anchor, bend, condition, frame, GRAVITY, INCH, NPS4, of, pipe } from '../mechanics/small-frames.js';
import { addLoad, addNode, addPiece, newDraft } from './beam-model.js';
import { type Comparison, compareOutside } from './compare-outside.js';
import { missingPrograms, solveOutside } from './run-solver.js';

const missing = missingPrograms();
const mustRun = process.env.OUTSIDE_SOLVER === 'required';

beforeEach((context) => {
  if (missing.length > 0 && !mustRun) {
    context.skip(
      `no ${missing.join(' and ')} on the PATH: install the Debian package z88 for this comparison`,
    );
  }
});

test('the outside solver is there', () => {
  expect(missing).toEqual([]);
});

/**
 * Cantilever of length L along t with a force F and a moment M at its end:
 *
 *     u = t (F·t) L/EA + F⊥ L³/3EI + (M × t) L²/2EI      θ = (M⊥ + L t × F / 2) L/EI + t (M·t) L/GJ
 */
test.each([
  { along: [1, 0, 0] },
  { along: [0, -1, 0] },
  { along: [0, 0, 1] },
  { along: [0, 0, -1] },
  { along: [-2, 3, 1] },
  { along: [1, 1, -4] },
] as const)('the outside solver bends and turns a beam along $along by the right hand', ({ along }) => {
  const t = unit(along);
  const section = { modulus: 2e11, poisson: 0.3, area: 2e-3, inertia: 1e-6, torsion: 3e-6 };
  const [L, force, moment] = [1.5, [300, -200, 500] as Vec3, [40, 90, -70] as Vec3];
  const draft = newDraft();
  const foot = addNode(draft, [0.2, 0.4, -0.3], true);
  const tip = addNode(draft, add([0.2, 0.4, -0.3], scale(t, L)));
  addPiece(draft, { kind: 'beam', from: foot, to: tip, section });
  addLoad(draft, tip, force, moment);
  const { movements, forces } = solveOutside(draft);
  const EI = section.modulus * section.inertia;
  const GJ = (section.modulus / 2.6) * section.torsion;
  const across = (v: Vec3) => subtract(v, scale(t, dot(v, t)));
  const sum = (...parts: readonly Vec3[]) => parts.reduce((total, part) => add(total, part));
  const moved = sum(
    scale(t, (dot(force, t) * L) / (section.modulus * section.area)),
    scale(across(force), L ** 3 / (3 * EI)),
    scale(cross(moment, t), L ** 2 / (2 * EI)),
  );
  const turned = sum(
    scale(across(moment), L / EI),
    scale(cross(t, force), L ** 2 / (2 * EI)),
    scale(t, (dot(moment, t) * L) / GJ),
  );
  const atFoot = [...scale(force, -1), ...scale(add(moment, cross(scale(t, L), force)), -1)];
  [...moved, ...turned].forEach((value, index) => {
    const { value: found, half } = movements[tip]?.[index] ?? { value: Number.NaN, half: 0 };
    expect(Math.abs(found - value)).toBeLessThan(half + 1e-12);
  });
  atFoot.forEach((value, index) => {
    const { value: found, half } = forces[0]?.[index] ?? { value: Number.NaN, half: 0 };
    expect(Math.abs(found - value)).toBeLessThan(half + 1e-9);
  });
});

test('a bar of the outside solver pulls by its lengthening alone', () => {
  const section = { modulus: 2e11, poisson: 0.3, area: 2e-3, inertia: 1e-6, torsion: 2e-6 };
  const way = unit([1, 2, 2]);
  const stiffness = 4e5;
  const draft = newDraft();
  const foot = addNode(draft, [0, 0, 0], true);
  const tip = addNode(draft, [1.5, 0, 0]);
  const ground = addNode(draft, add([1.5, 0, 0], scale(way, 2)), true);
  addPiece(draft, { kind: 'beam', from: foot, to: tip, section });
  const spring = { ...section, modulus: 2 * stiffness, area: 1 };
  const bar = addPiece(draft, { kind: 'bar', from: tip, to: ground, section: spring });
  addLoad(draft, tip, [0, 700, -100], [20, 0, 0]);
  const { movements, forces } = solveOutside(draft);
  const moved = (movements[tip] ?? []).slice(0, 3).map(({ value }) => value) as [number, number, number];
  const pull = scale(way, stiffness * dot(moved, way));
  expect(norm(pull)).toBeGreaterThan(10);
  pull.forEach((value, index) => {
    expect((forces[bar]?.[index]?.value ?? Number.NaN) / value).toBeCloseTo(1, 4);
  });
});

/** The frame with one condition, without shear deformation as the outside beams. */
const slender = (whole: Frame, name: string): Frame => ({
  ...whole,
  options: { withoutShear: true },
  conditions: whole.conditions.filter((each) => each.name === name),
});

const compared = (whole: Frame, name: string, shown?: Frame) => {
  const solved = of(solveFrame(whole).conditions, name);
  return compareOutside(whole, solved, shown);
};

const stiffBends = (whole: Frame): Frame => ({
  ...whole,
  members: whole.members.map((member) => (member.kind === 'bend' ? { ...member, flexibility: 1 } : member)),
});

/** Legs that are not along the axes, joined by three arcs of different angle, in no one plane; k as of a bare elbow. */
function zShapedLine(): Frame {
  const corners: readonly Vec3[] = [
    [0, 0, 0],
    [2.4, 0.3, 0],
    [2.1, 1.9, 0.4],
    [2.3, 1.6, 2.2],
    [4.9, 2.2, 2.5],
  ];
  const radius = 6 * INCH;
  const middle = (NPS4.outsideDiameter - NPS4.wall) / 2;
  const flexibility = (1.65 * middle ** 2) / (NPS4.wall * radius);
  const points: Record<string, Vec3> = { start: corners[0] ?? [0, 0, 0] };
  const members: FrameMember[] = [];
  const mass = { metal: 16.07, covering: 2.1 };
  let last = 'start';
  for (let corner = 1; corner < corners.length - 1; corner++) {
    const [before, here, after] = corners.slice(corner - 1, corner + 2) as [Vec3, Vec3, Vec3];
    const [back, on] = [unit(subtract(before, here)), unit(subtract(after, here))];
    const halfOpening = Math.acos(dot(back, on)) / 2;
    const tangent = radius / Math.tan(halfOpening);
    const [near, far] = [`bend ${corner} near`, `bend ${corner} far`];
    points[near] = add(here, scale(back, tangent));
    points[far] = add(here, scale(on, tangent));
    const centre = add(here, scale(unit(add(back, on)), radius / Math.sin(halfOpening)));
    members.push(pipe(`leg ${corner}`, last, near, { mass }));
    members.push(bend(`bend ${corner}`, near, far, centre, { mass, flexibility }));
    last = far;
  }
  points.end = corners[corners.length - 1] ?? [0, 0, 0];
  members.push(pipe('last leg', last, 'end', { mass }));
  return frame({
    points,
    members,
    supports: [anchor('A', 'start'), anchor('B', 'end')],
    conditions: [
      condition({ name: 'weight', gravity: GRAVITY, contentsDensity: 998, covering: true }),
      condition({ name: 'heat', temperature: 380 }),
    ],
  });
}

/** The sample of a pump hung between two elbows: bodies, four hangers that all hold, two anchors, two materials. */
function pumpBetweenElbows(): Frame {
  const file = 'samples/pool-hot-water.yaml';
  // The beams have rigid supports and no bracket: what the sample says of either is left out.
  const reading = readInstallation(withoutStructure(readFileSync(file, 'utf8')), { file });
  if (!reading.ok) throw new Error('the sample is refused');
  return buildLayout(reading.installation).frame;
}

const cases = [
  { of: 'a Z-shaped line in space', whole: zShapedLine, name: 'weight' },
  { of: 'a Z-shaped line in space', whole: zShapedLine, name: 'heat' },
  { of: 'a pump hung between elbows', whole: pumpBetweenElbows, name: 'filled' },
  { of: 'a pump hung between elbows', whole: pumpBetweenElbows, name: 'hot' },
];

test.each(cases)('$of, $name: as the outside solver says', ({ whole, name }) => {
  for (const { kind, extrapolated, tolerance } of compared(slender(whole(), name), name)) {
    // A check that lets a thousandth pass would be none.
    expect(tolerance, kind).toBeLessThan(1e-3);
    expect(extrapolated, kind).toBeLessThan(tolerance);
  }
});

// e(n) = c/n² + d/n⁴, so that e(n) − 4 e(2n) = ¾ d/n⁴: 3.2 times the difference of the two values that are free of the first
// part, which the tolerance has; and each error is known no better than the tolerance without it.
test.each(cases)('$of, $name: twice the chords leave a quarter of the error', ({ whole, name }) => {
  const comparisons = compared(slender(whole(), name), name);
  for (const { kind, byChords, tolerance } of comparisons) {
    const [n = Number.NaN, twice = Number.NaN, fourTimes = Number.NaN] = byChords;
    expect(Math.abs(n - 4 * twice), kind).toBeLessThan(5 * tolerance);
    expect(Math.abs(twice - 4 * fourTimes), kind).toBeLessThan(5 * tolerance);
  }
  // Where the first error is fifty tolerances, the quarter is one to a part in ten; the printed figures hide some.
  const isClear = ({ byChords, tolerance }: Comparison) => (byChords[0] ?? 0) > 50 * tolerance;
  expect(comparisons.filter(isClear).length).toBeGreaterThanOrEqual(3);
});

const caught = (comparisons: readonly Comparison[]) =>
  comparisons.filter(({ extrapolated, tolerance }) => !(extrapolated < tolerance)).map(({ kind }) => kind);

test.each(cases)(
  'the check can fail: $of, $name, with bends as stiff as straight pipe',
  ({ whole, name }) => {
    const right = slender(whole(), name);
    expect(caught(compared(right, name, stiffBends(right)))).toHaveLength(5);
  },
);

test('the check can fail: shear deformation, which the outside beams lack, is seen', () => {
  const right = slender(zShapedLine(), 'weight');
  expect(caught(compared({ ...right, options: {} }, 'weight', right))).toHaveLength(5);
});
