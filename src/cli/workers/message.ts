/** What passes between the threads. An error loses its class on the way, so it travels as data and is made anew. */
import { type Coded, EngineError, engineError, type Issue, IssuesError } from '../../issues/issue.js';

/** To the thread: do this. */
export interface Order {
  readonly job: string;
  readonly input: unknown;
}

/** From the thread. */
export type Answer =
  /** All that the job needs is loaded; from here its time counts. */
  | { readonly kind: 'began' }
  | { readonly kind: 'done'; readonly value: unknown }
  | { readonly kind: 'failed'; readonly error: SentError };

export type SentError =
  | { readonly kind: 'engine'; readonly told: Coded }
  | { readonly kind: 'issues'; readonly issues: readonly Issue[] }
  | { readonly kind: 'fault'; readonly name: string; readonly message: string; readonly stack: string };

/**
 * An error as data.
 *
 * @param thrown - whatever was thrown
 * @returns plain data
 */
export function sentError(thrown: unknown): SentError {
  if (thrown instanceof EngineError) return { kind: 'engine', told: thrown.told };
  if (thrown instanceof IssuesError) return { kind: 'issues', issues: thrown.issues };
  if (!(thrown instanceof Error)) return { kind: 'fault', name: 'Error', message: String(thrown), stack: '' };
  const { name, message, stack = '' } = thrown;
  return { kind: 'fault', name, message, stack };
}

/**
 * The error that was sent.
 *
 * @param sent - as `sentError` made it
 * @returns an error of the class, code and data it had
 */
export function receivedError(sent: SentError): Error {
  if (sent.kind === 'engine') return engineError(sent.told);
  if (sent.kind === 'issues') return new IssuesError(sent.issues);
  return Object.assign(new Error(sent.message), { name: sent.name, stack: sent.stack });
}
