import { EngineError } from '../../src/issues/issue.js';

/** The error an action is refused with. */
export function errorOf(action: () => unknown): EngineError {
  try {
    action();
  } catch (error) {
    if (error instanceof EngineError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}
