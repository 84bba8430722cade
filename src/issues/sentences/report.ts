import type { Sentences } from './sentence.js';

/** What can go wrong while a review is composed. */
export const reportSentences: Sentences = {
  'report.unknown-reader': (data) => ({
    message: `there is no review for "${data.found}"`,
    wanted: `one of ${list(data.available)}`,
  }),
  'report.no-condition': () => ({
    message: 'the frame was solved in no condition, so there is nothing to report',
    wanted: 'a response with at least the condition "filled"',
  }),
  'report.not-finite': (data) => ({
    message: `the results hold something that is no number at ${data.path}`,
    wanted: 'finite numbers only; a results file cannot say anything else',
    hint: 'this is a fault of the program or of a frame written by hand, not of the input file',
  }),
};

function list(value: unknown): string {
  return Array.isArray(value) ? value.join(', ') : String(value);
}
