import type { Sentences } from '../sentence.js';

/** Reasons and advice of the checks on start and vibration. */
export const motionCheckSentences = {
  'checks.frequency-margin.exceeds': (data: {
    frequency: string;
    away: string;
    at: string;
    exciting: string;
  }) => ({
    message: `a vibration of the pump at ${data.frequency} Hz lies ${data.away} % from ${data.at}, ${data.exciting} Hz`,
    wanted:
      'brace the motor in the direction that moves, or carry the pump on a stand or nearer hangers, and review again',
    hint: 'knock on the running-speed direction of the installed motor and measure before anything is changed; a brace must not pull the flanges',
  }),
  'checks.frequency-margin.settle-on-site': (data: {
    at: string;
    turnedBy: string;
    path: string;
    say: string;
  }) => ({
    message: `a vibration of the pump may come nearer to ${data.at} than the margin; it turns on: ${data.turnedBy}`,
    wanted:
      'settle it before running: with the pump stopped and full, knock on the motor top along the discharge and across it, and read both frequencies',
    hint: `or state it, at ${data.path}: ${data.say}`,
  }),
  'checks.frequency-margin.no-margin': (data: {
    at: string;
    exciting: number;
    frequency: number;
    away: number;
  }) => ({
    message: `the vibration of the pump nearest to ${data.at}, ${data.exciting} Hz, is at ${data.frequency} Hz, ${data.away} % away, and no margin is given`,
    wanted:
      'give the margin that the specification or the manufacturer asks for under limits, frequency-margin',
    hint: 'no binding figure for pumps carried by their pipe is published; a tenth to a quarter is customary',
  }),
  'checks.frequency-margin.no-margin-range': () => ({
    message:
      'the drive has a range of speeds, and no margin between them and the natural frequencies is given',
    wanted:
      'give the margin that the specification or the manufacturer asks for under limits, frequency-margin',
    hint: 'the frequencies are listed; a tenth to a quarter is customary',
  }),
  'checks.frequency-margin.no-speeds': () => ({
    message: 'the pump runs on a drive, and its lowest and highest speeds are not given',
    wanted: 'give the speeds the drive may run the pump at',
  }),
  'checks.frequency-margin.lock-out': (data: { at: string; bands: string }) => ({
    message: `${data.at}: a vibration of the pump lies within the margin at ${data.bands}`,
    wanted: `have the drive skip ${data.bands}, and confirm it on site`,
    hint: 'set a ramp that passes these speeds quickly; stiffening the pump moves them',
  }),
  'checks.frequency-margin.lock-out-range': (data: { at: string; bands: string; widest: string }) => ({
    message: `${data.at}: a vibration of the pump lies within the margin at ${data.bands}; with what nobody stated anywhere in its range, at ${data.widest}`,
    wanted: `knock on the motor with the pump stopped and full before running, and have the drive skip the speeds about what is read; until then skip ${data.widest}`,
    hint: 'set a ramp that passes these speeds quickly; stiffening the pump moves them',
  }),
  'checks.frequency-margin.no-speed-left': (data: { at: string }) => ({
    message: `${data.at}: at every speed a vibration of the pump lies within the margin`,
    wanted: 'stiffen or brace the pump and review again; there is no speed left to run at',
  }),
  'checks.frequency-margin.beyond': (data: { at: string; exciting: number; known: number }) => ({
    message: `${data.at} reaches ${data.exciting} Hz, and natural frequencies are known up to ${data.known} Hz`,
    wanted: 'a measurement on the installed pump, where this matters',
  }),
  'checks.frequency-margin.none-near': (data: { at: string; exciting: number }) => ({
    message: `no vibration moves the pump near ${data.at}, ${data.exciting} Hz`,
  }),
  'checks.frequency-margin.no-place': () => ({ message: 'natural frequencies were not worked out' }),

  'checks.start-movement.exceeds': (data: { condition: string }) => ({
    message: `the motor top moves farther at start than allowed, worst in the condition ${data.condition}`,
    wanted: 'hold the lines against twist on both sides of the pump, or start the motor more gently',
    hint: 'a pair of guides or a stand takes the twist; conduit and gauge lines need slack until then',
  }),
  'checks.start-movement.no-limit': () => ({
    message: 'the movement of the motor top at start is worked out, but no limit is given',
    wanted:
      'give the largest movement the conduit and what stands beside the motor allow, under limits, start-movement',
  }),
  'checks.start-movement.not-solved': () => ({
    message: 'the lines find no steady state under the twist of the start',
    wanted: 'look for supports that let go when the pump twists, and hold the lines against it',
  }),
  'checks.start-movement.no-place': () => ({ message: 'the start was not worked out' }),
} as const satisfies Sentences;
