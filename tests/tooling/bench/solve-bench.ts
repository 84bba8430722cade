/**
 * How solving grows with the number of points: a straight chain with a side branch every fiftieth point, in five
 * conditions. Run by hand: `npx tsx tests/tooling/bench/solve-bench.ts`. No test reads its times.
 */
import { solveFrame } from '../../../src/mechanics/frame/solve-frame.js';
import type { Vec3 } from '../../../src/model/conventions.js';
import type {
  Frame,
  FrameCondition,
  FramePipe,
  FrameSupport,
  Restraint,
} from '../../../src/model/frame/frame.js';

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

/**
 * The same chain on supports that can only push: rods that lean, every ninth set so low that it hangs slack, guides with
 * play in place of every rigid sideways hold, and friction under every hundredth point.
 */
export function contactChain(count: number, withFriction: boolean): Frame {
  const chain = chainFrame(count);
  const supports = chain.supports.map((support, index): FrameSupport => {
    if (support.word === 'anchor') return support;
    const [up, side] = support.restraints;
    if (up === undefined || side === undefined) return support;
    const imposed = index % 9 === 4 ? -0.01 : 0;
    const friction = withFriction && index % 33 === 7 ? 0.3 : 0;
    const rod = friction > 0 ? { friction } : { swingLength: 1 };
    return {
      ...support,
      restraints: [
        { ...up, sense: 'push', imposed, ...rod },
        { ...side, gap: 0.005 },
      ],
    };
  });
  return { ...chain, supports };
}

/** Median of three runs, with the growth exponent against the size before. */
function benchSizes(what: string, sizes: readonly number[], make: (count: number) => Frame): void {
  solveFrame(make(300));
  let before: { readonly size: number; readonly time: number } | undefined;
  for (const size of sizes) {
    const frame = make(size);
    let rounds = 0;
    const times = Array.from({ length: 3 }, () => {
      const start = performance.now();
      const { conditions } = solveFrame(frame);
      rounds = Object.values(conditions).reduce((sum, answer) => sum + answer.rounds, 0);
      return performance.now() - start;
    }).sort((a, b) => a - b);
    const time = times[1] ?? 0;
    const growth =
      before === undefined
        ? ''
        : `  ratio ${(time / before.time).toFixed(2)}  exponent ${(Math.log(time / before.time) / Math.log(size / before.size)).toFixed(2)}`;
    process.stdout.write(
      `${what}, ${size} points, 5 conditions, ${rounds} rounds: ${time.toFixed(1)} ms${growth}\n`,
    );
    before = { size, time };
  }
}

/** Times solving for rising numbers of points and prints time, ratio and growth exponent. */
export function benchSolving(): void {
  const sizes = [100, 300, 1000, 3000, 10_000];
  benchSizes('two-way', sizes, chainFrame);
  benchSizes('one-way, leaning rods', sizes, (count) => contactChain(count, false));
  // Every slipping support asks for a solution of its own in every round.
  benchSizes('with friction', [100, 300, 1000], (count) => contactChain(count, true));
  const peak = process.resourceUsage().maxRSS / 1024;
  process.stdout.write(`peak memory ${peak.toFixed(0)} MB\n`);
}

if (process.argv[1]?.endsWith('solve-bench.ts') === true) benchSolving();
