import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { findInputs } from '../../src/cli/files/find-inputs.js';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const pool = readFileSync('samples/pool-hot-water.yaml', 'utf8');

/** A plant with two good files of one name, a bad one, and things that are none. */
function plant(): string {
  const folder = temporaryFolder();
  for (const name of ['plant/north', 'plant/south', 'plant/node_modules'])
    mkdirSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, 'plant/north/pump.yaml'), pool);
  writeFileSync(join(folder, 'plant/south/pump.yaml'), pool.replace('mark: HWP-1', 'mark: HWP-2'));
  writeFileSync(join(folder, 'plant/bad.yml'), '# half of a file\nformat: pipeborne/1\n');
  writeFileSync(join(folder, 'plant/results.json'), '{"format": "pipeborne-results/1"}');
  writeFileSync(join(folder, 'plant/notes.yaml'), 'list: [1, 2]');
  writeFileSync(join(folder, 'plant/node_modules/pump.yaml'), pool);
  symlinkSync('..', join(folder, 'plant/round'));
  return folder;
}

const found = async (names: readonly string[], folder: string) =>
  (await findInputs(names, { folder })).map(({ file }) => file.replaceAll('\\', '/'));

test('a folder gives the files in it that say their format, sorted; links are not followed', async () => {
  expect(await found(['plant'], plant())).toEqual([
    'plant/bad.yml',
    'plant/north/pump.yaml',
    'plant/south/pump.yaml',
  ]);
});

test('JSON says its format too, and a file that only speaks of it is none', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'a.json'), '{ "format" : "pipeborne/1" }');
  writeFileSync(join(folder, 'b.yaml'), 'about: files of the format pipeborne/1');
  expect(await found(['.'], folder)).toEqual(['a.json']);
});

test('a quoted pattern gives what it matches, sorted', async () => {
  const folder = plant();
  expect(await found(['plant/**/pump.yaml'], folder)).toEqual([
    'plant/north/pump.yaml',
    'plant/south/pump.yaml',
  ]);
  expect(await found(['plant/{south,north}/*.yaml'], folder)).toEqual([
    'plant/north/pump.yaml',
    'plant/south/pump.yaml',
  ]);
});

test('a file whose own name has the signs of a pattern is that file', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'pump[1].yaml'), pool);
  expect(await found(['pump[1].yaml', '-', 'missing.yaml'], folder)).toEqual([
    'pump[1].yaml',
    '-',
    'missing.yaml',
  ]);
});

test('nothing found is an error in the arguments', async () => {
  const { status, output, messages } = await runFake(['check', 'none*.yaml'], { folder: plant() });
  expect({ status, output }).toEqual({ status: 2, output: '' });
  expect(messages).toContain('cli.arguments.nothing-found');
});

test('check of many: a line each in order, a summary, a bad file stops nothing, the worst status wins', async () => {
  const { status, output, messages } = await runFake(['check', 'plant'], { folder: plant() });
  expect(status).toBe(2);
  const lines = output.split('\n');
  for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(80);
  expect(lines.slice(1, 4).map((line) => line.split(/\s+/)[0])).toEqual(['unusable', 'meets', 'meets']);
  expect(lines[1]).toContain('plant/bad.yml');
  expect(lines[2]).toMatch(/HWP-1 .*north/);
  expect(output).toMatch(/^meets +2 HWP-1, HWP-2$/m);
  expect(output).toMatch(/^unusable +1 .*bad\.yml$/m);
  expect(messages).toContain('bad.yml:');
});

test('check --json of many prints results alone, one a line, in order', async () => {
  const { output } = await runFake(['check', 'plant', '--json'], { folder: plant() });
  const marks = output
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line).pump.mark);
  expect(marks).toEqual(['HWP-1', 'HWP-2']);
});

test('standard input may be one of many', async () => {
  const { output } = await runFake(['check', '-', 'plant/south/pump.yaml'], {
    folder: plant(),
    standardInput: pool,
  });
  expect(output).toMatch(/^meets .*HWP-1 +-/m);
  expect(output).toMatch(/^meets .*HWP-2/m);
});

test('review of a folder keeps its folders apart and writes the same bytes as one by one', async () => {
  const folder = plant();
  const { output } = await runFake(['review', 'plant', '-o', 'out/', '--no-bands'], { folder });
  expect(readdirSync(join(folder, 'out')).sort()).toEqual(['north', 'south']);
  expect(output).toMatch(/^meets +2 /m);
  await runFake(['review', 'plant/north/pump.yaml', '-o', 'one.pdf', '--no-bands'], { folder });
  const many = readFileSync(join(folder, 'out/north/pump-review.pdf'));
  expect(many.equals(readFileSync(join(folder, 'one.pdf')))).toBe(true);
});
