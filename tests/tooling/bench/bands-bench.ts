/**
 * What bands cost: trials a second in a process that has warmed up, and the study of a sample over its review. Run by
 * hand: `npx tsx tests/tooling/bench/bands-bench.ts`. No test reads its times. Processor time, so that other work on the
 * machine counts little; compare ratios.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readInstallation, review, runTrial, studyBands } from '../../../src/index.js';
import { trialBase } from '../../../src/study/bands/evaluate.js';
import { uncertaintiesOf } from '../../../src/study/bands/uncertainties.js';
import { root } from '../ensure-built.mjs';

const TRIALS = 60;

function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

async function spent(work: () => unknown): Promise<number> {
  const start = processorTime();
  await work();
  return processorTime() - start;
}

/** Prints one line a sample. */
export async function benchBands(): Promise<void> {
  for (const name of readdirSync(join(root, 'samples')).filter((file) => file.endsWith('.yaml'))) {
    const reading = readInstallation(readFileSync(join(root, 'samples', name), 'utf8'));
    if (!reading.ok) throw new Error(`${name} cannot be read`);
    const whole = review(reading.installation);
    const { base } = trialBase(whole, uncertaintiesOf(reading.installation));
    const row = (index: number) =>
      base.uncertainties.map((_, each) => (each === index % base.uncertainties.length ? 1 : 0));
    const trials = () => {
      for (let index = 0; index < TRIALS; index++) {
        const trial = runTrial(base, row(index));
        if (!trial.ok) throw new Error(`${name}: ${trial.code}`);
      }
    };
    trials();
    const time = await spent(trials);
    const reviewing = await spent(() => review(reading.installation));
    const bands = await spent(() => studyBands(whole, { samples: 0 }));
    const each = time / TRIALS;
    process.stdout.write(
      `${name}: ${each.toFixed(1)} ms a trial, ${(1000 / each).toFixed(0)} a second and core; ` +
        `${base.uncertainties.length} doubts; bands over review, both warm ${(bands / reviewing).toFixed(1)}\n`,
    );
  }
}

if (process.argv[1]?.endsWith('bands-bench.ts') === true) await benchBands();
