/**
 * What the program may touch of the world, as one object, so that a test can hand in its own.
 */
import type { Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';

/** Where text goes. */
export interface Outlet {
  readonly write: (text: string) => void;
  /** True when a person looks at it, false for a pipe or a file. */
  readonly isTerminal: boolean;
}

/** A terminal a person can be asked at. */
export interface Terminal {
  readonly input: Readable;
  readonly output: Writable;
}

export interface Environment {
  /** Data: what was asked for. */
  readonly output: Outlet;
  /** Messages: errors, warnings, hints. */
  readonly messages: Outlet;
  readonly variables: Readonly<Record<string, string | undefined>>;
  /** Folder that relative names start from. */
  readonly folder: string;
  /** Folder of the package, which holds `templates`. */
  readonly packageFolder: string;
  readonly standardInput: () => AsyncIterable<Uint8Array>;
  /** Has something done when the user interrupts, once; a second interrupt ends the run. Gives a way to forget it. */
  readonly onInterrupt?: (handle: () => void) => () => void;
  /** Where a person can be asked; undefined where either way leads elsewhere. Questions are messages, not data. */
  readonly terminal: Terminal | undefined;
  /** Today, as ISO 8601 writes it. Only what is begun new asks for it: a review prints the date of its input. */
  readonly today: () => string;
  /** Ends the process as the signal would have. */
  readonly endBySignal: (signal: 'SIGINT') => void;
}

/** Colours, home and a clean screen, which are the program's own; or any other sign that steers. */
const STEERING = new RegExp(
  `(${String.fromCharCode(27)}\\[(?:[0-9;]*m|H|[23]J))|(?![\\n\\t])[\\p{Cc}\\p{Bidi_Control}]`,
  'gu',
);

/**
 * Text for a terminal: names of files may hold any sign. What the program itself says by control signs is colour and a
 * clean screen; everything else that steers a terminal is shown as a sign that cannot be read.
 *
 * @param text - what is to be written
 * @returns the same without what could draw, move or answer
 */
export function harmless(text: string): string {
  return text.replace(STEERING, (_, own) => own ?? '\uFFFD');
}

/** The environment of the running process. */
export function processEnvironment(): Environment {
  const outlet = (stream: NodeJS.WriteStream): Outlet => ({
    write: (text) => void stream.write(stream.isTTY === true ? harmless(text) : text),
    isTerminal: stream.isTTY === true,
  });
  return {
    output: outlet(process.stdout),
    messages: outlet(process.stderr),
    variables: process.env,
    folder: process.cwd(),
    // The same two steps up from src/cli and from dist/cli.
    packageFolder: fileURLToPath(new URL('../../', import.meta.url)),
    standardInput: () => process.stdin,
    onInterrupt: (handle) => {
      process.once('SIGINT', handle);
      // Nobody watches any longer who has gone away.
      process.stdout.once('error', handle);
      return () => {
        process.removeListener('SIGINT', handle);
        process.stdout.removeListener('error', handle);
      };
    },
    // Opened only when someone is to be asked.
    get terminal() {
      const both = process.stdin.isTTY === true && process.stderr.isTTY === true;
      return both ? { input: process.stdin, output: process.stderr } : undefined;
    },
    today: () => dayOf(new Date()),
    endBySignal: (signal) => void process.kill(process.pid, signal),
  };
}

function dayOf(date: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** Widest line printed; help and pictures keep to it everywhere, so that they can be pasted into a message. */
export const LINE_WIDTH = 80;

/**
 * Whether to colour: only for a person at a terminal that can, who has not asked for none.
 *
 * @param outlet - where the text goes
 * @param variables - `NO_COLOR` set to anything, or `TERM=dumb`, means none
 * @param asked - false when `--no-color` was given
 * @returns true when colour may be used
 */
export function mayColour(outlet: Outlet, variables: Environment['variables'], asked: boolean): boolean {
  const refused = (variables.NO_COLOR ?? '') !== '' || variables.TERM === 'dumb';
  return asked && outlet.isTerminal && !refused;
}
