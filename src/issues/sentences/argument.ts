import type { Sentences } from './sentence.js';
import { say } from './tell.js';

/** Sentences of arguments that a caller of the library got wrong. */
export const argumentSentences = {
  'argument.wrong': (data: { argument: string; wanted: string; found: string }) => ({
    message: `the argument "${say(data, 'argument')}" is ${say(data, 'found')}`,
    wanted: say(data, 'wanted'),
  }),
} as const satisfies Sentences;
