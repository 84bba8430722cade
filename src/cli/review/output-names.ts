/** Which file each review is written to, decided and checked before any work is done. */
import { basename, extname, join, resolve } from 'node:path';
import {
  coded,
  type Issue,
  type IssueCode,
  type IssueDataOf,
  IssuesError,
  issueOf,
} from '../../issues/issue.js';
import type { FoundInput } from '../files/find-inputs.js';
import { STANDARD_INPUT } from '../files/read-input.js';
import { isFolder, realPath } from '../files/real-path.js';

/** What can be written, with the option that names it and the ending its name must have. */
const outputs = {
  pdf: { option: '-o', ending: '.pdf' },
  results: { option: '--results', ending: '.json' },
  html: { option: '--html', ending: '.html' },
} as const;

export type OutputKind = keyof typeof outputs;

/** A place for one output. */
export interface OutputName {
  /** Absolute path. */
  readonly path: string;
  /** As shown to the user: relative where the user spoke so. */
  readonly shown: string;
}

/** Where everything of one input goes. Only what was asked for is there; the PDF always is. */
export type OutputNames = { readonly pdf: OutputName } & { readonly [kind in OutputKind]?: OutputName };

/**
 * Names every output.
 *
 * @param inputs - inputs as given, or as found below a folder, whose own folders are kept
 * @param asked - value of each option that was given: a file, or a folder
 * @param folder - working folder
 * @param what - what is written, for the name of a file nobody named
 * @returns one set of names an input, in order
 * @throws IssuesError with every name that cannot be used
 */
export function nameOutputs(
  inputs: readonly (string | FoundInput)[],
  asked: { readonly [kind in OutputKind]?: string },
  folder: string,
  what: 'review' | 'field-sheet' = 'review',
): readonly OutputNames[] {
  const found = inputs.map((input) => (typeof input === 'string' ? { file: input, below: '' } : input));
  const files = found.map(({ file }) => file);
  const issues: Issue[] = [];
  const refuse = <Code extends IssueCode>(code: Code, data: IssueDataOf<Code>) =>
    void issues.push(issueOf('error', coded(code, data)));

  const nameOne = ({ file, below }: FoundInput, kind: OutputKind): OutputName => {
    const { option, ending } = outputs[kind];
    const ownName = `${baseName(file)}-${what}${ending}`;
    const wish = asked[kind] ?? '.';
    const inFolder = isFolder(resolve(folder, wish)) || /[/\\]$/.test(wish);
    const shown = inFolder ? join(wish, below, ownName) : wish;
    if (!inFolder && files.length > 1) refuse('cli.arguments.folder-wanted', { option, found: wish });
    else if (extname(shown).toLowerCase() !== ending) {
      refuse('cli.arguments.wrong-ending', { option, found: wish, ending });
    }
    return { path: resolve(folder, shown), shown };
  };

  const named = found.map((file): OutputNames => {
    const names: { [kind in OutputKind]?: OutputName } = {};
    for (const kind of ['results', 'html'] as const) {
      if (asked[kind] !== undefined) names[kind] = nameOne(file, kind);
    }
    return { pdf: nameOne(file, 'pdf'), ...names };
  });

  const read = new Set(
    files.filter((file) => file !== STANDARD_INPUT).map((file) => realPath(resolve(folder, file))),
  );
  const taken = new Set<string>();
  for (const { path, shown } of named.flatMap((names) => Object.values(names))) {
    if (read.has(realPath(path))) refuse('cli.arguments.over-input', { file: shown });
    else if (taken.has(realPath(path))) refuse('cli.arguments.same-output', { file: shown });
    taken.add(realPath(path));
  }
  if (files.filter((file) => file === STANDARD_INPUT).length > 1) refuse('cli.arguments.input-twice', {});
  if (issues.length > 0) throw new IssuesError(withoutRepeats(issues));
  return named;
}

function baseName(file: string): string {
  return file === STANDARD_INPUT ? 'standard-input' : basename(file, extname(file));
}

function withoutRepeats(issues: readonly Issue[]): readonly Issue[] {
  const byText = new Map(issues.map((issue) => [JSON.stringify(issue), issue]));
  return [...byText.values()];
}
