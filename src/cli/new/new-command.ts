/** `pipeborne new`: from a few answers to a commented file that can be checked at once. */
import { extname, resolve } from 'node:path';
import { EngineError, IssuesError } from '../../issues/issue.js';
import { askedQuestions } from '../../starter/asked-questions.js';
import { belongsTo, type Question } from '../../starter/question.js';
import { questions, type RawAnswers } from '../../starter/questions.js';
import { type StartedFile, startFile } from '../../starter/start-file.js';
import type { Environment } from '../environment.js';
import { type ExitStatus, exitStatus } from '../exit-status.js';
import { STANDARD_INPUT } from '../files/read-input.js';
import { showFailure } from '../terminal/show-failure.js';
import { newFilePicture } from './new-file-view.js';
import { refuseExisting, writeNewFile } from './write-new-file.js';

/** Options as the parser of arguments gives them: names in camel case, every answer a text. */
export type NewOptions = Readonly<Record<string, unknown>>;

/**
 * Runs `new`.
 *
 * @param file - name of the file to be, `-` for standard output, or undefined for one made of the mark
 * @param options - answers given as options
 * @param environment - where to ask and write
 * @returns 0 when the file is written
 */
export async function newCommand(
  file: string | undefined,
  options: NewOptions,
  environment: Environment,
): Promise<ExitStatus> {
  try {
    if (file !== undefined) refuseName(file, environment);
    const given = answersIn(options);
    const { terminal } = environment;
    const lacks = missing(given).length > 0;
    if (terminal === undefined || !lacks) return await write(file, given, environment);
    const talk = await talkedThrough(file, given, environment);
    if (talk !== undefined) return await finish(file, talk.answers, talk.started, environment);
    // Ends as the key was meant, so that a script that called us stops as well.
    environment.endBySignal('SIGINT');
    return exitStatus.unusable;
  } catch (error) {
    return showFailure(error, file ?? 'the new file', environment);
  }
}

async function write(
  file: string | undefined,
  answers: RawAnswers,
  environment: Environment,
): Promise<ExitStatus> {
  const started = startFile(answers, environment.today());
  if (!started.ok) throw new IssuesError(started.issues);
  return finish(file, answers, started, environment);
}

type Started = Extract<StartedFile, { ok: true }>;

/** Asks until everything fits, or the person leaves. */
async function talkedThrough(
  file: string | undefined,
  given: RawAnswers,
  environment: Environment,
): Promise<{ readonly answers: RawAnswers; readonly started: Started } | undefined> {
  const { terminal, today } = environment;
  if (terminal === undefined) return undefined;
  // What was given as an option and cannot be used is told before anything is asked.
  const early = startFile(given, today());
  const wrong = early.ok ? [] : early.issues.filter(({ code }) => code !== 'starter.missing');
  if (wrong.length > 0) throw new IssuesError(wrong);
  const { conversationAt } = await import('./conversation.js');
  const talk = conversationAt(terminal, (mark) =>
    file === undefined ? takenName(mark, environment) : undefined,
  );
  talk.begin();
  let answers: RawAnswers | undefined = await talk.ask(askedQuestions, given);
  while (answers !== undefined) {
    const started = startFile(answers, today());
    if (started.ok) {
      talk.end('that is all');
      return { answers, started };
    }
    const again = questionsOf(started.issues.map(({ data }) => String(data.option ?? '')));
    if (again.length === 0) throw new IssuesError(started.issues);
    talk.tell(started.issues);
    answers = await talk.ask(again, without(answers, again));
  }
  talk.leave('nothing was written');
  return undefined;
}

/** Questions whose answers an issue speaks of. */
function questionsOf(options: readonly string[]): readonly Question[] {
  return questions.filter(({ key }) => options.includes(`--${key}`));
}

function without(answers: RawAnswers, again: readonly Question[]): RawAnswers {
  return Object.fromEntries(
    Object.entries(answers).filter(([key]) => !again.some((question) => question.key === key)),
  );
}

function answersIn(options: NewOptions): RawAnswers {
  const entries = questions.flatMap(({ key }) => {
    const value = options[key.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase())];
    return typeof value === 'string' ? [[key, value] as const] : [];
  });
  return Object.fromEntries(entries);
}

function missing(answers: RawAnswers): readonly Question[] {
  const table: readonly Question[] = questions;
  return table.filter(
    (question) =>
      question.otherwise === undefined &&
      belongsTo(question, answers.arrangement) &&
      answers[question.key as keyof RawAnswers] === undefined,
  );
}

async function finish(
  file: string | undefined,
  answers: RawAnswers,
  started: Started,
  environment: Environment,
): Promise<ExitStatus> {
  const { output, messages, folder } = environment;
  if (file === STANDARD_INPUT) {
    output.write(started.text);
    messages.write(newFilePicture(started, undefined));
    return exitStatus.meets;
  }
  const shown = file ?? nameFor(answers.mark ?? '');
  await writeNewFile(resolve(folder, shown), shown, started.text);
  output.write(newFilePicture(started, shown));
  return exitStatus.meets;
}

function refuseName(file: string, { folder }: Environment): void {
  if (file === STANDARD_INPUT) return;
  if (!['.yaml', '.yml'].includes(extname(file).toLowerCase()))
    throw new EngineError('cli.arguments.new-name', { found: file });
  refuseExisting(resolve(folder, file), file);
}

function takenName(mark: string, { folder }: Environment): string | undefined {
  const name = nameFor(mark);
  try {
    refuseExisting(resolve(folder, name), name);
    return undefined;
  } catch {
    return `${name} is there already and is not overwritten; take another mark, or name the file: pipeborne new FILE`;
  }
}

/** A file name of the mark: letters, digits and hyphens, which every system can keep. */
function nameFor(mark: string): string {
  const plain = mark
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain === '' ? 'pump' : plain}.yaml`;
}
