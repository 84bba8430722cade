import type { Sentence } from '../sentence.js';

/** An open item: what was found, how it is mended, and what it leads to if it is not. */
export const item =
  <Data>(message: (data: Data) => string, wanted: string, hint: string) =>
  (data: Data): Sentence => ({ message: message(data), wanted, hint });

/** Place of a finding. */
export const at = (data: { readonly at: string }) => data.at;
