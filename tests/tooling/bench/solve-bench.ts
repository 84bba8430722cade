/**
 * How solving grows with the number of points: a straight chain with a side branch every fiftieth point, in five
 * conditions. Run by hand: `npx tsx tests/tooling/bench/solve-bench.ts`. No test reads its times.
 */
import { solveFrame } from '../../../src/mechanics/index.js';
import type { Vec3 } from '../../../src/model/conventions.js';
import type { Frame, FrameCondition, FramePipe, FrameSupport, Restraint } from '../../../src/model/frame.js';

const rigid = (direction: Vec3, acts: Restraint['acts']): Restraint => ({
  direction,
  acts,
  stiffness: Number.POSITIVE_INFINITY,
  sense: 'both',
  preload: 0,
  gap: 0,
  imposed: 0,
  friction: 0,
});
const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** A chain of pipes two metres long, hung at every third point and anchored at both ends. */
export function chainFrame(count: number): Frame {
  const points: Record<string, Vec3> = {};
  const members: FramePipe[] = [];
  const supports: FrameSupport[] = [];
  const pipe = (name: string, from: string, to: string): FramePipe => ({
    kind: 'pipe',
    name,
    from,
    to,
    tube: { outsideDiameter: 0.1683, wall: 0.00711 },
    material: 'steel',
    mass: { metal: 28.3, covering: 4 },
    contentsGroup: 'line',
  });
  let made = 0;
  for (let i = 0; made < count; i++, made++) {
    points[`p${i}`] = [2 * i, i % 2 === 0 ? 0 : 0.2, 0];
    if (i > 0) members.push(pipe(`m${i}`, `p${i - 1}`, `p${i}`));
    if (i % 3 === 0) {
      const restraints = [rigid([0, 0, 1], 'translation'), rigid([0, 1, 0], 'translation')];
      supports.push({ name: `H${i}`, word: 'hanger', point: `p${i}`, restraints });
    }
    if (i % 50 === 25 && made + 1 < count) {
      points[`b${i}`] = [2 * i, 1.5, 0];
      members.push(pipe(`s${i}`, `p${i}`, `b${i}`));
      made++;
    }
  }
  const restraints = AXES.flatMap((axis) => [rigid(axis, 'translation'), rigid(axis, 'rotation')]);
  supports.push({ name: 'A', word: 'anchor', point: 'p0', restraints });
  const base: FrameCondition = {
    name: 'empty',
    gravity: [0, 0, -9.80665],
    contentsDensity: 0,
    drained: [],
    covering: false,
    temperature: 294,
    pressure: 0,
    absent: [],
    stopped: [],
    removed: [],
    loads: [],
  };
  return {
    points,
    materials: {
      steel: {
        modulus: 2.03e11,
        poisson: 0.3,
        expansion: [
          [200, -0.0011],
          [500, 0.0025],
        ],
      },
    },
    members,
    bodies: [],
    joints: [],
    supports,
    conditions: [
      base,
      { ...base, name: 'filled', contentsDensity: 998, covering: true },
      { ...base, name: 'hot', contentsDensity: 970, covering: true, temperature: 355 },
      { ...base, name: 'cold', contentsDensity: 999, covering: true, temperature: 278 },
      { ...base, name: 'lateral', contentsDensity: 998, gravity: [2, 1, -9.80665] },
    ],
    installationTemperature: 294,
  };
}

/** Times solving for rising numbers of points and prints time, ratio and growth exponent. */
export function benchSolving(): void {
  const sizes = [100, 300, 1000, 3000, 10_000];
  solveFrame(chainFrame(300));
  let before: { readonly size: number; readonly time: number } | undefined;
  for (const size of sizes) {
    const frame = chainFrame(size);
    const times = Array.from({ length: 3 }, () => {
      const start = performance.now();
      solveFrame(frame);
      return performance.now() - start;
    }).sort((a, b) => a - b);
    const time = times[1] ?? 0;
    const growth =
      before === undefined
        ? ''
        : `  ratio ${(time / before.time).toFixed(2)}  exponent ${(Math.log(time / before.time) / Math.log(size / before.size)).toFixed(2)}`;
    process.stdout.write(`${size} points, 5 conditions: ${time.toFixed(1)} ms${growth}\n`);
    before = { size, time };
  }
  const peak = process.resourceUsage().maxRSS / 1024;
  process.stdout.write(`peak memory ${peak.toFixed(0)} MB\n`);
}

if (process.argv[1]?.endsWith('solve-bench.ts') === true) benchSolving();
