/** Environment that keep what is said, for tests that run the command line in their own process. */
import { fileURLToPath } from 'node:url';
import type { Environment, Terminal } from '../../src/cli/environment.js';
import { run } from '../../src/cli/run.js';

export interface Outcome {
  readonly status: number;
  readonly output: string;
  readonly messages: string;
}

export interface FakeOptions {
  readonly folder?: string;
  readonly standardInput?: string | Uint8Array;
  readonly terminal?: boolean;
  readonly environment?: Readonly<Record<string, string>>;
  /** A terminal to be asked at. */
  readonly dialogue?: Terminal;
}

/** Runs the command line with the given arguments. */
export async function runFake(args: readonly string[], options: FakeOptions = {}): Promise<Outcome> {
  const said = { output: '', messages: '' };
  const status = await run(args, fakeEnvironment(said, options));
  return { status, ...said };
}

export function fakeEnvironment(
  said: { output: string; messages: string },
  options: FakeOptions = {},
): Environment {
  const isTerminal = options.terminal ?? false;
  return {
    output: {
      write: (text) => {
        said.output += text;
      },
      isTerminal,
    },
    messages: {
      write: (text) => {
        said.messages += text;
      },
      isTerminal,
    },
    variables: options.environment ?? {},
    folder: options.folder ?? '/nowhere',
    packageFolder: fileURLToPath(new URL('../../', import.meta.url)),
    async *standardInput() {
      yield typeof options.standardInput === 'string' || options.standardInput === undefined
        ? new TextEncoder().encode(options.standardInput ?? '')
        : options.standardInput;
    },
    terminal: options.dialogue,
    today: () => '2026-01-15',
    endBySignal: (signal) => {
      said.messages += `[${signal}]`;
    },
  };
}
