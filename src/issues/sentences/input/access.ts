import type { IssueData, Sentences } from '../sentence.js';
import { say, tell } from '../tell.js';

/** What is said of dimensions, the room, the lift and service spaces. */
export const inputAccessSentences = {
  'input.motor-foot-over-top': (data: { foot: string; top: string }) =>
    tell(data, `the underside of the motor, ${say(data, 'foot')}, is not below its top, ${say(data, 'top')}`),
  'input.spacer-in-casing': (data: { from: string; casing: string }) =>
    tell(
      data,
      `the window begins at ${say(data, 'from')}, below the top of the casing at ${say(data, 'casing')}`,
      { wanted: 'a window between the casing and the motor' },
    ),
  'input.spacer-in-motor': (data: { end: string; foot: string }) =>
    tell(
      data,
      `the window ends at ${say(data, 'end')}, above the underside of the motor at ${say(data, 'foot')}`,
      { wanted: 'a window between the casing and the motor' },
    ),
  'input.object-shape': (data: { name: string }) =>
    tell(data, `"${say(data, 'name')}" is neither a box nor a run`, {
      wanted: 'from and to for a box, or points and diameter for a run',
      example:
        'points: [{east: 0 ft, north: 3 ft, elevation: 11 ft}, {east: 6 ft, north: 3 ft, elevation: 11 ft}], diameter: 4 in',
    }),
  'input.sling-shape': (data: { legs: string }) =>
    tell(data, `the height of a sling of ${say(data, 'legs')} legs does not follow from what is given`, {
      wanted: 'either angle or length of the legs; for one leg its length',
      example: 'sling: {legs: 2, angle: 60 deg, spread: 12 in}',
    }),
  'input.sling-too-short': (data: { length: string; spread: string }) =>
    tell(
      data,
      `legs of ${say(data, 'length')} do not reach the hook over eyes that stand ${say(data, 'spread')} apart`,
    ),
  'input.sling-angle': (data: { found: string }) =>
    tell(data, `legs at ${say(data, 'found')} do not meet in a hook`, {
      wanted: 'the angle of the legs from the level, below 90 deg',
    }),
  'input.space-twice': (data: { purpose: string }) =>
    tell(data, `the space "${say(data, 'purpose')}" is given twice by the same owner`, {
      wanted: 'one entry by the manufacturer, one by the owner; the larger governs',
      example: '',
    }),
  'input.space-key-idle': (data: { key: string; purpose: string }) =>
    tell(data, `"${say(data, 'key')}" says nothing of the space "${say(data, 'purpose')}"`, {
      wanted: 'only keys that this purpose is described by',
      example: '',
    }),
  'input.space-unknown-part': (data: { found: string; words: readonly string[] }) =>
    tell(data, `no part of the lines is called "${say(data, 'found')}"`, {
      wanted: `one of ${say(data, 'words')}`,
    }),
  'input.space-not-level': (data: { purpose: string }) =>
    tell(data, `the space "${say(data, 'purpose')}" lies beside the pump, not above or below it`, {
      wanted: 'a level direction',
      example: 'west',
    }),
  'input.lever-along-stem': (data: IssueData) =>
    tell(data, 'a lever does not point along its stem', { wanted: 'a direction across the stem' }),
  'input.withdrawal-twice': (data: IssueData) =>
    tell(data, 'the height to draw the motor is given twice', {
      wanted: 'either here, or as withdrawal in the outline of the pump',
      example: '',
    }),
} satisfies Sentences;
