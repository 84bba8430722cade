import type { Sentences } from '../sentence.js';

/** Reasons and advice of the checks on flange joints. */
export const flangeCheckSentences = {
  'checks.flange.one-side': (data: { unknown: string }) => ({
    message: `the flange of ${data.unknown} is not described: only the other side is judged`,
    wanted: `compare class and drilling of ${data.unknown} when ordering`,
  }),
  'checks.flange.not-described': (data: { unknown: string }) => ({
    message: `the flange of ${data.unknown} is not described, so the two faces are not compared`,
    wanted: `compare face, class and drilling of ${data.unknown} when ordering`,
  }),
  'checks.flange.no-rating': (data: { owner: string }) => ({
    message: `the flange of ${data.owner} has no pressure rating at this temperature`,
    wanted: 'give standard and class, or the pressure rating by temperature',
  }),
  'checks.flange.gasket-safe': () => ({
    message:
      'the gasket is not described: its reaction is taken at the outside of the pipe, which is the safe side',
  }),

  'checks.flange-equivalent-pressure.exceeds': (data: { at: string; condition: string }) => ({
    message: `moment and pull use up more of the rating of ${data.at} than the pressure leaves, worst when ${data.condition}`,
    wanted:
      'carry the weight beside the joint, or give the diameter of the gasket if it was taken on the safe side',
    hint: 'a joint that is opened by the pipe weeps; tightening harder is no cure on iron flanges',
  }),
  'checks.flange-equivalent-pressure.gasket-decides': (data: { at: string; condition: string }) => ({
    message: `whether ${data.at} stays tight depends on its gasket, which is not described; worst when ${data.condition}`,
    wanted: 'give the diameter on which the gasket pushes back, or carry the weight beside the joint',
    hint: 'taken at the outside of the pipe it is above the rating, taken at the bolts it is not',
  }),
  'checks.flange-equivalent-pressure.no-load': (data: { at: string }) => ({
    message: `the load on ${data.at} could not be read: no rigid part meets the joint`,
    wanted: 'describe the flanges of the joint as parts of the line',
  }),
  'checks.flange-equivalent-pressure.no-gasket': (data: { at: string }) => ({
    message: `neither the gasket nor the pipe at ${data.at} is known`,
    wanted: 'give the diameter on which the gasket pushes back',
  }),
  'checks.flange-equivalent-pressure.no-place': () => ({ message: 'no flange joint is described' }),

  'checks.flange-class.exceeds': (data: { owner: string; class: string; condition: string }) => ({
    message: `the flange of ${data.owner}, class ${data.class}, is rated for less than the pressure in the condition ${data.condition}`,
    wanted: 'take a higher class on both sides, or lower the pressure at this part',
    hint: 'never test a part above what its manufacturer allows; the engineer of record decides on the pressure',
  }),
  'checks.flange-class.no-place': () => ({ message: 'no flange joint is described' }),

  'checks.flange-drilling.exceeds': (data: { near?: string; far: string }) => ({
    message: `the bolt circles of ${data.near} and ${data.far} differ`,
    wanted: 'order both flanges to one drilling; do not enlarge bolt holes',
  }),
  'checks.flange-drilling.bolts': (data: { near?: string; far: string }) => ({
    message: `${data.near} and ${data.far} have different numbers of bolts`,
    wanted: 'order both flanges to one drilling',
  }),
  'checks.flange-drilling.no-drilling': (data: { near?: string; far: string }) => ({
    message: `the drilling of ${data.near} or ${data.far} is not known`,
    wanted: 'give standard and class, or bolt circle and number of bolts',
  }),
  'checks.flange-drilling.no-place': () => ({ message: 'there is no flange joint' }),

  'checks.raised-face-on-flat-iron.exceeds': (data: { at: string }) => ({
    message: `${data.at} bolts a raised face to flat cast iron, which can crack it`,
    wanted:
      'face the steel flange flat and use a full-face gasket, tightened in steps to the torque of the iron flange',
    hint: 'the manufacturer of the pump or valve decides on face and torque',
  }),
  'checks.raised-face-on-flat-iron.unknown': (data: { near?: string; far: string }) => ({
    message: `face or material of ${data.near} or ${data.far} is not known`,
    wanted: 'give the face of both flanges and say which is of cast iron',
  }),
  'checks.raised-face-on-flat-iron.no-place': () => ({ message: 'no flange may be of flat cast iron' }),
} as const satisfies Sentences;
