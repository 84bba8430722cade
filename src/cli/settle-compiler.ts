/** How eagerly the engine of the language compiles: a setting of the process, so it is made where the process starts. */
import { setFlagsFromString } from 'node:v8';

/**
 * Lets the optimising compiler wait longer. One file is worked out in less time than it takes to optimise all that
 * is run for it: with the setting of the engine as it comes, more than half of the processor time goes to the compiler.
 * What runs long is optimised all the same, a moment later. Results do not depend on it.
 *
 * @param engine - version of the engine, as the process gives it
 */
export function settleCompiler(engine: string): void {
  // An engine without the setting would say so to the user, so it is made only where it is known to be there.
  const major = Number.parseInt(engine, 10);
  if (major >= OLDEST && major <= NEWEST) setFlagsFromString(`--interrupt-budget=${PATIENCE}`);
}

/** Engines that have the setting. */
const OLDEST = 11;
const NEWEST = 11;

/** Bytes of code run before a function is looked at, about four times what the engine has by itself. */
const PATIENCE = 600_000;
