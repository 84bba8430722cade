import type { Sentences } from '../sentence.js';

/** What stands in the way, where something does, and which way it would have to go, where it can. */
type InTheWay = { readonly obstacle?: string; readonly way?: string };

const AUTHORITY = 'the authority having jurisdiction decides';
const what = (data: InTheWay): string => data.obstacle ?? 'something';
const remedy = (data: InTheWay, otherwise: string): string =>
  data.way === undefined ? otherwise : `move ${what(data)} ${data.way}, or ${otherwise}`;

/** Reasons, advice and remarks of the checks of panels and the disconnect. */
export const electricalCheckSentences = {
  'checks.electrical-space.exceeds': (data: InTheWay & { at: string }) => ({
    message: `${what(data)} leaves too little room to work in front of ${data.at}`,
    wanted: remedy(data, 'move the panel or turn its front to where there is room'),
    hint: AUTHORITY,
  }),
  'checks.electrical-space.blocked': (data: InTheWay & { at: string }) => ({
    message: `${what(data)} stands right in front of ${data.at}`,
    wanted: remedy(data, 'move the panel or turn its front to where there is room'),
    hint: AUTHORITY,
  }),
  'checks.electrical-space.free': (data: InTheWay & { row: string }) => ({
    message: `up to ${what(data)} it is free; depth of the row for ${data.row}`,
  }),
  'checks.electrical-space.open': (data: { row: string }) => ({
    message: `nothing described stands in front of it; depth of the row for ${data.row}`,
  }),
  'checks.electrical-space.not-described': (data: { at: string }) => ({
    message: `the file does not say where the front of ${data.at} is, nor its voltage`,
    wanted: 'give the panel electrical: front, voltage-to-ground and opposite',
    hint: 'the depth in front of it goes by all three',
  }),
  'checks.electrical-space.no-voltage': (data: { at: string }) => ({
    message: `the voltage to ground of ${data.at} is not given`,
    wanted: 'give voltage-to-ground: 277 V on a 480 V wye, 120 V on a 208 V wye',
  }),
  'checks.electrical-space.no-floor': () => ({
    message: 'the room has no floor in the file, and the space stands on it',
    wanted: 'give the floor of the room',
  }),
  'checks.electrical-space.beyond-table': (data: { at: string }) => ({
    message: `the voltage of ${data.at} is above the last row of the table`,
    wanted: 'ask the authority having jurisdiction',
  }),
  'checks.electrical-space.no-opposite': (data: { at: string }) => ({
    message: `the depth would do for some things that may face ${data.at}, and not for others`,
    wanted: 'say what faces it: opposite: nothing, grounded or live',
    hint: 'concrete, brick and tile count as grounded',
  }),
  'checks.electrical-space.nothing-opposite': (data: { at: string }) => ({
    message: `something faces ${data.at} by the file, and it is not among the objects of the room`,
    wanted: 'give the wall or the panel opposite as an object of the room, or say opposite: nothing',
  }),
  'checks.electrical-space.no-place': () => ({ message: 'no panel is described' }),

  'checks.piping-above-panel.exceeds': (data: InTheWay & { at: string }) => ({
    message: `${what(data)} crosses the space above ${data.at}`,
    wanted: remedy(data, 'move the panel'),
    hint: `what drips from it falls into the panel; ${AUTHORITY}`,
  }),
  'checks.piping-above-panel.free': () => ({ message: 'no pipe or duct that is described crosses it' }),
  'checks.piping-above-panel.to-structure': () => ({ message: 'the panel reaches the structure' }),
  'checks.piping-above-panel.no-place': () => ({ message: 'no panel is described' }),

  'checks.disconnect-in-sight.exceeds': () => ({
    message: 'the disconnect stands farther from the motor than counts as in sight',
    wanted: 'put a disconnect that can be locked open beside the pump',
    hint: AUTHORITY,
  }),
  'checks.disconnect-in-sight.hidden': () => ({
    message: 'the disconnect is not seen from the motor, and cannot be locked open',
    wanted: 'put a disconnect that can be locked open in sight of the pump',
    hint: AUTHORITY,
  }),
  'checks.disconnect-in-sight.lockable': () => ({
    message: 'the disconnect is out of sight and can be locked open: some codes allow that under conditions',
    wanted: 'ask the authority having jurisdiction, or put a disconnect in sight of the pump',
  }),
  'checks.disconnect-in-sight.sight-unknown': () => ({
    message: 'the file does not say whether the disconnect is seen from the motor',
    wanted: 'say so: pump disconnect, in-sight: yes or no',
  }),
  'checks.disconnect-in-sight.no-distance': () => ({
    message: 'the file does not say where the disconnect is',
    wanted: 'give its distance from the motor, or the name of the panel that it is',
  }),
  'checks.disconnect-in-sight.unknown': () => ({
    message: 'the file has no disconnect of the motor',
    wanted:
      'give pump disconnect: where it is, whether it is seen from the motor, whether it can be locked open',
    hint: 'find it on site before anybody works on the pump',
  }),
  'checks.disconnect-in-sight.near': () => ({ message: 'it is near enough to count as in sight' }),
  'checks.disconnect-in-sight.no-place': () => ({ message: 'there is no motor' }),
} as const satisfies Sentences;
