/**
 * Builds dist/: the command line as bundles split by command, the library with its packages left outside, the
 * declarations, the schemas, and the notices of what the bundles hold. `--no-types` leaves the declarations out.
 */
import { spawnSync } from 'node:child_process';
import { chmodSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { thirdPartyNotices } from './third-party-notices.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const at = (...parts) => join(root, ...parts);
const { dependencies } = JSON.parse(readFileSync(at('package.json'), 'utf8'));

const shared = {
  absWorkingDir: root,
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  chunkNames: '[name]-[hash]',
  metafile: true,
  logLevel: 'warning',
};

/** The schema library speaks forty languages; the product says everything itself, so English is kept and no other. */
const onlyEnglish = {
  name: 'only-english',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]zod[\\/]v4[\\/]locales[\\/]index\.js$/ }, () => ({
      contents: "export { default as en } from './en.js';",
      loader: 'js',
    }));
  },
};

/** Packages in, an entry for the process and one for its threads, one part per command: a start loads what it needs. */
async function buildCommandLine() {
  const result = await build({
    ...shared,
    entryPoints: { main: 'src/cli/main.ts', worker: 'src/cli/workers/worker.ts' },
    outdir: 'dist/cli',
    plugins: [onlyEnglish],
    // Names of functions stay, so that a fault says where it happened.
    minifyWhitespace: true,
    minifySyntax: true,
    legalComments: 'none',
    banner: {
      js: "import{createRequire as pipeborneRequire}from'node:module';const require=pipeborneRequire(import.meta.url);",
    },
  });
  chmodSync(at('dist/cli/main.js'), 0o755);
  writeFileSync(at('dist/THIRD-PARTY.txt'), thirdPartyNotices(root, Object.keys(result.metafile.inputs)));
  return result.metafile;
}

/** Packages out: whoever uses the library has them once, in the versions of their own lock file. */
async function buildLibrary() {
  await build({
    ...shared,
    entryPoints: { index: 'src/index.ts' },
    outdir: 'dist',
    external: Object.keys(dependencies).flatMap((name) => [name, `${name}/*`]),
  });
}

function writeDeclarations() {
  const compiler = at('node_modules/typescript/bin/tsc');
  const args = [compiler, '-p', at('tests/tooling/tsconfig.types.json')];
  const { status } = spawnSync(process.execPath, args, { stdio: 'inherit' });
  if (status !== 0) throw new Error('the declarations could not be written');
}

async function writeSchemas() {
  const library = await import(pathToFileURL(at('dist/index.js')).href);
  const write = (name, schema) => writeFileSync(at('dist', name), `${JSON.stringify(schema, null, 2)}\n`);
  write('schema.json', library.installationJsonSchema());
  write('results.schema.json', library.resultsJsonSchema());
  write('readings.schema.json', library.readingsJsonSchema());
  write('as-installed.schema.json', library.asInstalledJsonSchema());
}

/** The reference of the input as the command prints it, for those who look into the package. */
function writeReference() {
  const { status, stdout } = spawnSync(process.execPath, [at('dist/cli/main.js'), 'help', 'input'], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error('the reference of the input could not be written');
  writeFileSync(at('dist/input.txt'), stdout);
}

rmSync(at('dist'), { recursive: true, force: true });
const metafile = await buildCommandLine();
await buildLibrary();
if (!process.argv.includes('--no-types')) writeDeclarations();
await writeSchemas();
writeReference();
if (process.argv.includes('--sizes')) {
  for (const [name, { bytes }] of Object.entries(metafile.outputs)) {
    console.log(`${String(bytes).padStart(9)} ${name}`);
  }
}
console.log('built dist/');
