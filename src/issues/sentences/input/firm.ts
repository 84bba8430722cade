import type { Sentences } from '../sentence.js';
import { say, tell } from '../tell.js';

/** A firm's own style: letterhead, headings, order of sections. */
export const inputFirmSentences = {
  'input.unknown-section': (data: { found: string; sections: readonly string[] }) =>
    tell(data, `there is no section "${say(data, 'found')}"`, {
      wanted: `one of ${say(data, 'sections')}`,
      example: '',
    }),
  'input.section-twice': (data: { section: string }) =>
    tell(data, `the section "${say(data, 'section')}" stands twice in this outline`, {
      wanted: 'each section once',
      example: '',
    }),
  'input.section-kept': (data: { missing: readonly string[] }) =>
    tell(data, `this outline leaves out ${say(data, 'missing')}`, {
      wanted: 'an outline with the verdict, the assumptions and the cautions, in any place',
      hint: 'who reads a review must find what it says, what it rests on and what can hurt someone',
    }),
} satisfies Sentences;
