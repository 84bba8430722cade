import { describe, expect, test } from 'vitest';
import { airGapTransient } from '../../src/catalog/index.js';

/**
 * The two-axis equations of an induction machine in the frame of the stator, per phase as published: resistances [ohm],
 * inductances [H], inertia [kg·m²]; 460 V, 60 Hz, 4 poles. Load: torque of the rating times the square of the speed.
 */
const MACHINES = [
  { hp: 10, Rs: 0.6837, Rr: 0.451, L: 0.152752, Lm: 0.1486, J: 0.05, rpm: 1760 },
  { hp: 20, Rs: 0.2761, Rr: 0.1645, L: 0.078331, Lm: 0.07614, J: 0.1, rpm: 1760 },
  { hp: 50, Rs: 0.09961, Rr: 0.05837, L: 0.031257, Lm: 0.03039, J: 0.4, rpm: 1780 },
  { hp: 100, Rs: 0.03957, Rr: 0.02215, L: 0.017029, Lm: 0.01664, J: 1.3, rpm: 1780 },
] as const;
type Machine = (typeof MACHINES)[number];

function startOf({ hp, Rs, Rr, L, Lm, J, rpm }: Machine) {
  const V = 460 * Math.sqrt(2 / 3);
  const w = 2 * Math.PI * 60;
  const rated = (rpm * 2 * Math.PI) / 60;
  const Tn = (hp * 745.7) / rated;
  const D = L * L - Lm * Lm;
  const currents = (s: number, r: number) => [(L * s - Lm * r) / D, (L * r - Lm * s) / D] as const;
  const slope = (t: number, [sa, sb, ra, rb, n]: readonly number[]): readonly number[] => {
    const [ia, ja] = currents(sa!, ra!);
    const [ib, jb] = currents(sb!, rb!);
    const electrical = 2 * n!;
    const torque = 3 * (sa! * ib - sb! * ia);
    return [
      V * Math.cos(w * t) - Rs * ia,
      V * Math.sin(w * t) - Rs * ib,
      -Rr * ja - electrical * rb!,
      -Rr * jb + electrical * ra!,
      (torque - Tn * (n! / rated) ** 2) / (1.1 * J),
    ];
  };
  const h = 2e-5;
  let state: readonly number[] = [0, 0, 0, 0, 0];
  let [high, low] = [0, 0];
  const along = (k: readonly number[], by: number) => state.map((value, i) => value + by * k[i]!);
  for (let t = 0; t < 0.3; t += h) {
    const k1 = slope(t, state);
    const k2 = slope(t + h / 2, along(k1, h / 2));
    const k3 = slope(t + h / 2, along(k2, h / 2));
    const k4 = slope(t + h, along(k3, h));
    state = state.map((value, i) => value + (h / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!));
    const [ia] = currents(state[0]!, state[2]!);
    const [ib] = currents(state[1]!, state[3]!);
    const torque = (3 * (state[0]! * ib - state[1]! * ia)) / Tn;
    high = Math.max(high, torque);
    low = Math.min(low, torque);
  }
  return { high, low };
}

describe('torque in the air gap across the line, from published machine records', () => {
  const found = MACHINES.map(startOf);
  const peaks = found.map(({ high }) => high);
  const backs = found.map(({ low }) => -low);

  test('peaks at the multiples of the rating that the review names', () => {
    expect(Math.min(...peaks)).toBeCloseTo(airGapTransient.peak[0], 1);
    expect(Math.max(...peaks)).toBeCloseTo(airGapTransient.peak[1], 1);
  });

  test('reverses as far as it says', () => {
    expect(Math.min(...backs)).toBeCloseTo(airGapTransient.reversed[0], 1);
    expect(Math.max(...backs)).toBeCloseTo(airGapTransient.reversed[1], 1);
  });
});
