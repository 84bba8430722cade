/** Declarations of the library: those of the compiler, gathered into one file a door, whole in itself. */
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { isAbsolute, join } from 'node:path';
import { rollup } from 'rollup';
import { dts } from 'rollup-plugin-dts';

/**
 * @param {string} root folder of the project
 * @param {readonly string[]} doors names of the files in src that are doors
 * @returns {Promise<void>}
 */
export async function writeDeclarations(root, doors) {
  const compiler = join(root, 'node_modules/typescript/bin/tsc');
  const scattered = join(root, 'dist/scattered');
  const args = [compiler, '-p', join(root, 'tests/tooling/tsconfig.types.json'), '--outDir', scattered];
  const { status } = spawnSync(process.execPath, args, { stdio: 'inherit' });
  if (status !== 0) throw new Error('the declarations could not be written');
  for (const door of doors) {
    const bundle = await rollup({
      input: join(scattered, `${door}.d.ts`),
      plugins: [dts()],
      // Packages are asked for by name.
      external: (id) => !id.startsWith('.') && !isAbsolute(id),
      onwarn: (warning) => {
        throw new Error(`${door}: ${warning.message}`);
      },
    });
    await bundle.write({ file: join(root, 'dist', `${door}.d.ts`), format: 'es' });
    await bundle.close();
  }
  rmSync(scattered, { recursive: true });
}
