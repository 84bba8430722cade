/** Errors as sentences on the message stream, and the status that goes with them. */
import { EngineError, type Issue, IssuesError } from '../../issues/issue.js';
import { oneLine, printIssue } from '../../issues/print.js';
import { type Environment, LINE_WIDTH } from '../environment.js';
import { type ExitStatus, exitStatus, statusOfCode, worstStatus } from '../exit-status.js';
import { wrapped } from './text-columns.js';

/**
 * Shows whatever was thrown while working on something.
 *
 * @param error - what was thrown
 * @param subject - the file, or what else was being worked on
 * @param environment - where messages go
 * @returns 2 or 3 for what the user can mend, 70 for a fault of the program
 */
export function showFailure(error: unknown, subject: string, environment: Environment): ExitStatus {
  if (error instanceof IssuesError) {
    showIssues(error.issues, environment);
    return worstStatus(error.issues.filter(isError).map(({ code }) => statusOfCode(code)));
  }
  if (error instanceof EngineError) {
    showIssues([{ code: error.code, severity: 'error', data: error.data }], environment, subject);
    return statusOfCode(error.code);
  }
  const data = { file: subject, what: faultText(error) };
  showIssues([{ code: 'cli.fault', severity: 'error', data }], environment);
  return exitStatus.ourFault;
}

/**
 * Shows issues, each as a block. On a terminal long lines are broken at 80; in a pipe each stays whole, to be searched.
 *
 * @param issues - errors, warnings, hints
 * @param environment - where messages go
 * @param subject - what they are about, where they have no place of their own
 */
export function showIssues(issues: readonly Issue[], environment: Environment, subject?: string): void {
  for (const issue of issues) {
    const [head = '', ...rest] = printIssue(issue);
    const namesItsSubject = issue.place !== undefined || issue.code.startsWith('cli.');
    const about = subject === undefined || namesItsSubject ? [] : [`  at ${oneLine(subject)}`];
    for (const line of [head, ...about, ...rest])
      environment.messages.write(`${fitted(line, environment)}\n`);
  }
}

function fitted(line: string, { messages }: Environment): string {
  if (!messages.isTerminal || line.length <= LINE_WIDTH) return line;
  const indent = /^ */.exec(line)?.[0] ?? '';
  return wrapped(line.trim(), LINE_WIDTH - indent.length - 2)
    .join(`\n${indent}  `)
    .replace(/^/, indent);
}

function isError({ severity }: Issue): boolean {
  return severity === 'error';
}

/** What was thrown and in which function: enough to find it, and nothing of the user's machine. */
function faultText(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const place = /^\s*at (?:async )?([\w.$<>]+) \(/m.exec(error.stack ?? '')?.[1];
  return `${error.name}, ${error.message}${place === undefined ? '' : `, in ${place}`}`;
}
