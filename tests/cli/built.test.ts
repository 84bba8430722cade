import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { beforeAll, expect, test } from 'vitest';
import { version } from '../../src/app/version.js';
import { builtCommand, ensureBuilt, root } from '../tooling/ensure-built.mjs';
import { temporaryFolder } from './temporary-folder.js';

beforeAll(ensureBuilt);

const sample = readdirSync(join(root, 'samples')).find((name) => name.endsWith('.yaml')) ?? '';
const sampleText = () => readFileSync(join(root, 'samples', sample), 'utf8');

function pipeborne(
  args: readonly string[],
  options: { cwd?: string; input?: string; command?: string } = {},
) {
  return spawnSync(process.execPath, [options.command ?? builtCommand, ...args], {
    cwd: options.cwd ?? root,
    input: options.input ?? '',
    encoding: 'utf8',
  });
}

/** Parts a start loads before it does anything: what the given files import without being asked. */
function loadedWith(...names: readonly string[]): string {
  const folder = join(root, 'dist/cli');
  const seen = new Map<string, string>();
  const load = (name: string): void => {
    if (seen.has(name)) return;
    const text = readFileSync(join(folder, name), 'utf8');
    seen.set(name, text);
    for (const [, next] of text.matchAll(/\b(?:from|import)\s*"\.\/([^"]+)"/g))
      if (next !== undefined) load(next);
  };
  names.forEach(load);
  return [...seen.values()].join('\n');
}

const partOf = (name: string) =>
  readdirSync(join(root, 'dist/cli')).find((file) => file.startsWith(`${name}-`) && file.endsWith('.js')) ??
  name;

/** A word of each package that stays in a bundle. */
const signs = {
  zod: 'ZodError',
  yaml: 'YAMLParseError',
  mathjs: 'OperatorNode',
  'pdf-lib': 'PDFDocument',
  handlebars: 'WhitespaceControl',
} as const;
const packagesIn = (text: string) =>
  Object.entries(signs).flatMap(([name, sign]) => (text.includes(sign) ? [name] : []));

test('the build holds every package, so that the two tests below can fail', () => {
  const everything = readdirSync(join(root, 'dist/cli')).map((name) =>
    readFileSync(join(root, 'dist/cli', name), 'utf8'),
  );
  expect(packagesIn(everything.join('\n')).sort()).toEqual(Object.keys(signs).sort());
});

test('a start loads the parser of arguments and none of the mathematics', () => {
  expect(packagesIn(loadedWith('main.js'))).toEqual([]);
});

test('check loads neither templates nor PDF', () => {
  const loaded = packagesIn(loadedWith('main.js', partOf('check-command')));
  expect(loaded).not.toContain('pdf-lib');
  expect(loaded).not.toContain('handlebars');
});

test('the package holds the reference of the input as the command prints it', () => {
  const text = readFileSync(join(root, 'dist/input.txt'), 'utf8');
  expect(pipeborne(['help', 'input']).stdout).toBe(text);
  expect(text).toContain('centre-of-gravity');
});

test('the notices name what is bundled, with its licence', () => {
  const notices = readFileSync(join(root, 'dist/THIRD-PARTY.txt'), 'utf8');
  for (const name of [...Object.keys(signs), 'commander', 'picocolors', '@noble/hashes']) {
    expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+\nLicence: `, 'm'));
  }
});

test('the built command runs with nothing but what the package ships', () => {
  const folder = temporaryFolder();
  for (const name of ['dist', 'templates', 'package.json']) {
    cpSync(join(root, name), join(folder, 'package', name), { recursive: true });
  }
  mkdirSync(join(folder, 'work'));
  writeFileSync(join(folder, 'work/pump.yaml'), sampleText());
  const command = join(folder, 'package/dist/cli/main.js');
  const cwd = join(folder, 'work');
  expect(pipeborne(['--version'], { command, cwd }).stdout).toBe(`${version}\n`);
  const review = pipeborne(['review', 'pump.yaml', '--results', 'r.json', '--html', 'p.html'], {
    command,
    cwd,
  });
  expect(review.stderr).not.toContain('error');
  expect([0, 1, 4]).toContain(review.status);
  expect(readdirSync(cwd).sort()).toEqual(['p.html', 'pump-review.pdf', 'pump.yaml', 'r.json']);
});

test('two processes in two places write the same bytes', () => {
  const [first, second] = [temporaryFolder(), temporaryFolder()].map((cwd) => {
    writeFileSync(join(cwd, 'pump.yaml'), sampleText());
    pipeborne(['review', 'pump.yaml', '--html', 'p.html'], { cwd });
    return ['pump-review.pdf', 'p.html'].map((name) => readFileSync(join(cwd, name)).toString('base64'));
  });
  expect(first).toEqual(second);
});

test('standard input, standard output and statuses work in a pipe', () => {
  const { status, stdout, stderr } = pipeborne(['check', '-'], { input: sampleText() });
  expect([0, 1, 4]).toContain(status);
  expect(stdout).toContain('places judged');
  expect(`${stdout}${stderr}`).not.toContain('\u001B[');
  expect(pipeborne(['check', '-'], { input: 'format: [' }).status).toBe(2);
  expect(pipeborne(['check', 'no-such-file.yaml']).status).toBe(3);
});

test('a reader that stops early is no fault', () => {
  const { stderr } = spawnSync(
    'bash',
    ['-c', `"${process.execPath}" "${builtCommand}" schema | head -c 1 >/dev/null`],
    {
      encoding: 'utf8',
    },
  );
  expect(stderr).toBe('');
});

test.each([40, 150, 250, 350, 450])(
  'a run stopped after %d ms leaves the earlier review whole and nothing beside it',
  async (delay) => {
    const cwd = temporaryFolder();
    writeFileSync(join(cwd, 'pump.yaml'), sampleText());
    writeFileSync(join(cwd, 'pump-review.pdf'), 'earlier');
    const child = spawn(process.execPath, [builtCommand, 'review', 'pump.yaml'], { cwd, stdio: 'ignore' });
    const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
    await wait(delay);
    child.kill('SIGTERM');
    await ended;
    expect(readdirSync(cwd).sort()).toEqual(['pump-review.pdf', 'pump.yaml']);
    const content = readFileSync(join(cwd, 'pump-review.pdf'), 'latin1');
    expect(content === 'earlier' || content.trimEnd().endsWith('%%EOF')).toBe(true);
  },
);
