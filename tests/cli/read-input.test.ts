import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { INPUT_LIMIT_BYTES, readInput } from '../../src/cli/files/read-input.js';
import { type FakeOptions, fakeEnvironment } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const read = (file: string, options: FakeOptions) =>
  readInput(file, fakeEnvironment({ output: '', messages: '' }, options));

test('a file is read relative to the working folder and called as the user called it', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'p.yaml'), 'mark: Ø');
  expect(await read('p.yaml', { folder })).toEqual({ name: 'p.yaml', text: 'mark: Ø' });
});

test('- is standard input', async () => {
  expect(await read('-', { standardInput: 'a: 1' })).toEqual({ name: 'standard input', text: 'a: 1' });
});

test('a missing file, and a folder, are told with the reason', async () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'plant'));
  await expect(read('none.yaml', { folder })).rejects.toMatchObject({
    code: 'cli.read.failed',
    data: { file: 'none.yaml', reason: 'there is no such file or folder' },
  });
  await expect(read('plant', { folder })).rejects.toMatchObject({ data: { reason: 'it is a folder' } });
});

test('an input of the largest size is read, and one byte more is refused', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'full.yaml'), '#'.repeat(INPUT_LIMIT_BYTES));
  writeFileSync(join(folder, 'over.yaml'), '#'.repeat(INPUT_LIMIT_BYTES + 1));
  expect((await read('full.yaml', { folder })).text).toHaveLength(INPUT_LIMIT_BYTES);
  await expect(read('over.yaml', { folder })).rejects.toMatchObject({ code: 'cli.input.too-large' });
});

test('a stream without end is not read to its end', async () => {
  await expect(read('/dev/zero', {})).rejects.toMatchObject({ code: 'cli.input.too-large' });
});

test('bytes that are not UTF-8 are refused', async () => {
  await expect(read('-', { standardInput: new Uint8Array([0x61, 0xff]) })).rejects.toMatchObject({
    code: 'cli.input.not-text',
  });
});

test('the mark of byte order is kept for the fingerprint', async () => {
  expect((await read('-', { standardInput: '\uFEFFa: 1' })).text).toBe('\uFEFFa: 1');
});
