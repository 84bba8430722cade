/** `pipeborne advise`: the smallest changes that make a file meet its limits. */
import { adviceView } from '../../app/advice-words.js';
import {
  type AdvisedFile,
  type AdviseTools,
  advise,
  type ChangeKind,
  changeKinds,
} from '../../app/advise.js';
import type { UnitSystem } from '../../index.js';
import { version } from '../../index.js';
import { coded, EngineError, type Issue, IssuesError, issueOf } from '../../issues/issue.js';
import { type Environment, mayColour } from '../environment.js';
import { type ExitStatus, statusOfVerdict } from '../exit-status.js';
import { readInput } from '../files/read-input.js';
import { writeFiles } from '../files/write-files.js';
import { showFailure, showIssues } from '../terminal/show-failure.js';
import { openWorkers, type Workers } from '../workers/open-workers.js';
import { advicePaper } from './advise-paper.js';
import { advisePicture } from './advise-view.js';
import { namePaper, nameWritten } from './written-name.js';

/** Options of the command as the parser of arguments gives them. */
export interface AdviseCommandOptions {
  readonly color: boolean;
  readonly json?: boolean;
  readonly units?: UnitSystem;
  readonly write?: string;
  readonly output?: string;
  readonly templates?: string;
  readonly alternative: number;
  readonly most: number;
  readonly together: number;
  readonly trials: number;
  readonly keep?: readonly string[];
  readonly without?: readonly ChangeKind[];
  readonly effort?: readonly string[];
}

/** Trials handed to a thread at once. */
const AT_ONCE = 8;

/**
 * Runs `advise`.
 *
 * @param file - input as given
 * @param options - options of the command
 * @param environment - where to read, print and write
 * @returns the status of the verdict after the alternative that is shown
 */
export async function adviseCommand(
  file: string,
  options: AdviseCommandOptions,
  environment: Environment,
): Promise<ExitStatus> {
  const workers = openWorkers();
  try {
    return await advised(file, options, environment, workers);
  } catch (error) {
    return showFailure(error, file, environment);
  } finally {
    await workers.close();
  }
}

async function advised(
  file: string,
  options: AdviseCommandOptions,
  environment: Environment,
  workers: Workers,
): Promise<ExitStatus> {
  const efforts = readEfforts(options.effort ?? []);
  const target =
    options.write === undefined ? undefined : nameWritten(options.write, file, environment.folder);
  const onPaper =
    options.output === undefined ? undefined : namePaper(options.output, file, environment.folder);
  const input = await readInput(file, environment);
  let stopped = false;
  const forget = environment.onInterrupt?.(() => {
    stopped = true;
  });
  const progress = progressLine(environment);
  let result: AdvisedFile;
  try {
    result = await advise(input.text, {
      alternatives: Math.max(options.most, options.alternative),
      changes: options.together,
      trials: options.trials,
      kept: { marks: options.keep ?? [], kinds: options.without ?? [] },
      efforts,
      tools: {
        ...toolsOf(workers, input.text),
        onProgress: progress.show,
        isCancelled: () => stopped,
      },
    });
  } catch (error) {
    if (error instanceof IssuesError)
      throw new IssuesError(error.issues.map((issue) => placed(issue, input.name)));
    throw error;
  } finally {
    progress.clear();
    forget?.();
  }
  const { advice, review } = result;
  checkMarks(options.keep ?? [], result);
  if (advice.ended !== 'done') {
    const code = advice.ended === 'cancelled' ? 'advise.stopped' : 'advise.out-of-trials';
    showIssues([issueOf('warning', coded(code, { trials: advice.trials }))], environment);
  }
  const chosen = advice.alternatives[options.alternative - 1];
  if (chosen === undefined && options.alternative > 1) {
    const most = advice.alternatives.length;
    throw new EngineError('advise.no-such-alternative', { found: options.alternative, most });
  }
  if (target !== undefined && chosen === undefined) {
    showIssues(
      [{ code: 'advise.nothing-to-write', severity: 'warning', data: { file: target.shown } }],
      environment,
    );
  }
  const written = chosen === undefined ? undefined : target?.shown;
  const units = options.units ?? review.installation.review.units;
  const paper = onPaper && {
    ...onPaper,
    content: await advicePaper(
      result,
      { file, name: input.name, text: input.text, units, templates: options.templates },
      environment,
    ),
  };
  await writeFiles([
    ...(target !== undefined && chosen !== undefined ? [{ ...target, content: chosen.text }] : []),
    ...(paper ? [paper] : []),
  ]);
  environment.output.write(
    options.json === true
      ? `${JSON.stringify(forMachines(result, units))}\n`
      : advisePicture(result, {
          file,
          name: input.name,
          text: input.text,
          chosen: options.alternative,
          colour: mayColour(environment.output, environment.variables, options.color),
          units,
          ...(written !== undefined && { written }),
        }),
  );
  return statusOfVerdict(chosen?.verdict ?? advice.verdict);
}

/** The thread that asked knows no file name; whoever asked for the file does. */
function placed(issue: Issue, file: string): Issue {
  return issue.place === undefined ? issue : issueOf(issue.severity, issue, { ...issue.place, file });
}

function toolsOf(workers: Workers, text: string): Pick<AdviseTools, 'screenMany' | 'reviewMany'> {
  return {
    screenMany: async (plan, chains) => {
      const count = Math.ceil(chains.length / AT_ONCE);
      const parts = Array.from({ length: count }, (_, index) => ({
        text,
        plan,
        chains: chains.slice(index * AT_ONCE, (index + 1) * AT_ONCE),
      }));
      const outcomes = await workers.runEach('advise-trials', parts);
      return outcomes.flatMap((outcome) => {
        if (!outcome.ok) throw outcome.error;
        return outcome.value;
      });
    },
    reviewMany: async (texts) => {
      const outcomes = await workers.runEach('advise-findings', texts);
      return outcomes.map((outcome) => {
        if (!outcome.ok) throw outcome.error;
        return outcome.value;
      });
    },
  };
}

/** One line on a terminal, written over as the search goes on; nothing in a pipe. */
function progressLine({ messages }: Environment) {
  const write = (text: string) => {
    if (messages.isTerminal) messages.write(`\r${text.padEnd(79)}\r`);
  };
  return {
    show: (trials: number, found: number) =>
      write(`${trials} trials, ${found} that mend everything; Ctrl-C stops with the best so far`),
    clear: () => write(''),
  };
}

function readEfforts(given: readonly string[]): Readonly<Partial<Record<ChangeKind, number>>> {
  const pairs = given.map((found) => {
    const [, kind, number] = /^([a-z-]+)=(\d+(?:\.\d+)?)$/.exec(found) ?? [];
    const known = changeKinds.find((name) => name === kind);
    if (known === undefined || !(Number(number) > 0))
      throw new EngineError('advise.effort-unusable', { found, kinds: [...changeKinds] });
    return [known, Number(number)] as const;
  });
  return Object.fromEntries(pairs);
}

function checkMarks(keep: readonly string[], { review }: AdvisedFile): void {
  const marks = review.layout.supports.map(({ mark }) => mark);
  const found = keep.find((mark) => !marks.includes(mark));
  if (found !== undefined) throw new EngineError('advise.unknown-mark', { found, marks });
}

/** Everything, as data: every finding before and after, and the changes of the file. */
function forMachines({ review, advice }: AdvisedFile, units: UnitSystem): object {
  const view = adviceView(advice, units);
  return {
    format: 'pipeborne-advice/1',
    tool: { version },
    input: { sha256: review.installation.fingerprint },
    pump: { mark: review.installation.pump.mark },
    verdict: advice.verdict,
    trials: advice.trials,
    ended: advice.ended,
    alternatives: advice.alternatives.map(({ changes, effort, solves, verdict, pairs }, index) => ({
      effort,
      solves,
      verdict,
      changes: changes.map(({ kind, edits }, place) => ({
        kind,
        words: view.alternatives[index]?.steps[place] ?? '',
        edits,
      })),
      cautions: view.alternatives[index]?.cautions ?? [],
      findings: pairs,
    })),
    unsolved: advice.unsolved.map(({ finding, why }, index) => ({
      check: finding.check,
      at: finding.at,
      verdict: finding.verdict,
      why,
      todo: view.unsolved[index]?.todo ?? '',
    })),
  };
}
