import type { Sentences } from './sentence.js';

/** Sentences of the model. */
export const modelSentences = {
  'model.bend-radius-too-small': (data: { bendRadius: number; meanRadius: number }) => ({
    message: `an elbow has a centre-line radius of ${data.bendRadius} m, less than the mean radius of its pipe, ${data.meanRadius} m`,
    wanted: 'a centre-line radius at least as large as the pipe radius',
    example: 'elbow: {turn: up, radius: long}',
  }),
  'model.turn-impossible': (data: { part: string }) => ({
    message: `${data.part} does not turn the pipe, or turns it straight back`,
    wanted: 'a direction other than the one the pipe already runs in, and not its opposite',
    example: 'elbow: up',
  }),
  'model.no-bore': (data: { outsideDiameter: number; wall: number }) => ({
    message: `a pipe with outside diameter ${data.outsideDiameter} m and wall ${data.wall} m has no bore`,
    wanted: 'a wall greater than zero and thinner than half the outside diameter',
  }),
  'model.line-missing': (data: { port: string }) => ({
    message: `no line starts at the pump ${data.port}`,
    wanted: 'one line from the suction and one from the discharge',
    example: '- {name: suction line, from: suction, walk: [...]}',
  }),
} as const satisfies Sentences;
