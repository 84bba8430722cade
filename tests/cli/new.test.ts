import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { readInstallation } from '../../src/index.js';
import { builtCommand, ensureBuilt } from '../tooling/ensure-built.mjs';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

beforeAll(ensureBuilt);

const ENTER = '\r';
const DOWN = '\u001B[B';
const CTRL_C = '\u0003';

/** A question as the screen begins it, and the keys that answer it. */
type Turn = readonly [question: string, keys: string];

/** The pool of the samples, told at a terminal. */
const pool: readonly Turn[] = [
  ['Units', ENTER],
  ['How the pump stands', ENTER],
  ['Mark of the pump', `HWP-1${ENTER}`],
  ['Service', ENTER],
  ['Design pressure', `100 psi${ENTER}`],
  ['Flow', `640 gpm${ENTER}`],
  ['Head', `74 ft${ENTER}`],
  ['Size of the pump ports', `6${ENTER}`],
  ['Weight of the pump without', `465 lb${ENTER}`],
  ['Power of the motor', `20 hp${ENTER}`],
  ['Weight of the motor', `290 lb${ENTER}`],
  ['Height of the motor top', `41 in${ENTER}`],
  ['Distance between the faces', `30 in${ENTER}`],
  ['at the pump above', `4 ft 6 in${ENTER}`],
  ['overhead pipe above', `10 ft 6 in${ENTER}`],
  ['underside of the structure', `13 ft 6 in${ENTER}`],
  ['Direction the suction', `${DOWN}${ENTER}`],
  ['Direction the pipe runs', `${DOWN}${DOWN}${DOWN}${ENTER}`],
  ['Suction side', `20 ft${ENTER}`],
  ['Discharge side', `20 ft${ENTER}`],
  ['resultant force', `1400 lb${ENTER}`],
  ['resultant moment', `2600 ft.lbf${ENTER}`],
];

/** The dairy, in SI units, resting on its base; the maker's loads are not known. */
const dairy: readonly Turn[] = [
  ['Units', `${DOWN}${ENTER}`],
  ['How the pump stands', `${DOWN}${DOWN}${DOWN}${ENTER}`],
  ['Mark of the pump', `KWP-3${ENTER}`],
  ['Service', `${DOWN}${DOWN}${ENTER}`],
  ['Design pressure', `860 kPa${ENTER}`],
  ['Flow', `240 m3/h${ENTER}`],
  ['Head', `22 m${ENTER}`],
  ['Size of the pump ports', `DN 200${ENTER}`],
  ['Weight of the pump without', `345 kg${ENTER}`],
  ['Power of the motor', `30 kW${ENTER}`],
  ['Weight of the motor', ENTER],
  ['Height of the motor top', `1420 mm${ENTER}`],
  ['Distance between the faces', `900 mm${ENTER}`],
  ['at the pump above', `0.85 m${ENTER}`],
  ['overhead pipe above', `3.6 m${ENTER}`],
  ['underside of the structure', `4.6 m${ENTER}`],
  ['Direction the suction', ENTER],
  ['Direction the pipe runs', `${DOWN}${DOWN}${ENTER}`],
  ['Suction side', `8 m${ENTER}`],
  ['Discharge side', `9 m${ENTER}`],
  ['resultant force', ENTER],
  ['resultant moment', ENTER],
];

/** Something that gives a program a terminal of its own; part of the base of most systems. */
const terminal = spawnSync('script', ['--version'], { encoding: 'utf8' });
const isThere = terminal.status === 0 && terminal.stdout.includes('util-linux');
if (!isThere && process.env.TERMINAL_TESTS === 'required')
  throw new Error('`script` of util-linux is not there');

/** Plays a conversation in a pseudo-terminal: each answer is typed once its question is on the screen. */
function play(
  folder: string,
  turns: readonly Turn[],
): Promise<{ readonly screen: string; readonly status: number }> {
  // A terminal without a size would break every word.
  const command = `stty columns 80 rows 40; '${process.execPath}' '${builtCommand}' new`;
  const child = spawn('script', ['--quiet', '--flush', '--return', '--command', command, '/dev/null'], {
    cwd: folder,
    env: { ...process.env, TERM: 'xterm', NO_COLOR: '1', CI: '' },
  });
  let screen = '';
  let seen = 0;
  let turn = 0;
  child.stdout.on('data', (chunk: Buffer) => {
    screen += chunk.toString('utf8');
    const [question, keys] = turns[turn] ?? [];
    if (question === undefined || keys === undefined) return;
    const at = screen.indexOf(question, seen);
    if (at < 0) return;
    seen = at + question.length;
    turn += 1;
    // The question is drawn before the key is listened to.
    setTimeout(() => child.stdin.write(keys), 60);
  });
  return new Promise((resolve) => child.once('exit', (status) => resolve({ screen, status: status ?? -1 })));
}

test.skipIf(!isThere).each([
  ['pool, hung between elbows', pool, 'hwp-1.yaml', 'HWP-1'],
  ['dairy, resting on a base', dairy, 'kwp-3.yaml', 'KWP-3'],
])(
  'the conversation of the %s gives a file that check can judge',
  async (_, turns, name, mark) => {
    const folder = temporaryFolder();
    const { screen, status } = await play(folder, turns);
    expect(screen).toContain(`${mark}: written to ${name}`);
    expect(status).toBe(0);
    expect(readdirSync(folder)).toEqual([name]);
    const reading = readInstallation(readFileSync(join(folder, name), 'utf8'));
    expect(reading.ok ? [] : reading.issues).toEqual([]);
    const check = await runFake(['check', name], { folder });
    expect([0, 1, 4]).toContain(check.status);
    expect(check.output).toContain(mark);
  },
  120_000,
);

test.skipIf(!isThere)(
  'an answer that cannot be used is asked again, and Ctrl-C leaves nothing',
  async () => {
    const folder = temporaryFolder();
    const turns: readonly Turn[] = [
      ...pool.slice(0, 4),
      ['Design pressure', `125${ENTER}`],
      ['has no unit', CTRL_C],
    ];
    const { screen, status } = await play(folder, turns);
    expect(screen).toContain('nothing was written');
    expect(status).toBe(130);
    expect(readdirSync(folder)).toEqual([]);
  },
  60_000,
);

const flags = [
  ...['--units', 'si', '--arrangement', 'header', '--mark', 'HWP-2', '--service', 'heating'],
  ...['--pressure', '1000 kPa', '--flow', '40 m3/h', '--head', '18 m', '--size', 'DN 100'],
  ...['--casing-weight', '95 kg', '--motor-power', '4 kW', '--motor-top', '800 mm', '--faces', '500 mm'],
  ...['--pump-height', '2 m', '--ceiling', '3.5 m', '--facing', 'south', '--turn', 'east'],
  ...['--suction-run', '4 m', '--discharge-run', '5 m', '--leg', '2.5 m'],
];

test('with every answer as an option nothing is asked, and what was assumed is said', async () => {
  const folder = temporaryFolder();
  const { status, output, messages } = await runFake(['new', ...flags], { folder });
  expect({ status, messages }).toEqual({ status: 0, messages: '' });
  expect(output).toContain('HWP-2: written to hwp-2.yaml');
  expect(output).toContain('Assumed');
  for (const line of output.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  expect(readFileSync(join(folder, 'hwp-2.yaml'), 'utf8')).toContain('date: 2026-01-15');
});

test('- prints the file and nothing else', async () => {
  const { output, messages } = await runFake(['new', '-', ...flags]);
  expect(readInstallation(output).ok).toBe(true);
  expect(messages).toContain('Assumed');
});

test('a file that is there is never overwritten, and a name of another kind is refused', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'hwp-2.yaml'), 'mine');
  for (const args of [flags, ['hwp-2.yaml', ...flags]]) {
    const { status, messages } = await runFake(['new', ...args], { folder });
    expect(status).toBe(3);
    expect(messages).toContain('there already');
  }
  expect(readFileSync(join(folder, 'hwp-2.yaml'), 'utf8')).toBe('mine');
  expect((await runFake(['new', 'pump.pdf', ...flags], { folder })).status).toBe(2);
  expect(readdirSync(folder)).toEqual(['hwp-2.yaml']);
});

test('without a terminal every missing answer is told at once', async () => {
  const { status, output, messages } = await runFake(['new', '--units', 'us', '--size', '7']);
  expect({ status, output }).toEqual({ status: 2, output: '' });
  for (const option of ['--mark', '--ceiling', '--discharge-run', '--size "7"'])
    expect(messages).toContain(option);
});

test('a folder that cannot be written to leaves nothing', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'pipeborne-'));
  const { status } = await runFake(['new', 'none/pump.yaml', ...flags], { folder });
  expect(status).toBe(3);
  expect(readdirSync(folder)).toEqual([]);
});
