/** Every example of the read-me and of the help is run as it stands there, by a shell, with the built command. */
import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { beforeAll, expect, test } from 'vitest';
import { builtCommand, ensureBuilt, root } from '../tooling/ensure-built.mjs';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const COMMANDS = [
  'new',
  'check',
  'advise',
  'review',
  'field-sheet',
  'as-installed',
  'compare',
  'templates',
  'schedule',
  'schema',
  'help',
];

const readMe = readFileSync(join(root, 'README.md'), 'utf8');
const shellBlocks = [...readMe.matchAll(/```sh\n(.*?)```/gs)].map(([, block]) => block ?? '');
const helps = await Promise.all([[], ...COMMANDS.map((name) => [name])].map((args) => helpOf(args)));
const sources = [...shellBlocks, ...helps];

/** Lines that run the program, a backslash at the end joining the next; what follows wide blanks is a remark. */
const examples = [
  ...new Set(
    sources
      .flatMap((text) => [...text.replaceAll(/\\\n\s*/g, '').matchAll(/^ *(pipeborne .*)$/gm)])
      .map(([, line]) => (line ?? '').replace(/ {2,}.*$/, '').trim()),
  ),
];

/** Asked at a terminal, or without end: tests of their own run them. */
const ELSEWHERE = /^pipeborne new( hwp-1\.yaml .*)?$|--watch/;

const pool = readFileSync(join(root, 'samples/pool-hot-water.yaml'), 'utf8');
/** A rod too small, so that there is something to advise. */
const smallRod = pool.replace('rod: 3/4 in, length: 2 ft 6 in', 'rod: 3/8 in, length: 2 ft 6 in');

beforeAll(ensureBuilt);

test('there are examples of every command', () => {
  for (const name of COMMANDS)
    expect(
      examples.some((line) => line.startsWith(`pipeborne ${name}`)),
      name,
    ).toBe(true);
});

test.each(examples.filter((line) => !ELSEWHERE.test(line)))('%s', async (line) => {
  const stage = await setUp(line);
  const { status, stdout, stderr } = spawnSync('bash', ['-c', line], {
    cwd: stage,
    env: { ...process.env, PATH: `${join(stage, 'bin')}:${process.env.PATH}` },
    encoding: 'utf8',
  });
  expect(stderr).not.toContain('error[');
  expect([0, 1, 4], `${stdout}\n${stderr}`).toContain(status);
});

async function helpOf(args: readonly string[]): Promise<string> {
  const { output } = await runFake([...args, '--help'], { folder: tmpdir() });
  const [, after = ''] = output.split(/^Examples:\n/m);
  return after.split(/\n\n/)[0] ?? '';
}

/** A folder with all that the examples name, for the one at hand. */
async function setUp(line: string): Promise<string> {
  const stage = temporaryFolder();
  const write = (name: string, text: string) => writeFileSync(join(stage, name), text);
  mkdirSync(join(stage, 'bin'));
  write('bin/pipeborne', `#!/bin/sh\nexec '${process.execPath}' '${builtCommand}' "$@"\n`);
  chmodSync(join(stage, 'bin/pipeborne'), 0o755);
  write('pump.yaml', / advise /.test(line) ? smallRod : pool);
  for (const folder of ['plant', 'site', 'sheets', 'reviews', 'readings']) mkdirSync(join(stage, folder));
  for (const name of ['pool-hot-water', 'dairy-condenser-water'])
    cpSync(join(root, `samples/${name}.yaml`), join(stage, 'plant', `${name}.yaml`));
  const style = join(root, 'samples/letterhead');
  cpSync(style, join(stage, 'our-letterhead'), { recursive: true });
  if (!line.includes('--copy')) cpSync(style, join(stage, 'our-templates'), { recursive: true });
  write('pump-a.yaml', smallRod);
  write('pump-b.yaml', pool);
  cpSync(join(root, 'samples/readings/pool-hot-water.yaml'), join(stage, 'agent.yaml'));
  const made = (...args: readonly string[]) =>
    execFileSync(process.execPath, [builtCommand, ...args], { cwd: stage, stdio: 'ignore' });
  if (/[\w-]*\.pdf/.test(line) && line.includes('as-installed')) {
    made('field-sheet', 'pump.yaml', '-o', 'sheet.pdf');
    made('field-sheet', 'pump-a.yaml', '-o', 'old-sheet.pdf');
    await dateSheet(join(stage, 'sheet.pdf'));
    cpSync(join(stage, 'sheet.pdf'), join(stage, 'fitter.pdf'));
  }
  for (const letter of ['a', 'b'])
    if (line.includes(`pump-${letter}.json`)) {
      const run = spawnSync(process.execPath, [builtCommand, 'check', `pump-${letter}.yaml`, '--json'], {
        cwd: stage,
        encoding: 'utf8',
      });
      write(`pump-${letter}.json`, run.stdout);
    }
  return stage;
}

/** A sheet with nothing but its day, which is what a store needs. */
async function dateSheet(file: string): Promise<void> {
  const sheet = await PDFDocument.load(readFileSync(file));
  sheet.getForm().getTextField('identity.date').setText('2026-11-05');
  writeFileSync(file, await sheet.save());
}
