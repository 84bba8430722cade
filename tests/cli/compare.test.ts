import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const pool = readFileSync(
  fileURLToPath(new URL('../../samples/pool-hot-water.yaml', import.meta.url)),
  'utf8',
);

/** A folder with two revisions: in the newer H2 has moved and a nozzle limit is lower, so that it exceeds. */
async function folderOfTwo() {
  const folder = temporaryFolder();
  const newer = pool
    .replace(
      '        - straight: 14 ft\n        - hanger: {mark: H2',
      '        - straight: 12 ft\n        - hanger: {mark: H2',
    )
    .replace('        - straight: 5 ft\n        - end', '        - straight: 7 ft\n        - end')
    .replace('suction: {resultant-force: 1400 lb', 'suction: {resultant-force: 14 lb');
  writeFileSync(join(folder, 'old.yaml'), pool);
  writeFileSync(join(folder, 'new.yaml'), newer);
  const compare = (...args: string[]) => runFake(['compare', ...args], { folder });
  for (const name of ['old', 'new']) {
    const { output } = await runFake(['check', `${name}.yaml`, '--json'], { folder });
    writeFileSync(join(folder, `${name}.json`), output);
  }
  return { folder, compare };
}

test('two inputs: what moved and what flipped, within 80 columns, with the status of the newer', async () => {
  const { compare } = await folderOfTwo();
  const { status, output, messages } = await compare('old.yaml', 'new.yaml');
  expect({ status, messages }).toEqual({ status: 1, messages: '' });
  expect(output.split('\n').filter((line) => line.length > 80)).toEqual([]);
  expect(output).toMatch(/meets -> exceeds\nbefore {2}old\.yaml/);
  expect(output).toMatch(/suction line +H2 +moved +14'-3" past elbow 2 -> 12'-3"/);
  expect(output).toMatch(/limits +nozzle-loads, maker,? +changed +1400 lb -> 14 lb/);
  expect((await compare('new.yaml', 'old.yaml')).status).toBe(0);
});

test('results, and one of each: the same loads, and no word on an input that is not there', async () => {
  const { compare } = await folderOfTwo();
  const loads = (text: string) => /Loads, weights and frequencies\n([\s\S]*?)\n\n/.exec(text)?.[1];
  const inputs = await compare('old.yaml', 'new.yaml', '--units', 'us');
  const results = await compare('old.json', 'new.json', '--units', 'us');
  const mixed = await compare('old.json', 'new.yaml', '--units', 'us');
  expect(loads(results.output)).toBe(loads(inputs.output));
  expect(loads(mixed.output)).toBe(loads(inputs.output));
  for (const { output, status } of [results, mixed]) {
    expect(status).toBe(1);
    expect(output).toContain('Not known: a results file does not hold its input.');
  }
});

test('signs that steer a terminal do not reach it', async () => {
  const { folder, compare } = await folderOfTwo();
  const evil = readFileSync(join(folder, 'new.json'), 'utf8').replace('"HWP-1"', '"HWP\\u001b[2J1"');
  writeFileSync(join(folder, 'evil.json'), evil);
  const { output } = await compare('old.json', 'evil.json');
  expect(output).toContain('HWP [2J1');
  expect(output.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
});

test('for machines: one line of JSON, in SI', async () => {
  const { compare } = await folderOfTwo();
  const { output } = await compare('old.json', 'new.yaml', '--json');
  expect(output.trimEnd().split('\n')).toHaveLength(1);
  const said = JSON.parse(output);
  expect(said).toMatchObject({
    format: 'pipeborne-comparison/1',
    verdict: { before: 'meets', after: 'exceeds' },
  });
  expect(said.values.every(({ unit }: { unit: string }) => ['N', 'N·m', 'kg', 'Hz'].includes(unit))).toBe(
    true,
  );
});

test('on paper: one page with the fixed words, the same bytes twice', async () => {
  const { folder, compare } = await folderOfTwo();
  await compare('old.yaml', 'new.yaml', '-o', 'a.pdf');
  await compare('old.yaml', 'new.yaml', '-o', 'b.pdf');
  const [a, b] = ['a.pdf', 'b.pdf'].map((name) => readFileSync(join(folder, name)));
  expect(a?.equals(b ?? Buffer.from(''))).toBe(true);
  const words = execFileSync('pdftotext', ['-layout', join(folder, 'a.pdf'), '-'], { encoding: 'utf8' });
  for (const wanted of ['page 1 of 1', 'H2', '14 lb', 'who alone decides', 'A comparison judges nothing'])
    expect(words).toContain(wanted);
});

test.each([
  ['a file that is not there', ['old.yaml', 'none.yaml'], 3, 'cli.read.failed'],
  ['two files that are not there', ['no.yaml', 'none.yaml'], 3, 'no.yaml'],
  ['results that are cut off', ['old.json', 'cut.json'], 2, 'report.results-not-json'],
  ['an input that is wrong', ['old.yaml', 'wrong.yaml'], 2, 'input.'],
  ['standard input twice', ['-', '-'], 2, 'cli.arguments.input-twice'],
  ['an output of the wrong kind', ['old.yaml', 'new.yaml', '-o', 'a.txt'], 2, 'cli.arguments.wrong-ending'],
  ['one file', ['old.yaml'], 2, 'cli.arguments.unusable'],
])('%s is refused', async (_, args, status, code) => {
  const { folder, compare } = await folderOfTwo();
  writeFileSync(join(folder, 'cut.json'), readFileSync(join(folder, 'new.json')).subarray(0, 9000));
  writeFileSync(join(folder, 'wrong.yaml'), pool.replace('mount: hung', 'mount: floating'));
  const outcome = await compare(...args);
  expect(outcome.status).toBe(status);
  expect(outcome.messages).toContain(code);
  expect(existsSync(join(folder, 'a.pdf'))).toBe(false);
});

test('results are dated by the newer review on paper, and printed in its units', async () => {
  const { folder, compare } = await folderOfTwo();
  expect((await compare('old.json', 'new.json', '-o', 'a.pdf')).messages).toBe('');
  const words = execFileSync('pdftotext', ['-layout', join(folder, 'a.pdf'), '-'], { encoding: 'utf8' });
  expect(words).toContain('2026-09-14');
  expect(words).toMatch(/\d lb/);
});
