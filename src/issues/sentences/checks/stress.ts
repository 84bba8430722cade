import type { Sentences } from '../sentence.js';

/** Errors of the stress equations. */
export const stressSentences = {
  'mechanics.stress.not-a-tube': (data: { outsideDiameter: number; wall: number }) => ({
    message: `a pipe with outside diameter ${data.outsideDiameter} m and wall ${data.wall} m has no bore`,
    wanted: 'a wall greater than zero and thinner than half the outside diameter',
  }),
  'mechanics.stress.no-cycles': (data: { cycles: number }) => ({
    message: `the number of temperature cycles is ${data.cycles}`,
    wanted: 'a number above zero',
  }),
  'mechanics.stress.nothing-left-over': (data: { sustained: number; hot: number }) => ({
    message: `the sustained stress, ${data.sustained} Pa, is above the allowable, ${data.hot} Pa: nothing is left over`,
    wanted: 'a sustained stress within the allowable',
  }),
  'mechanics.stress.not-a-nozzle': (data: { outsideDiameter: number; insideDiameter: number }) => ({
    message: `a nozzle with outside diameter ${data.outsideDiameter} m and bore ${data.insideDiameter} m has no wall`,
    wanted: 'a bore smaller than the outside diameter',
  }),
} as const satisfies Sentences;
