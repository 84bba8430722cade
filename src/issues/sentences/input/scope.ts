import type { IssueData, Sentences } from '../sentence.js';
import { say, tell } from '../tell.js';

/** What is outside the review altogether, and why: nothing is worked out for it. */
export const inputScopeSentences = {
  'input.scope-fire-protection': (data: IssueData) =>
    tell(data, 'fire pumps are not reviewed here: their standard rules supports, valves and power', {
      wanted: 'a pump for building services or for process',
      example: 'duty: building services',
      hint: 'the fire-pump standard and the authority having jurisdiction govern',
    }),
  'input.scope-hazardous': (data: { hazards: readonly string[] }) =>
    tell(data, `a liquid that is ${say(data, 'hazards')} is not reviewed here: a leak would harm people`, {
      wanted: 'water or a mixture of water and glycol without hazards',
      example: 'hazards: none',
      hint: 'lines with dangerous contents belong to the process codes and to their licensed designers',
    }),
  'input.scope-horizontal': (data: IssueData) =>
    tell(
      data,
      'a level shaft is not reviewed here: weights, lifting and the seal change are those of another pump',
      {
        wanted: 'a pump with an upright shaft and its motor on top',
        example: 'shaft: vertical',
      },
    ),
  'input.scope-base-mounted': (data: IssueData) =>
    tell(
      data,
      'a pump on a base with its motor beside it is not reviewed here: its base carries it and its pipe does not',
      {
        wanted: 'split-coupled or close-coupled, with the motor above the casing',
        example: 'build: split-coupled',
      },
    ),
  'input.fire-in-name': (data: { name: string }) =>
    tell(data, `the service is called "${say(data, 'name')}": a fire pump is not reviewed here`, {
      wanted: 'duty: building services or duty: process where it is none',
      example: 'duty: building services',
    }),
} satisfies Sentences;
