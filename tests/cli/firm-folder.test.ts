import { cpSync, existsSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { runFake } from './fake-environment.js';
import { temporaryFolder } from './temporary-folder.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
const sample = readFileSync(join(root, 'samples/pool-hot-water.yaml'), 'utf8');

/** A working folder with an input and a copy of the sample of a firm. */
function folders(input = sample) {
  const folder = temporaryFolder();
  cpSync(join(root, 'samples/letterhead'), join(folder, 'firm'), { recursive: true });
  writeFileSync(join(folder, 'pump.yaml'), input);
  const firm = (...parts: string[]) => join(folder, 'firm', ...parts);
  const review = (...args: string[]) =>
    runFake(['review', 'pump.yaml', '--html', 'page.html', ...args], { folder });
  const page = () => readFileSync(join(folder, 'page.html'), 'utf8');
  return { folder, firm, review, page };
}

const withLetterhead = (logo: string) =>
  sample.replace(
    /^( *)status:/m,
    (line, indent: string) => `${indent}letterhead: { name: Our Own Firm, logo: "${logo}" }\n${line}`,
  );

test("a review in a firm's style has its letterhead, logo, headings and sections, on paper and as a page", async () => {
  const { review, page } = folders();
  const { status, messages } = await review('--templates', 'firm', '--for', 'contractor');
  expect({ status, messages }).toEqual({ status: 0, messages: '' });
  expect(page()).toContain('aria-label="Logo of Tarn &amp; Weir: a hill');
  expect(page()).toContain('2 What we were asked, and what we were not');
  expect(page()).toContain('What hangs on each support');
  expect(page()).toContain('engineer of record, who alone decides');
});

test('a letterhead in the input is printed without any folder, its logo read from beside the input', async () => {
  const { folder, review, page } = folders(withLetterhead('art/mark.svg'));
  mkdirSync(join(folder, 'art'));
  cpSync(join(root, 'samples/letterhead/logo.svg'), join(folder, 'art/mark.svg'));
  expect((await review()).messages).toBe('');
  expect(page()).toContain('Our Own Firm');
  expect(page()).toContain('aria-label="Logo of Our Own Firm"');
});

test.each([
  ['../secret.svg', 2, 'cli.arguments.outside-folder'],
  ['/etc/hostname', 2, 'cli.arguments.outside-folder'],
  ['leak.svg', 2, 'cli.arguments.outside-folder'],
  ['none.svg', 3, 'cli.read.failed'],
  ['pump.yaml', 2, 'render.logo.unknown-kind'],
])('a logo %s is refused and nothing is written', async (logo, status, code) => {
  const { folder, review } = folders(withLetterhead(logo));
  const elsewhere = temporaryFolder();
  cpSync(join(root, 'samples/letterhead/logo.svg'), join(elsewhere, 'secret.svg'));
  symlinkSync(join(elsewhere, 'secret.svg'), join(folder, 'leak.svg'));
  const outcome = await review();
  expect(outcome.status).toBe(status);
  expect(outcome.messages).toContain(code);
  expect(existsSync(join(folder, 'page.html'))).toBe(false);
});

test.each([
  ['a fixed template', 'sections/cautions.hbs', 'x', 'cli.arguments.template-fixed'],
  ['the fixed deferral', 'fixed/deferral.hbs', 'x', 'cli.arguments.template-fixed'],
  ['a template nobody calls', 'sections/wieghts.hbs', 'x', 'cli.arguments.template-unused'],
  ['a broken template', 'sections/weights.hbs', '{{#if x}}', 'render.template.broken'],
  ['a firm.yaml with a slip', 'firm.yaml', 'format: pipeborne-firm/1\nheadngs: {}', 'input.unknown-key'],
  ['a firm.yaml that is no text', 'firm.yaml', '\u0000', 'input.not-text'],
])('a folder with %s is refused by review and by check', async (_, name, text, code) => {
  const { folder, firm, review } = folders();
  mkdirSync(firm('fixed'));
  writeFileSync(firm(name), text);
  const reviewed = await review('--templates', 'firm', '--for', 'engineer');
  expect(reviewed.status).toBe(2);
  expect(reviewed.messages).toContain(code);
  const checked = await runFake(['templates', '--check', 'firm'], { folder });
  expect(checked.status).toBe(2);
  expect(checked.messages).toContain(code);
});

test('templates are listed, copied out without the fixed ones, and sound as copied', async () => {
  const { folder } = folders();
  const listed = await runFake(['templates'], { folder });
  expect(listed.output).toContain('sections/weights.hbs\n');
  expect(listed.output).toContain('fixed/deferral.hbs  (stands in every review');
  expect((await runFake(['templates', '--copy', 'ours'], { folder })).status).toBe(0);
  expect(existsSync(join(folder, 'ours/sections/weights.hbs'))).toBe(true);
  expect(existsSync(join(folder, 'ours/sections/cautions.hbs'))).toBe(false);
  const again = await runFake(['templates', '--copy', 'ours'], { folder });
  expect(again.status).toBe(2);
  expect(again.messages).toContain('cli.arguments.already-there');
  const checked = await runFake(['templates', '--check', 'ours'], { folder });
  expect(checked.messages).toBe('');
  expect(checked.output).toContain('ours: sound in 9 reviews of 3 installations');
});

test('a name with a slip in a branch that no sample takes is found by the check', async () => {
  const { folder, firm } = folders();
  const shipped = readFileSync(join(root, 'templates/sections/summary.hbs'), 'utf8');
  const slipped = shipped.replace('{{#if isCannotTell}}', '{{#if isCannotTell}}{{meetsCuont}}');
  expect(slipped).not.toBe(shipped);
  writeFileSync(firm('sections/summary.hbs'), slipped);
  const { status, messages } = await runFake(['templates', '--check', 'firm'], { folder });
  expect(status).toBe(2);
  expect(messages).toContain('template sections/summary, line');
  expect(messages).toContain('did you mean meetsCount?');
});
