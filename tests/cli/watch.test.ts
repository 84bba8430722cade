import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { fakeEnvironment, runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const pool = readFileSync('samples/pool-hot-water.yaml', 'utf8');

/** Waits for something to come true, looking often; the runner's own limit ends it. */
async function until(isTrue: () => boolean): Promise<void> {
  while (!isTrue()) await new Promise((later) => setTimeout(later, 20));
}

function watching(folder: string, terminal: boolean) {
  const said = { output: '', messages: '' };
  let interrupt: () => void = () => {};
  const environment = {
    ...fakeEnvironment(said, { folder, terminal, environment: { NO_COLOR: '1' } }),
    onInterrupt: (handle: () => void) => {
      interrupt = handle;
      return () => {};
    },
  };
  const ended = run(['check', 'pump.yaml', '--watch'], environment);
  const rounds = () => said.messages.split('watching pump.yaml').length - 1;
  return { said, rounds, ended, interrupt: () => interrupt() };
}

test('each save is checked, errors are shown and watched on, and an interrupt ends with the last status', async () => {
  const folder = temporaryFolder();
  const file = join(folder, 'pump.yaml');
  writeFileSync(file, pool);
  const { said, rounds, ended, interrupt } = watching(folder, false);
  await until(() => rounds() === 1);
  expect(said.output).toContain('HWP-1');

  writeFileSync(file, 'format: [');
  await until(() => rounds() === 2);
  expect(said.messages).toMatch(/error\[input\./);

  // As many editors save: a new file takes the place of the old one.
  writeFileSync(join(folder, 'new'), pool.replace('mark: HWP-1', 'mark: HWP-7'));
  renameSync(join(folder, 'new'), file);
  await until(() => said.output.includes('HWP-7'));

  rmSync(file);
  await until(() => said.messages.includes('cannot be read'));
  writeFileSync(file, pool.replace('mark: HWP-1', 'mark: HWP-8'));
  await until(() => said.output.includes('HWP-8') && rounds() >= 5);

  // What is no input of ours is no reason to check.
  const before = rounds();
  writeFileSync(join(folder, 'other.yaml'), pool);
  await new Promise((later) => setTimeout(later, 300));
  expect(rounds()).toBe(before);

  interrupt();
  expect(await ended).toBe(0);
  expect(said.output).not.toContain('\u001B');
});

test('a terminal is cleared before each picture', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'pump.yaml'), pool);
  const { said, rounds, ended, interrupt } = watching(folder, true);
  await until(() => rounds() === 1);
  expect(said.output.startsWith('\u001B[H\u001B[2J')).toBe(true);
  interrupt();
  await ended;
});

test('standard input cannot be watched', async () => {
  const { status, messages } = await runFake(['check', '-', '--watch'], { standardInput: pool });
  expect(status).toBe(2);
  expect(messages).toContain('cannot be watched');
});
