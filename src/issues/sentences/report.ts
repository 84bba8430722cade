import type { Sentences } from './sentence.js';

/** What can go wrong while a review is composed. */
export const reportSentences = {
  'report.results-too-large': ({ file, found, most }: { file: string; found: number; most: number }) => ({
    message: `${file} has ${found} signs`,
    wanted: `the results of one review, at most ${most}`,
  }),
  'report.results-not-json': ({ file, reason }: { file: string; reason: string }) => ({
    message: `${file} cannot be read as results: ${reason}`,
    wanted: 'a whole results file',
    example: 'pipeborne review pump.yaml --results pump.json',
  }),
  'report.results-format': ({ file, found }: { file: string; found: string }) => ({
    message: `${file} says that its format is "${found}"`,
    wanted: 'pipeborne-results/1',
    hint: 'make the results again with this version',
  }),
  'report.results-shape': ({ file, reason }: { file: string; reason: string }) => ({
    message: `${file} is not as a review writes it: ${reason}`,
    wanted: 'a results file that was not changed',
    hint: 'make the results again with this version',
  }),
  'report.unknown-reader': (data: { found: string; available: readonly string[] }) => ({
    message: `there is no review for "${data.found}"`,
    wanted: `one of ${list(data.available)}`,
  }),
  'report.no-condition': () => ({
    message: 'the frame was solved in no condition, so there is nothing to report',
    wanted: 'a response with at least the condition "filled"',
  }),
  'report.not-finite': (data: { path: string }) => ({
    message: `the results hold something that is no number at ${data.path}`,
    wanted: 'finite numbers only; a results file cannot say anything else',
    hint: 'this is a fault of the program or of a frame written by hand, not of the input file',
  }),
} as const satisfies Sentences;

function list(value: unknown): string {
  return Array.isArray(value) ? value.join(', ') : String(value);
}
