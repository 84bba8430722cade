import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readTemplates } from '../../src/cli/templates/template-folder.js';
import { temporaryFolder } from './temporary-folder.js';

/** A working folder with shipped templates and a folder for a firm's own. */
function folders() {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'shipped/sections'), { recursive: true });
  mkdirSync(join(folder, 'own'));
  writeFileSync(join(folder, 'shipped/review.hbs'), 'shipped review');
  writeFileSync(join(folder, 'shipped/sections/weights.hbs'), 'shipped weights');
  writeFileSync(join(folder, 'shipped/fonts.txt'), 'not a template');
  const read = async () => (await readTemplates(join(folder, 'shipped'), 'own', folder)).all;
  return { folder, own: (...parts: string[]) => join(folder, 'own', ...parts), read };
}

test('without a folder of their own a firm gets the shipped templates', async () => {
  const { folder } = folders();
  const shipped = { review: 'shipped review', 'sections/weights': 'shipped weights' };
  expect(await readTemplates(join(folder, 'shipped'), undefined, folder)).toEqual({ all: shipped, shipped });
});

test('a template of the firm takes the place of the shipped one of its name, and no other', async () => {
  const { own, read } = folders();
  mkdirSync(own('sections'));
  writeFileSync(own('sections/weights.hbs'), 'our weights');
  expect(await read()).toEqual({ review: 'shipped review', 'sections/weights': 'our weights' });
});

test('a link inside the folder is followed, one that leads out of it is refused', async () => {
  const { folder, own, read } = folders();
  writeFileSync(own('letter.hbs'), 'ours');
  symlinkSync('letter.hbs', own('review.hbs'));
  expect(await read()).toMatchObject({ review: 'ours' });
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  symlinkSync('../secret.txt', own('leak.hbs'));
  await expect(read()).rejects.toMatchObject({ code: 'cli.arguments.template-outside' });
});

test('a folder beside it whose name begins alike is outside', async () => {
  const { folder, own, read } = folders();
  mkdirSync(join(folder, 'own-secrets'));
  writeFileSync(join(folder, 'own-secrets/a.txt'), 'secret');
  symlinkSync('../own-secrets/a.txt', own('leak.hbs'));
  await expect(read()).rejects.toMatchObject({ code: 'cli.arguments.template-outside' });
});

test('a folder that is not there, or a template of absurd size, is refused', async () => {
  const { folder, own, read } = folders();
  await expect(readTemplates(join(folder, 'shipped'), 'none', folder)).rejects.toMatchObject({
    code: 'cli.arguments.templates-not-folder',
  });
  writeFileSync(own('review.hbs'), 'x'.repeat(300 * 1024));
  await expect(read()).rejects.toMatchObject({ code: 'cli.arguments.template-too-large' });
});

test('shipped templates that are missing are not blamed on the user', async () => {
  const { folder } = folders();
  await expect(readTemplates(join(folder, 'gone'), undefined, folder)).rejects.toMatchObject({
    code: 'cli.read.shipped-missing',
  });
});
