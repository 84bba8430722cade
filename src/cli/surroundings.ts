/**
 * What the program may touch of the world, as one object, so that a test can hand in its own.
 */
import { fileURLToPath } from 'node:url';

/** Where text goes. */
export interface Outlet {
  readonly write: (text: string) => void;
  /** True when a person looks at it, false for a pipe or a file. */
  readonly isTerminal: boolean;
}

export interface Surroundings {
  /** Data: what was asked for. */
  readonly output: Outlet;
  /** Messages: errors, warnings, hints. */
  readonly messages: Outlet;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Folder that relative names start from. */
  readonly folder: string;
  /** Folder of the package, which holds `templates`. */
  readonly packageFolder: string;
  readonly standardInput: () => AsyncIterable<Uint8Array>;
  /** Has something done when the user interrupts, once; a second interrupt ends the run. Gives a way to forget it. */
  readonly onInterrupt?: (handle: () => void) => () => void;
}

/** The surroundings of the running process. */
export function processSurroundings(): Surroundings {
  const outlet = (stream: NodeJS.WriteStream): Outlet => ({
    write: (text) => void stream.write(text),
    isTerminal: stream.isTTY === true,
  });
  return {
    output: outlet(process.stdout),
    messages: outlet(process.stderr),
    environment: process.env,
    folder: process.cwd(),
    // The same two steps up from src/cli and from dist/cli.
    packageFolder: fileURLToPath(new URL('../../', import.meta.url)),
    standardInput: () => process.stdin,
    onInterrupt: (handle) => {
      process.once('SIGINT', handle);
      return () => void process.removeListener('SIGINT', handle);
    },
  };
}

/** Widest line printed; help and pictures keep to it everywhere, so that they can be pasted into a message. */
export const LINE_WIDTH = 80;

/**
 * Whether to colour: only for a person at a terminal that can, who has not asked for none.
 *
 * @param outlet - where the text goes
 * @param environment - `NO_COLOR` set to anything, or `TERM=dumb`, means none
 * @param asked - false when `--no-color` was given
 * @returns true when colour may be used
 */
export function mayColour(outlet: Outlet, environment: Surroundings['environment'], asked: boolean): boolean {
  const refused = (environment.NO_COLOR ?? '') !== '' || environment.TERM === 'dumb';
  return asked && outlet.isTerminal && !refused;
}
