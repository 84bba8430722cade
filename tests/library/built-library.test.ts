// The built library, as a program that depends on it meets it: by the names of its doors, in the order of its README, through
// a bundler, and through the compiler with everything strict.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { beforeAll, expect, test } from 'vitest';
import { temporaryFolder } from '../cli/temporary-folder.js';
import { ensureBuilt, root } from '../tooling/ensure-built.mjs';

const DOORS = ['pipeborne', 'pipeborne/frame', 'pipeborne/review', 'pipeborne/print'];
const sampleFile = readdirSync(join(root, 'samples')).find((name) => name.endsWith('.yaml')) ?? '';

beforeAll(ensureBuilt);

/** An empty folder of a program that has the package as a dependency. */
function program(): string {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'node_modules'));
  symlinkSync(root, join(folder, 'node_modules/pipeborne'));
  writeFileSync(join(folder, 'package.json'), '{ "private": true, "type": "module" }');
  writeFileSync(join(folder, 'pump.yaml'), readFileSync(join(root, 'samples', sampleFile)));
  return folder;
}

function runIn(folder: string, text: string): { readonly stdout: string; readonly stderr: string } {
  writeFileSync(join(folder, 'program.mjs'), text);
  const { stdout, stderr } = spawnSync(process.execPath, ['program.mjs'], { cwd: folder, encoding: 'utf8' });
  return { stdout, stderr };
}

/** Sizes of everything a bundler makes of a text for browsers, made small, in parts that load when asked for. */
async function bundled(
  contents: string,
): Promise<{ readonly bytes: number; readonly text: string; readonly first: string }> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: program() },
    bundle: true,
    splitting: true,
    minify: true,
    charset: 'utf8',
    format: 'esm',
    platform: 'browser',
    outdir: 'out',
    write: false,
    logLevel: 'silent',
  });
  const text = outputFiles.map((file) => file.text).join('');
  const first = outputFiles.find(({ path }) => path.endsWith('stdin.js'))?.text ?? '?';
  return { bytes: outputFiles.reduce((sum, file) => sum + file.contents.length, 0), text, first };
}

test('the lines of the README, run as they stand, make the PDF', () => {
  const readme = readFileSync(join(root, 'README.md'), 'utf8');
  const text = /<!-- example: text to PDF -->\n```js\n([\s\S]*?)```/.exec(readme)?.[1] ?? '';
  expect(text).not.toBe('');
  const folder = program();
  const { stderr } = runIn(folder, text);
  expect(stderr).toBe('');
  const bytes = readFileSync(join(folder, 'review.pdf'));
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
  // The command line prints the same bytes from its folder of templates and fonts.
  const command = join(root, 'dist/cli/main.js');
  spawnSync(process.execPath, [command, 'review', 'pump.yaml', '--no-bands', '-o', 'command.pdf'], {
    cwd: folder,
  });
  expect(digest(bytes)).toBe(digest(readFileSync(join(folder, 'command.pdf'))));
});

const digest = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

test.each(DOORS)(
  'loading %s does nothing that can be noticed: a bundle of it alone is empty',
  async (door) => {
    expect((await bundled(`import '${door}';`)).first.trim()).toBe('');
  },
);

test('the test above can fail', async () => {
  expect((await bundled(`import * as all from 'pipeborne/frame'; globalThis.all = all;`)).first).not.toBe('');
});

test.each([
  ['pipeborne/frame', 150_000],
  ['pipeborne', 2_000_000],
])('%s bundled whole and made small has at most %d bytes', async (door, most) => {
  const { bytes } = await bundled(`export * from '${door}';`);
  expect(bytes).toBeGreaterThan(most / 10);
  expect(bytes).toBeLessThanOrEqual(most);
});

test('the mechanics alone brings no schema, sentence or PDF with it', async () => {
  const { text } = await bundled(`export * from 'pipeborne/frame';`);
  for (const sign of ['ZodError', 'PDFDocument', 'the argument "']) expect(text).not.toContain(sign);
});

test('no part of the library asks for a module of Node or for a package', async () => {
  const { metafile } = await build({
    stdin: {
      contents: DOORS.map(
        (door) => `import * as a${DOORS.indexOf(door)} from '${door}'; console.log(a${DOORS.indexOf(door)});`,
      ).join(''),
      resolveDir: program(),
    },
    bundle: true,
    format: 'esm',
    external: ['node:*'],
    outdir: 'out',
    write: false,
    metafile: true,
  });
  const inputs = Object.entries(metafile.inputs);
  expect(inputs.length).toBeGreaterThan(10);
  expect(inputs.flatMap(([, { imports }]) => imports.filter(({ external }) => external === true))).toEqual(
    [],
  );
  expect(inputs.filter(([name]) => /node_modules/.test(name))).toEqual([]);
});

test('a door is declared in one file', () => {
  const declared = readdirSync(join(root, 'dist'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.d.ts'))
    .sort();
  const doors = ['fonts', 'frame', 'index', 'print', 'review', 'templates'];
  expect(declared).toEqual(doors.map((name) => `${name}.d.ts`));
});

const CONSUMER = `
import { readInstallation as readWhole, type Review as WholeReview } from 'pipeborne';
import { type Frame, naturalFrequencies, type Response, solveFrame, wrenchOnBody } from 'pipeborne/frame';
import { type Installation, type ReadInstallation, type ResultsFile, readInstallation, type Review, review, reviewResults } from 'pipeborne/review';
import { type RenderOptions, renderReviewPdf } from 'pipeborne/print';
import { fonts } from 'pipeborne/fonts';
import { templates } from 'pipeborne/templates';

export async function pdfOf(text: string): Promise<Uint8Array> {
  const reading: ReadInstallation = readInstallation(text);
  if (!reading.ok) throw new Error(reading.issues.map(({ code }) => code).join());
  const installation: Installation = reading.installation;
  const reviewed: Review = review(installation);
  const results: ResultsFile = reviewResults(reviewed);
  const options: RenderOptions = { templates, fonts };
  return results.format === undefined ? new Uint8Array() : renderReviewPdf(reviewed, options);
}
// What one door gives another takes.
export const same = (one: WholeReview): Review => one;
export const solvedWith = (frame: Frame): Response => solveFrame(frame);
export const frameOf = (one: Review): Response => solveFrame(one.layout.frame);
export const lowest = (frame: Frame): number | undefined => naturalFrequencies(frame, 'cold').modes[0]?.frequency;
export const up = (frame: Frame): number => wrenchOnBody(frame, solveFrame(frame), { condition: 'a', body: 'b', point: 'c' }).force[2];
export { readWhole };
`;

/** Compiles a text as a program of its own. */
function compile(text: string): string {
  const folder = program();
  writeFileSync(join(folder, 'consumer.ts'), text);
  const options = {
    strict: true,
    skipLibCheck: false,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    module: 'NodeNext',
    target: 'ES2022',
    lib: ['ES2022', 'DOM'],
    types: [],
    noEmit: true,
  };
  writeFileSync(
    join(folder, 'tsconfig.json'),
    JSON.stringify({ compilerOptions: options, files: ['consumer.ts'] }),
  );
  const compiler = join(root, 'node_modules/typescript/bin/tsc');
  return spawnSync(process.execPath, [compiler, '-p', folder], { encoding: 'utf8' }).stdout;
}

test('a program compiles against the declarations with everything strict, and one that is wrong does not', () => {
  expect(compile(CONSUMER)).toBe('');
  const wrong = compile(`${CONSUMER}\nexport const wrong: string = solveFrame({ points: 1 });`);
  expect(wrong).toContain('TS2322');
}, 600_000);

test('the schemas and the notices of packages inside lie beside it', () => {
  for (const name of [
    'schema.json',
    'results.schema.json',
    'readings.schema.json',
    'as-installed.schema.json',
  ])
    expect(existsSync(join(root, 'dist', name))).toBe(true);
  const notices = readFileSync(join(root, 'dist/THIRD-PARTY.txt'), 'utf8');
  for (const name of ['csv-parse', 'fflate', 'mathjs', 'pdf-lib', 'zod'])
    expect(notices).toMatch(new RegExp(`^${name} \\d`, 'm'));
});
