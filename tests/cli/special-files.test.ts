import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { partName } from '../../src/cli/files/part-names.js';
import { writeFiles } from '../../src/cli/files/write-files.js';
import { writeNewFile } from '../../src/cli/new/write-new-file.js';
import { readFirmFile } from '../../src/cli/templates/firm-folder.js';
import { readTemplates } from '../../src/cli/templates/template-folder.js';
import { temporaryFolder } from './temporary-folder.js';

const pipe = (path: string) => expect(spawnSync('mkfifo', [path]).status).toBe(0);
const written = (path: string, content = 'new') => writeFiles([{ path, shown: 'a.pdf', content }]);

test('a named pipe is not replaced, nor what a link to one leads to', async () => {
  const folder = temporaryFolder();
  pipe(join(folder, 'a.pdf'));
  symlinkSync('a.pdf', join(folder, 'b.pdf'));
  for (const name of ['a.pdf', 'b.pdf'])
    await expect(written(join(folder, name))).rejects.toMatchObject({
      code: 'cli.write.failed',
      data: { file: 'a.pdf', reason: 'it is a named pipe, and no file' },
    });
  expect(lstatSync(join(folder, 'a.pdf')).isFIFO()).toBe(true);
  expect(readdirSync(folder)).toEqual(['a.pdf', 'b.pdf']);
});

test('a link to a device is refused by what it is', async () => {
  const folder = temporaryFolder();
  symlinkSync('/dev/null', join(folder, 'a.pdf'));
  await expect(written(join(folder, 'a.pdf'))).rejects.toMatchObject({
    data: { reason: 'it is a device, and no file' },
  });
  expect(lstatSync(join(folder, 'a.pdf')).isSymbolicLink()).toBe(true);
});

test('a socket is refused by what it is', async () => {
  const path = join(temporaryFolder(), 'a.pdf');
  const server = createServer();
  await new Promise<void>((ready) => void server.listen(path, () => ready()));
  await expect(written(path)).rejects.toMatchObject({ data: { reason: 'it is a socket, and no file' } });
  await new Promise((closed) => server.close(closed));
});

test.each([0o600, 0o640, 0o664, 0o755])('a file of mode %o keeps it when it is replaced', async (mode) => {
  const path = join(temporaryFolder(), 'a.pdf');
  writeFileSync(path, 'old');
  chmodSync(path, mode);
  await written(path);
  expect(readFileSync(path, 'utf8')).toBe('new');
  expect(statSync(path).mode & 0o777).toBe(mode);
});

test('what a killed run left is taken away at the next, and nothing else', async () => {
  const folder = temporaryFolder();
  const gone = spawnSync(process.execPath, ['-e', '']).pid;
  const own = partName('a.pdf');
  const left = own.replace(`-${process.pid}-`, `-${gone}-`);
  const elsewhere = left.replace(/\.[0-9a-f]{8}-/, '.00000000-');
  const kept = [own, elsewhere, '.a.pdf.123456789abc.part', 'a.part', `.${gone}.part`];
  for (const name of [left, ...kept]) writeFileSync(join(folder, name), '');
  // Not a file of ours, whatever its name is.
  const folderOfThatName = left.replace('a.pdf', 'b.pdf');
  mkdirSync(join(folder, folderOfThatName));
  await written(join(folder, 'a.pdf'));
  expect(readdirSync(folder).sort()).toEqual([...kept, folderOfThatName, 'a.pdf'].sort());
  writeFileSync(join(folder, left), '');
  await writeNewFile(join(folder, 'new.yaml'), 'new.yaml', 'text');
  expect(existsSync(join(folder, left))).toBe(false);
});

/** Working folder with a shipped template and a folder of a firm. */
function firm() {
  const folder = temporaryFolder();
  for (const name of ['shipped/sections', 'own']) mkdirSync(join(folder, name), { recursive: true });
  writeFileSync(join(folder, 'shipped/sections/weights.hbs'), 'shipped');
  const read = async () => (await readTemplates(join(folder, 'shipped'), 'own', folder)).all;
  return { folder, read, own: (name: string) => join(folder, 'own', name) };
}

test('a named pipe among templates, or in place of firm.yaml, is refused and not waited for', async () => {
  const { folder, read, own } = firm();
  pipe(own('firm.yaml'));
  const reason = 'it is a named pipe, and no file';
  await expect(readFirmFile('own', folder, { all: {}, shipped: {} })).rejects.toMatchObject({
    code: 'cli.read.failed',
    data: { file: join('own', 'firm.yaml'), reason },
  });
  pipe(own('review.hbs'));
  await expect(read()).rejects.toMatchObject({ code: 'cli.read.failed', data: { reason } });
});

test('a linked folder of templates is followed inside, refused outside, and never goes round', async () => {
  const { folder, read, own } = firm();
  mkdirSync(own('parts'));
  writeFileSync(own('parts/weights.hbs'), 'ours');
  symlinkSync('parts', own('sections'));
  symlinkSync('.', own('round'));
  expect(await read()).toMatchObject({ 'sections/weights': 'ours', 'parts/weights': 'ours' });
  mkdirSync(join(folder, 'elsewhere'));
  symlinkSync('../elsewhere', own('more'));
  await expect(read()).rejects.toMatchObject({ code: 'cli.arguments.template-outside' });
});
