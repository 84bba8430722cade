// The library in a process whose environment and console must not be touched: what asks the one or writes to the other ends it.
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { beforeAll, expect, test } from 'vitest';
import { temporaryFolder } from '../cli/temporary-folder.js';
import { builtCommand, ensureBuilt, root } from '../tooling/ensure-built.mjs';

const SAMPLE = join(root, 'samples/pool-hot-water.yaml');
/** What the package of YAML looks for. */
const SWITCHES = { LOG_TOKENS: '1', LOG_STREAM: '1' };

beforeAll(ensureBuilt);

/** Runs statements after the environment and the console were poisoned; `load` imports a file, `say` is the one way out. */
function poisoned(statements: string, args: readonly string[] = []) {
  const file = join(temporaryFolder(), 'program.mjs');
  writeFileSync(
    file,
    `import { readFileSync } from 'node:fs';
    const write = process.stdout.write.bind(process.stdout);
    const say = (text) => write(text + '\\n');
    const text = readFileSync(${JSON.stringify(SAMPLE)}, 'utf8');
    const load = (name) => import(new URL(name, ${JSON.stringify(pathToFileURL(join(root, '/')).href)}).href);
    const refuse = (what) => () => { throw new Error(what + ' was touched'); };
    // The loader of Node asks the environment for its own sake.
    const refuseToAll = () => {
      if (!/^ +at .*node:internal/.test(new Error().stack.split('\\n')[2])) refuse('the environment')();
    };
    const environment = new Proxy({}, { get: refuseToAll, has: refuseToAll, ownKeys: refuseToAll });
    const console_ = new Proxy({}, { get: refuse('the console') });
    const poison = () => {
      Object.defineProperty(process, 'env', { get: () => environment });
      Object.defineProperty(globalThis, 'console', { get: () => console_ });
      process.stdout.write = process.stderr.write = refuse('a stream');
    };
    ${statements}`,
  );
  const { stdout, stderr } = spawnSync(process.execPath, [...args, file], {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, ...SWITCHES },
  });
  return { stdout, stderr };
}

test('the built library reads, reviews, and prints without environment and console', () => {
  const { stdout, stderr } = poisoned(`
    poison();
    const { readInstallation, review, renderReviewPdf, readReadings } = await load('dist/index.js');
    const { templates } = await load('dist/templates.js');
    const { fonts } = await load('dist/fonts.js');
    const read = readInstallation(text);
    const pdf = await renderReviewPdf(review(read.installation), { templates, fonts });
    say(String.fromCharCode(...pdf.slice(0, 5)));
    say(String(readInstallation(': [').ok));`);
  expect(stderr).toBe('');
  expect(stdout).toBe('%PDF-\nfalse\n');
});

test('the sources, run as they stand, read a file without environment and console', () => {
  const { stdout, stderr } = poisoned(
    `const { readText } = await load('src/input/read-text.ts');
    poison();
    const { content } = readText(text);
    say(Object.keys(content)[0]);`,
    ['--import', 'tsx'],
  );
  expect(stderr).toBe('');
  expect(stdout).toMatch(/^\w+\n$/);
});

test('the poison works: what asks the environment, and what writes, is found', () => {
  for (const [statement, found] of [
    ['process.env.LOG_TOKENS', 'the environment was touched'],
    ['console.log(1)', 'the console was touched'],
    ['process.stdout.write("x")', 'a stream was touched'],
  ] as const)
    expect(poisoned(`poison(); try { ${statement}; } catch (error) { say(error.message); }`).stdout).toBe(
      `${found}\n`,
    );
});

test('the build of the package for Node, which is not the one used, is found by it', () => {
  const { stdout } = poisoned(`
    const { parse } = await load('node_modules/yaml/dist/index.js');
    poison();
    try { parse('a: 1'); } catch (error) { say(error.message); }`);
  expect(stdout).toBe('the environment was touched\n');
});

test('the command line prints the same with the switches of the package set', () => {
  const run = (env: NodeJS.ProcessEnv) =>
    spawnSync(process.execPath, [builtCommand, 'check', SAMPLE, '--json'], { encoding: 'utf8', env });
  const { LOG_TOKENS: _tokens, LOG_STREAM: _stream, ...plain } = process.env;
  const [without, with_] = [run(plain), run({ ...plain, ...SWITCHES })];
  expect(without.stdout).not.toBe('');
  expect(with_.stdout).toBe(without.stdout);
  expect(with_.stderr).toBe(without.stderr);
});

test('no bundle names the switches', () => {
  for (const file of [builtCommand, join(root, 'dist/index.js')])
    expect(readFileSync(file, 'utf8')).not.toMatch(/LOG_TOKENS|LOG_STREAM/);
});
