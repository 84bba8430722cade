import type { Sentences } from './sentence.js';

/** Sentences of the start of a pump set. */
export const mechanicsStartSentences = {
  'mechanics.never-reaches-speed': (data: { reached: number }) => ({
    message: `the motor does not bring the pump to its running speed: at ${data.reached} % of it no torque is left to gain more`,
    wanted: 'a motor that pulls harder than the water and the friction hold at every speed on the way',
    hint: 'check power and speed of the motor against flow, head and efficiency of the pump, and the limit of the starter or drive',
  }),
  'mechanics.no-field-speed': () => ({
    message:
      'the rated speed fits no induction motor of 2 to 8 poles on a 50 or 60 Hz supply, so its start is not worked out',
    wanted: 'the full-load speed of the nameplate, for example 1770 rpm',
    hint: 'where a drive runs the pump slower, give the speed of the motor here and the range under speeds',
  }),
  'mechanics.changeover-not-reached': (data: { reached: number }) => ({
    message: `on reduced voltage the motor comes to ${data.reached} % of running speed and no further, so the changeover is not reached`,
    wanted: 'a changeover at a speed that reduced voltage reaches',
    hint: 'give a lower changeover speed or a higher tap, or start with the discharge valve throttled',
  }),
} as const satisfies Sentences;
