import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PassThrough, Writable } from 'node:stream';
import { beforeAll, expect, test } from 'vitest';
import { harmless } from '../../src/cli/environment.js';
import { watchStreams } from '../../src/cli/terminal/watch-streams.js';
import { builtCommand, ensureBuilt, root } from '../tooling/ensure-built.mjs';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

beforeAll(ensureBuilt, 240_000);

/** A stream that takes nothing. */
const failing = (code: string) =>
  new Writable({
    autoDestroy: false,
    write: (_chunk, _encoding, done) => done(Object.assign(new Error(code), { code })),
  });

test('output that cannot be written is told on the messages and ends with 3', async () => {
  const messages = new PassThrough();
  const output = failing('ENOSPC');
  const streams = watchStreams(output, messages);
  output.write('x');
  output.write('y');
  expect(await streams.status()).toBe(3);
  const said = String(messages.read());
  expect(said).toContain('error[cli.write.output]: standard output cannot be written: the disk is full');
  expect(said.match(/error\[/g)).toHaveLength(1);
});

test('messages that cannot be written end with 3, and a reader that went away with the status of the run', async () => {
  for (const [code, status] of [
    ['ENOSPC', 3],
    ['EPIPE', 0],
  ] as const) {
    const messages = failing(code);
    const output = failing('EPIPE');
    const streams = watchStreams(output, messages);
    messages.write('x');
    output.write('x');
    expect(await streams.status()).toBe(status);
  }
});

test.runIf(process.platform === 'linux')('a process ends as promised whatever stream is full or gone', () => {
  const shell = (rest: string) => {
    const command = `set -o pipefail; '${process.execPath}' '${builtCommand}' check ${rest}`;
    const { status, stderr, stdout } = spawnSync('bash', ['-c', command], { cwd: root, encoding: 'utf8' });
    return { status, stderr, stdout };
  };
  const folder = temporaryFolder();
  const broken = join(folder, 'broken.yaml');
  writeFileSync(broken, 'format: pipeborne/1\n');
  expect(shell(`${broken} | true`).status).toBe(2);
  expect(shell(`${broken} 2>&1 | true`).status).toBe(2);
  expect(shell(`${broken} 2>/dev/full`)).toMatchObject({ status: 3, stdout: '' });
  expect(shell('nosuch.yaml 2>/dev/full').status).toBe(3);
  const full = shell('samples/pool-hot-water.yaml >/dev/full');
  expect(full.status).toBe(3);
  expect(full.stderr).toContain('standard output cannot be written');
});

test('control signs of a file name never reach a terminal raw', async () => {
  const evil = 'a\u001b]0;owned\u0007\u001b[2K\r\nb\u202e.yaml';
  expect(harmless(`${evil}\n`)).not.toMatch(/(?!\n)[\p{Cc}\p{Bidi_Control}]/u);
  expect(harmless('\u001b[31mred\u001b[0m\t\n\u001b[H\u001b[2J\u001b[3J')).toBe(
    '\u001b[31mred\u001b[0m\t\n\u001b[H\u001b[2J\u001b[3J',
  );
  const folder = temporaryFolder();
  writeFileSync(join(folder, evil), 'format: pipeborne/1\n');
  const { messages, status } = await runFake(['check', evil], { folder, terminal: true });
  expect(status).toBe(2);
  expect(messages).toContain(' b');
  expect(messages).not.toMatch(/(?!\n)[\p{Cc}\p{Bidi_Control}]/u);
});
