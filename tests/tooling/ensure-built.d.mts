/** Root of the project. */
export const root: string;
/** Built command line. */
export const builtCommand: string;
/** Builds dist/ when something it is made of is newer. */
export function ensureBuilt(): void;
