import type { Sentences } from './sentence.js';

/** Errors of the stress equations. */
export const stressSentences = {
  'mechanics.stress.not-a-tube': (data) => ({
    message: `a pipe with outside diameter ${String(data.outsideDiameter)} m and wall ${String(data.wall)} m has no bore`,
    wanted: 'a wall greater than zero and thinner than half the outside diameter',
  }),
  'mechanics.stress.no-cycles': (data) => ({
    message: `the number of temperature cycles is ${String(data.cycles)}`,
    wanted: 'a number above zero',
  }),
  'mechanics.stress.nothing-left-over': (data) => ({
    message: `the sustained stress, ${String(data.sustained)} Pa, is above the allowable, ${String(data.hot)} Pa: nothing is left over`,
    wanted: 'a sustained stress within the allowable',
  }),
  'mechanics.stress.not-a-nozzle': (data) => ({
    message: `a nozzle with outside diameter ${String(data.outsideDiameter)} m and bore ${String(data.insideDiameter)} m has no wall`,
    wanted: 'a bore smaller than the outside diameter',
  }),
} as const satisfies Sentences;
