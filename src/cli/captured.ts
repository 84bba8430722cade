/** Surroundings for work in a thread: what is said is kept, and shown by the thread that asked. */
import type { Surroundings } from './surroundings.js';

/** What a thread is told of the world: plain data. */
export interface ThreadPlace {
  readonly folder: string;
  readonly packageFolder: string;
  /** Standard input, where it is the file. */
  readonly standardInput?: string;
  /** Whether messages go to a terminal, whose lines are broken. */
  readonly messagesOnTerminal: boolean;
}

export interface Captured {
  readonly surroundings: Surroundings;
  readonly said: () => { readonly output: string; readonly messages: string };
}

/**
 * Surroundings that keep what is said.
 *
 * @param place - what the thread is told
 * @returns surroundings, and what was said so far
 */
export function captured(place: ThreadPlace): Captured {
  let output = '';
  let messages = '';
  const surroundings: Surroundings = {
    output: {
      write: (text) => {
        output += text;
      },
      isTerminal: false,
    },
    messages: {
      write: (text) => {
        messages += text;
      },
      isTerminal: place.messagesOnTerminal,
    },
    environment: {},
    folder: place.folder,
    packageFolder: place.packageFolder,
    async *standardInput() {
      yield new TextEncoder().encode(place.standardInput ?? '');
    },
    terminal: undefined,
    today: () => '',
    endBySignal: () => {},
  };
  return { surroundings, said: () => ({ output, messages }) };
}
