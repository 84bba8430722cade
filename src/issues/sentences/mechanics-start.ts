import type { Sentences } from './sentence.js';

/** Sentences of the start of a pump set. */
export const mechanicsStartSentences: Sentences = {
  'mechanics.never-reaches-speed': (data) => ({
    message: `the motor does not bring the pump to its running speed: at ${data.reached} % of it no torque is left to gain more`,
    wanted: 'a motor that pulls harder than the water and the friction hold at every speed on the way',
    hint: 'check power and speed of the motor against flow, head and efficiency of the pump, and the limit of the starter or drive',
  }),
  'mechanics.changeover-not-reached': (data) => ({
    message: `on reduced voltage the motor comes to ${data.reached} % of running speed and no further, so the changeover is not reached`,
    wanted: 'a changeover at a speed that reduced voltage reaches',
    hint: 'give a lower changeover speed or a higher tap, or start with the discharge valve throttled',
  }),
};
