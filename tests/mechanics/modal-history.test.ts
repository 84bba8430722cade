import { expect, test } from 'vitest';
import {
  againstDynamicFactor,
  type LoadedMode,
  modalHistory,
} from '../../src/mechanics/modes/modal-history.js';
import { driveStages } from '../../src/mechanics/start/drive-stages.js';
import { stepFactor } from '../../src/mechanics/start/dynamic-factor.js';
import { runUp } from '../../src/mechanics/start/run-up.js';
import { startTwist } from '../../src/mechanics/start/start-twist.js';
import { load, started, wyeDelta } from './starting-sets.js';

/**
 * Two equal masses m in a row on springs k from a wall, pushed at the outer one. With k/m = κ the shapes are (1, φ) with
 * φ = (1 ± √5)/2 and ω² = κ (3 ∓ √5)/2; scaled to unit modal mass they are divided by √(m (1 + φ²)). A force F at the
 * end moves the masses by F/k and 2F/k and pulls each spring with F.
 */
const MASS = 40;
const SPRING = 60_000;
const modes: readonly LoadedMode[] = [1, -1].map((sign) => {
  const φ = (1 + sign * Math.sqrt(5)) / 2;
  const scale = 1 / Math.sqrt(MASS * (1 + φ ** 2));
  const ω = Math.sqrt(((SPRING / MASS) * (3 - sign * Math.sqrt(5))) / 2);
  return {
    frequency: ω / (2 * Math.PI),
    participation: φ * scale,
    outputs: { inner: scale, outer: φ * scale, wallSpring: SPRING * scale },
  };
});
const unitStatic = { inner: 1 / SPRING, outer: 2 / SPRING, wallSpring: 1 };
const push = { time: [0, 3], load: [100, 100] };
const first = modes.slice(0, 1);

/** The same two masses stepped by Runge-Kutta, a way that knows no modes. */
function direct(until: number, dampingless: { readonly load: number }): readonly [number, number][] {
  const rate = ([a, b, u, v]: readonly number[]): number[] => [
    u ?? 0,
    v ?? 0,
    (SPRING * ((b ?? 0) - 2 * (a ?? 0))) / MASS,
    (dampingless.load - SPRING * ((b ?? 0) - (a ?? 0))) / MASS,
  ];
  const moved = (state: readonly number[], by: readonly number[], step: number) =>
    state.map((part, index) => part + step * (by[index] ?? 0));
  const h = 1e-4;
  let state: readonly number[] = [0, 0, 0, 0];
  const places: [number, number][] = [];
  for (let step = 0; step < until / h; step += 1) {
    places.push([state[0] ?? 0, state[1] ?? 0]);
    const k1 = rate(state);
    const k2 = rate(moved(state, k1, h / 2));
    const k3 = rate(moved(state, k2, h / 2));
    const k4 = rate(moved(state, k3, h));
    state = state.map(
      (part, index) =>
        part + (h / 6) * ((k1[index] ?? 0) + 2 * (k2[index] ?? 0) + 2 * (k3[index] ?? 0) + (k4[index] ?? 0)),
    );
  }
  return places;
}

test('all modes together carry the whole static output', () => {
  const { outputs } = modalHistory({ modes, unitStatic, history: push, dampingRatio: 0 });
  for (const output of Object.values(outputs)) expect(output.inModes).toBeCloseTo(1, 12);
});

test('two masses move as stepped without modes', () => {
  const { time, outputs } = modalHistory({ modes, unitStatic, history: push, dampingRatio: 0 });
  const places = direct(3, { load: 100 });
  let compared = 0;
  for (const [sample, at] of time.entries()) {
    const place = places[Math.round(at * 1e4)];
    if (place === undefined || Math.abs(at * 1e4 - Math.round(at * 1e4)) > 1e-6) continue;
    compared += 1;
    expect(outputs.inner?.values[sample]).toBeCloseTo(place[0], 8);
    expect(outputs.outer?.values[sample]).toBeCloseTo(place[1], 8);
  }
  expect(compared).toBeGreaterThan(2);
});

test('what the modes leave out follows the load at once, so that a load put on slowly gives the static output', () => {
  const slow = { time: [0, 400, 410], load: [0, 100, 100] };
  const { outputs } = modalHistory({ modes: first, unitStatic, history: slow, dampingRatio: 0.05 });
  for (const [name, output] of Object.entries(outputs)) {
    expect(output.quasiStatic).toBeCloseTo(100 * unitStatic[name as keyof typeof unitStatic], 12);
    expect(output.factor).toBeGreaterThan(0.999);
    expect(output.factor).toBeLessThan(1.002);
    expect(output.values.at(-1)).toBeCloseTo(output.quasiStatic, 4);
  }
  expect(outputs.wallSpring?.inModes).not.toBeCloseTo(1, 2);
});

test('a single mode has the dynamic factor of the single freedom', () => {
  const only = { modes: first, unitStatic: { inner: staticOf(first, 'inner') }, history: push };
  for (const dampingRatio of [0, 0.02, 0.1]) {
    const { outputs } = modalHistory({ ...only, dampingRatio });
    expect(outputs.inner?.factor).toBeCloseTo(stepFactor(dampingRatio), 1);
    expect(Math.abs((outputs.inner?.factor ?? 0) / stepFactor(dampingRatio) - 1)).toBeLessThan(0.004);
  }
});

function staticOf(some: readonly LoadedMode[], name: string): number {
  return some.reduce(
    (sum, mode) =>
      sum + (mode.participation * (mode.outputs[name] ?? 0)) / (2 * Math.PI * mode.frequency) ** 2,
    0,
  );
}

test('both ways of stepping agree to 1 % on the twist of a start', () => {
  for (const method of [{ kind: 'across the line' } as const, wyeDelta]) {
    const start = runUp({ inertia: 0.5, load, stages: driveStages(started(method), 0.5) });
    const { history } = startTwist(start);
    const exact = modalHistory({ modes, unitStatic, history, dampingRatio: 0.02 });
    const newmark = modalHistory({ modes, unitStatic, history, dampingRatio: 0.02 }, 'average acceleration');
    for (const name of Object.keys(unitStatic)) {
      const one = exact.outputs[name]?.largest ?? Number.NaN;
      const other = newmark.outputs[name]?.largest ?? Number.NaN;
      expect(Math.abs(other / one - 1)).toBeLessThan(0.01);
    }
  }
});

test('no output exceeds the sum of its parts', () => {
  const { outputs } = modalHistory({ modes, unitStatic, history: push, dampingRatio: 0 });
  for (const output of Object.values(outputs)) {
    expect(Math.abs(output.largest)).toBeLessThanOrEqual(output.ceiling * (1 + 1e-12));
    expect(Math.abs(output.largest)).toBeGreaterThan(0.7 * output.ceiling);
  }
});

test('twice the static value covers an output that one mode carries', () => {
  const { outputs } = modalHistory({ modes, unitStatic, history: push, dampingRatio: 0.02 });
  if (outputs.outer === undefined) throw new Error('no output');
  const compared = againstDynamicFactor(outputs.outer, stepFactor(0));
  expect(compared.covers).toBe(true);
  expect(compared.ratio).toBeGreaterThan(0.8);
  expect(compared.estimate).toBeCloseTo((2 * 100 * 2) / SPRING, 12);
});

test('where modes cancel at rest, static value times factor is too little and says so', () => {
  const [low, high] = modes;
  if (low === undefined || high === undefined) throw new Error('no modes');
  const cancelling = [
    { ...low, outputs: { between: (2 * Math.PI * low.frequency) ** 2 / low.participation } },
    { ...high, outputs: { between: (-0.95 * (2 * Math.PI * high.frequency) ** 2) / high.participation } },
  ];
  const { outputs } = modalHistory({
    modes: cancelling,
    unitStatic: { between: 0.05 },
    history: push,
    dampingRatio: 0,
  });
  if (outputs.between === undefined) throw new Error('no output');
  const compared = againstDynamicFactor(outputs.between, stepFactor(0));
  expect(compared.covers).toBe(false);
  expect(compared.ratio).toBeGreaterThan(5);
});

test('an output that a mode does not give is refused, not taken for nothing', () => {
  const missing = { modes, unitStatic: { ...unitStatic, top: 1 }, history: push, dampingRatio: 0 };
  expect(() => modalHistory(missing)).toThrow(
    expect.objectContaining({ code: 'mechanics.not-a-number', data: { what: 'output "top" of mode 1' } }),
  );
});

test('no modes, or a damping ratio outside 0 to 1, is refused', () => {
  const wrong = expect.objectContaining({ code: 'mechanics.out-of-range' });
  expect(() => modalHistory({ modes: [], unitStatic, history: push, dampingRatio: 0 })).toThrow(wrong);
  expect(() => modalHistory({ modes, unitStatic, history: push, dampingRatio: 1 })).toThrow(wrong);
});
