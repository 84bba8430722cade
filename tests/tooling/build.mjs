/**
 * Builds dist/: the command line as bundles split by command, the library as bundles split by door, templates and fonts
 * as data, the declarations, the schemas, and the notices of what the bundles hold. `--no-types` leaves the
 * declarations out.
 */
import { spawnSync } from 'node:child_process';
import { chmodSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { writeDeclarations } from './declarations.mjs';
import { paperModules } from './paper-modules.mjs';
import { thirdPartyNotices } from './third-party-notices.mjs';
import { trimPackages } from './trim-packages.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const at = (...parts) => join(root, ...parts);
const doors = ['index', 'frame', 'review', 'print'];

const shared = {
  absWorkingDir: root,
  bundle: true,
  splitting: true,
  format: 'esm',
  plugins: trimPackages,
  // Names of functions stay, so that a fault says where it happened.
  minifyWhitespace: true,
  minifySyntax: true,
  charset: 'utf8',
  legalComments: 'none',
  metafile: true,
  logLevel: 'warning',
};

/** Packages in, an entry for the process and one for its threads, one part per command: a start loads what it needs. */
async function buildCommandLine() {
  const { metafile } = await build({
    ...shared,
    entryPoints: { main: 'src/cli/main.ts', worker: 'src/cli/workers/worker.ts' },
    outdir: 'dist/cli',
    platform: 'node',
    target: 'node20.19',
    chunkNames: '[name]-[hash]',
    banner: {
      js: "import{createRequire as pipeborneRequire}from'node:module';const require=pipeborneRequire(import.meta.url);",
    },
  });
  chmodSync(at('dist/cli/main.js'), 0o755);
  return metafile;
}

/**
 * Packages in as well, for Node and browsers alike: of most a small part is used, and loading them whole takes ten times
 * the start of Node. For the platform of browsers a module of Node does not resolve, so none can come in.
 */
async function buildLibrary() {
  const { metafile } = await build({
    ...shared,
    entryPoints: Object.fromEntries(doors.map((door) => [door, `src/${door}.ts`])),
    outdir: 'dist',
    platform: 'browser',
    target: 'es2022',
    chunkNames: 'parts/[name]-[hash]',
  });
  for (const [name, text] of Object.entries(paperModules(at('templates'))))
    writeFileSync(at('dist', name), text);
  return metafile;
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
const made = [await buildCommandLine(), await buildLibrary()];
const inside = made.flatMap(({ inputs }) => Object.keys(inputs));
writeFileSync(at('dist/THIRD-PARTY.txt'), thirdPartyNotices(root, inside));
if (!process.argv.includes('--no-types')) await writeDeclarations(root, doors);
await writeSchemas();
writeReference();
if (process.argv.includes('--sizes')) {
  for (const { outputs } of made) {
    for (const [name, { bytes }] of Object.entries(outputs))
      console.log(`${String(bytes).padStart(9)} ${name}`);
  }
}
console.log('built dist/');
