/** Environment for work in a thread: what is said is kept, and shown by the thread that asked. */
import type { Environment } from '../environment.js';

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
  readonly environment: Environment;
  readonly said: () => { readonly output: string; readonly messages: string };
}

/**
 * Environment that keep what is said.
 *
 * @param place - what the thread is told
 * @returns environment, and what was said so far
 */
export function captured(place: ThreadPlace): Captured {
  let output = '';
  let messages = '';
  const environment: Environment = {
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
    variables: {},
    folder: place.folder,
    packageFolder: place.packageFolder,
    async *standardInput() {
      yield new TextEncoder().encode(place.standardInput ?? '');
    },
    terminal: undefined,
    today: () => '',
    endBySignal: () => {},
  };
  return { environment, said: () => ({ output, messages }) };
}
