import { expect, test } from 'vitest';
import { bodyShare } from '../../src/mechanics/frame/recovery/body-share.js';
import { piecesOf, refineFrame } from '../../src/mechanics/frame/refine-frame.js';
import { solveFrame } from '../../src/mechanics/frame/solve-frame.js';
import { findVibrations } from '../../src/mechanics/modes/find-vibrations.js';
import { naturalFrequencies, smallMovements } from '../../src/mechanics/modes/frequencies.js';
import type { FrameBody } from '../../src/model/frame/frame.js';
import { anchor, condition, force, frame, GRAVITY, NPS4, of, pipe, STEEL } from './small-frames.js';

const LENGTH = 6;
const MASS = 25;
/** A pipe fixed at both ends, in one piece. */
const fixed = frame({
  points: { a: [0, 0, 0], b: [LENGTH, 0, 0], c: [2 * LENGTH, 0, 0] },
  members: [
    pipe('ab', 'a', 'b', { mass: { metal: MASS, covering: 0 } }),
    pipe('bc', 'b', 'c', { mass: { metal: MASS, covering: 0 } }),
  ],
  supports: [anchor('A', 'a'), anchor('B', 'b'), anchor('C', 'c')],
  options: { withoutShear: true },
});
const I = (Math.PI / 64) * (NPS4.outsideDiameter ** 4 - (NPS4.outsideDiameter - 2 * NPS4.wall) ** 4);
/** Fixed at both ends: (4.730041)² / (2 π l²) √(E I / m). */
const exact = (4.730040744862704 ** 2 / (2 * Math.PI * LENGTH ** 2)) * Math.sqrt((STEEL.modulus * I) / MASS);

test('a pipe between two anchors has no vibration before it is cut, and the right one after', () => {
  expect(naturalFrequencies(fixed, condition(), 4).modes).toHaveLength(0);
  const cut = refineFrame(fixed, condition(), 2 * exact);
  const [first] = naturalFrequencies(cut, condition(), 1).modes;
  expect((first?.frequency ?? 0) / exact).toBeGreaterThan(0.9999);
  expect((first?.frequency ?? 0) / exact).toBeLessThan(1.005);
});

test('cutting leaves static answers alone', () => {
  const loaded = condition({ gravity: GRAVITY });
  const whole = { ...fixed, supports: [anchor('A', 'a'), anchor('C', 'c')], conditions: [loaded] };
  const cut = refineFrame(whole, loaded, 60);
  expect(Object.keys(cut.points).length).toBeGreaterThan(Object.keys(whole.points).length);
  const [one, other] = [solveFrame(whole), solveFrame(cut)].map(({ conditions }) => of(conditions, 'test'));
  const sag = (of(one?.movements ?? {}, 'b').translation[2] ?? 0) as number;
  expect(of(other?.movements ?? {}, 'b').translation[2] / sag).toBeCloseTo(1, 9);
});

test('a cut pipe tells in how many pieces', () => {
  const cut = refineFrame(fixed, condition(), 40);
  const count = piecesOf('ab', cut.points);
  expect(count).toBeGreaterThan(1);
  expect(cut.members.filter(({ name }) => name.startsWith('ab'))).toHaveLength(count);
  expect(piecesOf('none', cut.points)).toBe(1);
});

test('without mass or frequency nothing is cut', () => {
  const light = { ...fixed, members: [pipe('ab', 'a', 'b'), pipe('bc', 'b', 'c')] };
  expect(refineFrame(light, condition(), 50).members).toHaveLength(2);
  expect(refineFrame(fixed, condition(), 0).members).toHaveLength(2);
});

test('at least ten vibrations, and one above the frequency that matters, none missing', () => {
  const few = findVibrations(fixed, condition(), exact / 10).frequencies;
  expect(few.modes).toHaveLength(10);
  const many = findVibrations(fixed, condition(), 12 * exact);
  const { modes, completeTo } = many.frequencies;
  expect(completeTo).toBeGreaterThan(12 * exact);
  expect(completeTo).toBe(modes.at(-1)?.frequency);
  expect(many.movements.countBelow(12 * exact)).toBe(modes.filter((m) => m.frequency < 12 * exact).length);
});

/** A mass of 40 kg with rotary inertia at the tip of a light cantilever, and another in the middle of nothing. */
const tip: FrameBody = {
  name: 'tip',
  points: ['b'],
  masses: [
    { name: 'lump', at: [1.5, 0, 0], mass: 40, contents: 0, contentsGroup: '', inertia: [2, 3, 4] },
    { name: 'water', at: [1.5, 0, 0.2], mass: 0, contents: 0.01, contentsGroup: '' },
  ],
};
const cantilever = frame({
  points: { a: [0, 0, 0], b: [1.5, 0, 0] },
  members: [pipe('ab', 'a', 'b')],
  bodies: [tip],
  supports: [anchor('A', 'a')],
});

test('a shape divided by the root of its modal mass has modal mass one: stiffness is then ω²', () => {
  const { modes } = naturalFrequencies(cantilever, condition(), 6);
  expect(modes).toHaveLength(6);
  // Σ φ φᵀ / ω² over all modes is the flexibility: movement of the tip under one newton.
  const lift = modes.reduce((sum, { shape, modalMass, frequency }) => {
    const up = of(shape, 'b').translation[2];
    return sum + up ** 2 / modalMass / (2 * Math.PI * frequency) ** 2;
  }, 0);
  const unit = force('b', [0, 0, 1]);
  const movement = smallMovements(cantilever, condition()).under(unit.point, unit.wrench);
  expect(lift / of(movement, 'b').translation[2]).toBeCloseTo(1, 9);
});

test('small movements start from a settled state and leave weight, heat and settings out', () => {
  const heavy = condition({ gravity: GRAVITY, temperature: 380, loads: [force('b', [5000, 0, 0])] });
  const { point, wrench } = force('b', [0, 100, 0]);
  const light = smallMovements(cantilever, condition()).under(point, wrench);
  const loaded = smallMovements(cantilever, heavy).under(point, wrench);
  expect(of(loaded, 'b').translation[1]).toBeCloseTo(of(light, 'b').translation[1], 12);
  expect(of(loaded, 'b').translation[0]).toBeCloseTo(0, 12);
});

test('all energy of motion is in the only mass, none in a body that is not there', () => {
  const filled = condition({ contentsDensity: 1000, drained: ['line'] });
  for (const mode of naturalFrequencies(cantilever, filled, 6).modes) {
    expect(bodyShare(cantilever, filled, mode, ['tip'])).toBeCloseTo(1, 9);
    expect(bodyShare(cantilever, filled, mode, ['other'])).toBe(0);
  }
});
