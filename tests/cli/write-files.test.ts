import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { writeFiles } from '../../src/cli/files/write-files.js';
import { temporaryFolder } from './temporary-folder.js';

const file = (folder: string, name: string, content: string) => ({
  path: join(folder, name),
  shown: name,
  content,
});

test('files are written whole and nothing else is left', async () => {
  const folder = temporaryFolder();
  await writeFiles([file(folder, 'a.pdf', 'one'), file(folder, 'b.json', 'two')]);
  expect(readdirSync(folder)).toEqual(['a.pdf', 'b.json']);
  expect(readFileSync(join(folder, 'b.json'), 'utf8')).toBe('two');
});

test('a folder that is not there is made', async () => {
  const folder = temporaryFolder();
  await writeFiles([file(folder, 'new/deeper/a.pdf', 'one')]);
  expect(readFileSync(join(folder, 'new/deeper/a.pdf'), 'utf8')).toBe('one');
});

test('when one cannot be written, none is, and what was there stays', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'a.pdf'), 'old');
  writeFileSync(join(folder, 'not-a-folder'), '');
  const writing = writeFiles([file(folder, 'a.pdf', 'new'), file(folder, 'not-a-folder/b.json', 'new')]);
  await expect(writing).rejects.toMatchObject({
    code: 'cli.write.failed',
    data: { file: 'not-a-folder/b.json' },
  });
  expect(readFileSync(join(folder, 'a.pdf'), 'utf8')).toBe('old');
  expect(readdirSync(folder)).toEqual(['a.pdf', 'not-a-folder']);
});

test('a folder in place of the file is told, and nothing is left beside it', async () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'a.pdf'));
  const writing = writeFiles([file(folder, 'first.json', 'new'), file(folder, 'a.pdf', 'new')]);
  await expect(writing).rejects.toMatchObject({
    code: 'cli.write.failed',
    data: { reason: 'it is a folder' },
  });
  expect(readdirSync(folder)).toEqual(['a.pdf']);
});

test('a link keeps being a link, and what it points to is replaced', async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'real.pdf'), 'old');
  symlinkSync('real.pdf', join(folder, 'link.pdf'));
  await writeFiles([file(folder, 'link.pdf', 'new')]);
  expect(lstatSync(join(folder, 'link.pdf')).isSymbolicLink()).toBe(true);
  expect(readFileSync(join(folder, 'real.pdf'), 'utf8')).toBe('new');
});

test.skipIf(process.getuid?.() === 0)(
  'a folder that may not be written to is told with its reason',
  async () => {
    const folder = temporaryFolder();
    chmodSync(folder, 0o500);
    await expect(writeFiles([file(folder, 'a.pdf', 'new')])).rejects.toMatchObject({
      data: { reason: 'permission is denied' },
    });
  },
);

test('no listener for signals is left behind', async () => {
  const before = process.listenerCount('SIGINT');
  await writeFiles([file(temporaryFolder(), 'a.pdf', 'one')]);
  expect(process.listenerCount('SIGINT')).toBe(before);
});
