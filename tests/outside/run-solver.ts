/** Runs the outside solver in a folder of its own. */
import { execFileSync } from 'node:child_process';
import { accessSync, constants, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import type { BeamModel } from './beam-model.js';
import { readResults, type SolverResults, solverFiles } from './solver-files.js';

const PROGRAMS = ['z88f', 'z88e'];

/** Programs that are not on the path; none when the solver can run. */
export function missingPrograms(): readonly string[] {
  const folders = (process.env.PATH ?? '').split(delimiter);
  return PROGRAMS.filter((program) => !folders.some((folder) => isProgram(join(folder, program))));
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * Movements and forces of a model.
 *
 * @throws Error with what the program said when it leaves no results
 */
export function solveOutside(model: BeamModel): SolverResults {
  const folder = mkdtempSync(join(tmpdir(), 'outside-solver-'));
  let said = '';
  try {
    for (const [name, text] of Object.entries(solverFiles(model))) writeFileSync(join(folder, name), text);
    const run = (program: string, ...words: readonly string[]) => {
      said += execFileSync(program, words, {
        cwd: folder,
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'pipe'],
      });
    };
    run('z88f', '-c');
    run('z88e');
    const read = (name: string) => readFileSync(join(folder, name), 'latin1');
    return readResults(model, read('z88o2.txt'), read('z88o4.txt'));
  } catch (cause) {
    throw new Error(`the outside solver gave no results: ${said.slice(-400)}`, { cause });
  } finally {
    rmSync(folder, { recursive: true });
  }
}
