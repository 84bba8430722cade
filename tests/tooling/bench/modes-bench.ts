/**
 * How finding the lowest ten vibrations grows with the number of points, on the chain of the solving bench. Run by hand:
 * `npx tsx tests/tooling/bench/modes-bench.ts`. No test reads its times.
 */
import { naturalFrequencies } from '../../../src/mechanics/modes/frequencies.js';
import type { FrameCondition } from '../../../src/model/frame/frame.js';
import { chainFrame } from './solve-bench.js';

const MODES = 10;

/** Times ten vibrations for rising numbers of points and prints time, ratio and growth exponent. */
export function benchModes(): void {
  let before: { readonly size: number; readonly time: number } | undefined;
  for (const size of [100, 300, 1000, 3000, 10_000]) {
    const frame = chainFrame(size);
    const filled = frame.conditions.find(({ name }) => name === 'filled') as FrameCondition;
    naturalFrequencies(chainFrame(100), filled, MODES);
    const times = Array.from({ length: 3 }, () => {
      const start = performance.now();
      const { modes, counted } = naturalFrequencies(frame, filled, MODES);
      if (modes.length !== counted) throw new Error(`${modes.length} found, ${counted} counted`);
      return performance.now() - start;
    }).sort((a, b) => a - b);
    const time = times[1] ?? 0;
    const growth =
      before === undefined
        ? ''
        : `  ratio ${(time / before.time).toFixed(2)}  exponent ${(Math.log(time / before.time) / Math.log(size / before.size)).toFixed(2)}`;
    const budget = size === 10_000 ? `  budget 3000 ms ${time <= 3000 ? 'kept' : 'MISSED'}` : '';
    process.stdout.write(`${size} points, ${MODES} vibrations: ${time.toFixed(1)} ms${growth}${budget}\n`);
    before = { size, time };
  }
  const peak = process.resourceUsage().maxRSS / 1024;
  process.stdout.write(`peak memory ${peak.toFixed(0)} MB\n`);
}

if (process.argv[1]?.endsWith('modes-bench.ts') === true) benchModes();
