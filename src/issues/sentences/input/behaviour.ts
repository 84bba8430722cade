import type { IssueData, Sentences } from '../sentence.js';
import { say, tell } from '../tell.js';

/** What one field says against another: start of the motor, play and movement, sideways load. */
export const inputBehaviourSentences = {
  'input.breakdown-below-rated': (data: { breakdown: string; rated: string }) =>
    tell(
      data,
      `the greatest torque of the motor, ${say(data, 'breakdown')}, is not above its rated torque, ${say(data, 'rated')} (power over speed)`,
      { wanted: 'the breakdown torque on full voltage, above the rated torque' },
    ),
  'input.locked-rotor-over-breakdown': (data: { lockedRotor: string; breakdown: string }) =>
    tell(
      data,
      `the torque at standstill, ${say(data, 'lockedRotor')}, is above the greatest torque, ${say(data, 'breakdown')}`,
      { wanted: 'locked-rotor-torque at or below breakdown-torque' },
    ),
  'input.current-limit-idle': (data: { limit: string; current: string }) =>
    tell(
      data,
      `a limit of ${say(data, 'limit')} holds nothing back from a motor that draws ${say(data, 'current')} at standstill`,
      { wanted: 'a current-limit below the locked-rotor current' },
    ),
  'input.speeds-without-drive': (data: { start: string }) =>
    tell(data, `speeds belong to a variable-speed drive, and the start is: ${say(data, 'start')}`, {
      wanted: 'start by a variable-speed drive, or no speeds',
      example: 'start: {variable-speed drive: {torque-limit: 110 %, ramp: 20 s}}',
    }),
  'input.speeds-out-of-order': (data: { lowest: string; highest: string }) =>
    tell(data, `the lowest speed, ${say(data, 'lowest')}, is above the highest, ${say(data, 'highest')}`, {
      wanted: 'lowest at or below highest',
    }),
  'input.structure-not-resting': (data: { mount: string }) =>
    tell(data, `a pump that is ${say(data, 'mount')} has no single stiffness of the floor under it`, {
      wanted: 'mount resting, or no structure; a bolted base has anchors',
      example: 'mount: resting',
    }),
  'input.bracket-twice': (data: IssueData) =>
    tell(data, 'the bracket of the motor is said twice', {
      wanted: 'either the frequency of the motor on it, or its rotation stiffness',
      example: 'bracket: {frequency: 75 Hz}',
    }),
  'input.anchors-not-bolted': (data: { mount: string }) =>
    tell(data, `a pump that is ${say(data, 'mount')} has no anchors under its base`, {
      wanted: 'mount bolted, or no anchors; a resting base has structure',
      example: 'mount: bolted',
    }),
  'input.friction-not-resting': (data: { mount: string }) =>
    tell(data, `a pump that is ${say(data, 'mount')} does not slide on its base`, {
      wanted: 'mount resting, or no friction',
      example: 'mount: resting',
    }),
  'input.rod-gap-not-gapped': (data: { rods: string }) =>
    tell(data, `rods that are ${say(data, 'rods')} have no gap`, {
      wanted: 'rods gapped, or no rod-gap',
      example: 'rods: gapped',
    }),
  'input.free-rotation-of-rigid': (data: IssueData) =>
    tell(data, 'a rigid joint has no free rotation', {
      wanted: 'type flexible, or no free-rotation',
      example: 'type: flexible',
    }),
  'input.out-of-place-unfelt': (data: { mark: string; kind: string }) =>
    tell(
      data,
      `${say(data, 'mark')} does not hold the pipe in the direction it is out of place: a ${say(data, 'kind')} moved so moves nothing`,
      { wanted: 'a movement along a direction it holds' },
    ),
  'input.lateral-twice': (data: IssueData) =>
    tell(data, 'the sideways load is said twice', {
      wanted: 'either coefficient with its source, or asce-7',
      example: '',
    }),
  'input.source-of-formula': (data: IssueData) =>
    tell(data, 'the formula is its own source', {
      wanted: 'a source only beside a coefficient',
      example: '',
    }),
  'input.not-flanged': (data: { key: string; ends: string }) =>
    tell(data, `${say(data, 'key')} speaks of a flange, and the ends are ${say(data, 'ends')}`, {
      wanted: `ends: flanged, or no ${say(data, 'key')}`,
      example: '',
    }),
  'input.rating-not-rising': (data: { found: string; before: string }) =>
    tell(
      data,
      `${say(data, 'found')} does not follow ${say(data, 'before')}: a rating rises in temperature`,
      {
        wanted: 'the rows from the lowest temperature to the highest, each once',
        example:
          'rating: [{temperature: 150 degF, pressure: 250 psi}, {temperature: 200 degF, pressure: 235 psi}]',
      },
    ),
  'input.occasional-over-code': (data: { found: string; code: string; most: string }) =>
    tell(data, `a factor of ${say(data, 'found')} is more than ${say(data, 'code')} allows`, {
      wanted: `at most ${say(data, 'most')}`,
    }),
} satisfies Sentences;
