import type { IssueData, Sentences } from '../sentence.js';
import { say, tell } from '../tell.js';

/** What is said of panels and the disconnect. */
export const inputElectricalSentences = {
  'input.electrical-not-panel': (data: { kind: string }) =>
    tell(data, `working space is asked for in front of panels, and this is a ${say(data, 'kind')}`, {
      wanted: 'kind: panel, or no electrical entry',
      example: '',
    }),
  'input.electrical-of-run': (data: { name: string }) =>
    tell(data, `the panel "${say(data, 'name')}" is given as a run`, {
      wanted: 'from and to for the box round it',
      example: '',
    }),
  'input.panel-askew': (data: IssueData) =>
    tell(data, 'a panel is a box along the axes of the plan, and its front one of its four sides', {
      wanted: 'north, south, east or west',
      example: 'south',
    }),
  'input.unknown-panel': (data: { found: string; words: readonly string[] }) =>
    tell(data, `no panel of the room is called "${say(data, 'found')}"`, {
      wanted:
        say(data, 'words') === '' ? 'an object of kind panel in the room' : `one of ${say(data, 'words')}`,
      example: '',
    }),
  'input.disconnect-distance-twice': (data: { panel: string }) =>
    tell(data, `the distance of the disconnect follows from the place of "${say(data, 'panel')}"`, {
      wanted: 'either panel or distance',
      example: '',
    }),
} satisfies Sentences;
