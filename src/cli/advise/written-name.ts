/** Names of what `advise` writes. */
import { realpathSync } from 'node:fs';
import { extname, resolve } from 'node:path';
import { EngineError } from '../../issues/issue.js';
import { STANDARD_INPUT } from '../files/read-input.js';

const ENDINGS = ['.yaml', '.yml', '.json'];

/**
 * Where a changed input goes: never over the input itself, and only into a file of the kind of the input.
 *
 * @param wish - name as given
 * @param file - the input as given
 * @param folder - working folder
 * @returns absolute path, and the name as given
 * @throws EngineError `cli.arguments.over-input`, `cli.arguments.wrong-ending`
 */
export function nameWritten(
  wish: string,
  file: string,
  folder: string,
): { readonly path: string; readonly shown: string } {
  const path = resolve(folder, wish);
  const ending = extname(file).toLowerCase();
  const fitting = file === STANDARD_INPUT ? ENDINGS : ending === '.json' ? ['.json'] : ['.yaml', '.yml'];
  if (!fitting.includes(extname(wish).toLowerCase())) {
    throw new EngineError('cli.arguments.wrong-ending', {
      option: '--write',
      found: wish,
      ending: fitting[0] ?? '',
    });
  }
  if (file !== STANDARD_INPUT && real(path) === real(resolve(folder, file)))
    throw new EngineError('cli.arguments.over-input', { file: wish });
  return { path, shown: wish };
}

/**
 * Where a PDF beside an input goes.
 *
 * @param wish - name as given
 * @param file - the input as given
 * @param folder - working folder
 * @returns absolute path, and the name as given
 * @throws EngineError `cli.arguments.wrong-ending`, `cli.arguments.over-input`
 */
export function namePaper(
  wish: string,
  file: string,
  folder: string,
): { readonly path: string; readonly shown: string } {
  const path = resolve(folder, wish);
  if (extname(wish).toLowerCase() !== '.pdf')
    throw new EngineError('cli.arguments.wrong-ending', { option: '-o', found: wish, ending: '.pdf' });
  if (file !== STANDARD_INPUT && real(path) === real(resolve(folder, file)))
    throw new EngineError('cli.arguments.over-input', { file: wish });
  return { path, shown: wish };
}

function real(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
}
