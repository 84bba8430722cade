import { EngineError, type IssueCode } from '../issues/issue.js';
import type { Response } from '../mechanics/frame/response.js';
import type { Facts } from './facts.js';

/** What is left of work that could not be done: the reason. */
export interface NotWorkedOut {
  readonly code: IssueCode;
}

/**
 * Makes a piece of work be done once for each review, whoever asks for it: checks, report and results ask for the same.
 *
 * @param work - the work; an error of the engine becomes its answer
 * @returns the same work, remembered by the response of the subject
 */
export function memoized<Answer>(
  work: (subject: Facts) => Answer,
): (subject: Facts) => Answer | NotWorkedOut {
  const known = new WeakMap<Response, Answer | NotWorkedOut>();
  return (subject) => {
    const before = known.get(subject.response);
    if (before !== undefined) return before;
    const answer = attempt(() => work(subject));
    known.set(subject.response, answer);
    return answer;
  };
}

function attempt<Answer>(work: () => Answer): Answer | NotWorkedOut {
  try {
    return work();
  } catch (error) {
    if (error instanceof EngineError) return { code: error.code };
    throw error;
  }
}

/**
 * Whether a piece of work could not be done.
 *
 * @param answer - what `memoized` gave
 * @returns true where there is a reason in place of the answer
 */
export function isNotWorkedOut(answer: object): answer is NotWorkedOut {
  return 'code' in answer;
}
