/** Builds dist/ when something it is made of is newer, so that a test or the demo never runs an old build. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Built command line. */
export const builtCommand = join(root, 'dist/cli/main.js');

const tools = ['build', 'declarations', 'paper-modules', 'third-party-notices', 'trim-packages'];
const madeOf = [
  'src',
  'templates',
  'package.json',
  'tsconfig.json',
  ...tools.map((name) => `tests/tooling/${name}.mjs`),
  'tests/tooling/yaml.js',
];
/** Written last, so its time is that of the whole build. */
const lastWritten = join(root, 'dist/results.schema.json');

/** @returns {void} */
export function ensureBuilt() {
  if (
    existsSync(lastWritten) &&
    newest(madeOf.map((name) => join(root, name))) < statSync(lastWritten).mtimeMs
  )
    return;
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, 'tests/tooling/build.mjs')], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`the build failed\n${stdout}${stderr}`);
}

function newest(paths) {
  const times = paths.map((path) => {
    const entry = statSync(path);
    return entry.isDirectory() ? newest(readdirSync(path).map((name) => join(path, name))) : entry.mtimeMs;
  });
  return Math.max(0, ...times);
}
