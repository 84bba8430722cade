/** Where what comes of a visit is written, decided and checked before any work is done. */
import { basename, extname, join, resolve } from 'node:path';
import {
  coded,
  type Issue,
  type IssueCode,
  type IssueDataOf,
  IssuesError,
  issueOf,
} from '../../issues/issue.js';
import { STANDARD_INPUT } from '../files/read-input.js';
import { isFolder, realPath } from '../files/real-path.js';

/** A place for one output. */
export interface VisitName {
  /** Absolute path. */
  readonly path: string;
  readonly shown: string;
}

/** Names of everything that is written. */
export interface VisitNames {
  readonly pdf: VisitName;
  readonly results?: VisitName;
  readonly sheet?: VisitName;
  readonly html?: VisitName;
}

/**
 * Names every output of `as-installed`.
 *
 * @param file - input as given
 * @param sheets - sheets as given: none of them is ever an output
 * @param asked - values of the options
 * @param folder - working folder
 * @returns names
 * @throws IssuesError with every name that cannot be used
 */
export function nameVisit(
  file: string,
  sheets: readonly string[],
  asked: {
    readonly output?: string;
    readonly results?: string;
    readonly sheet?: string;
    readonly html?: string;
  },
  folder: string,
): VisitNames {
  const issues: Issue[] = [];
  const refuse = <Code extends IssueCode>(code: Code, data: IssueDataOf<Code>) =>
    void issues.push(issueOf('error', coded(code, data)));
  const base = file === STANDARD_INPUT ? 'standard-input' : basename(file, extname(file));
  const name = (option: string, wish: string, own: string, ending: string): VisitName => {
    const shown = isFolder(resolve(folder, wish)) || /[/\\]$/.test(wish) ? join(wish, own) : wish;
    if (extname(shown).toLowerCase() !== ending) {
      refuse('cli.arguments.wrong-ending', { option, found: wish, ending });
    }
    return { path: resolve(folder, shown), shown };
  };
  const { output = '.', results, sheet, html } = asked;
  const names: VisitNames = {
    pdf: name('-o', output, `${base}-as-installed.pdf`, '.pdf'),
    ...(results !== undefined && {
      results: name('--results', results, `${base}-as-installed.json`, '.json'),
    }),
    ...(sheet !== undefined && { sheet: name('--sheet', sheet, `${base}-next-sheet.pdf`, '.pdf') }),
    ...(html !== undefined && { html: name('--html', html, `${base}-as-installed.html`, '.html') }),
  };
  const inputs = new Set(
    [file, ...sheets]
      .filter((each) => each !== STANDARD_INPUT)
      .map((each) => realPath(resolve(folder, each))),
  );
  const taken = new Set<string>();
  for (const { path, shown } of Object.values(names)) {
    if (inputs.has(realPath(path))) refuse('cli.arguments.over-input', { file: shown });
    else if (taken.has(realPath(path))) refuse('cli.arguments.same-output', { file: shown });
    taken.add(realPath(path));
  }
  if (issues.length > 0) throw new IssuesError(issues);
  return names;
}
