import type { IssueData, Sentences } from '../sentence.js';
import { say, tell } from '../tell.js';

/** The file as a text: size, notation, depth. */
export const inputFileSentences = {
  'input.nothing': (data: IssueData) =>
    tell(data, 'the file holds nothing', { wanted: 'an installation', example: 'format: pipeborne/1' }),
  'input.not-text': (data: IssueData) =>
    tell(data, 'the file is no text', { wanted: 'YAML or JSON in UTF-8' }),
  'input.file-too-large': (data: { found: number; most: number }) =>
    tell(data, `the file has ${say(data, 'found')} characters`, {
      wanted: `at most ${say(data, 'most')} characters`,
    }),
  'input.too-deep': (data: { most: number }) =>
    tell(data, `the file nests more than ${say(data, 'most')} levels deep`, { wanted: 'fewer levels' }),
  'input.too-many-aliases': (data: { most: number }) =>
    tell(data, 'the file repeats its anchors too often', {
      wanted: `at most ${say(data, 'most')} repetitions`,
    }),
  'input.not-yaml': (data: { reason: string }) =>
    tell(data, `this is neither YAML nor JSON: ${say(data, 'reason')}`, {
      hint: 'text with a colon, a comma or a quotation mark in it may need quotation marks round it',
    }),
  'input.tab': (data: IssueData) =>
    tell(data, 'a tab stands where the line is indented', { wanted: 'blanks' }),
  'input.key-twice': (data: { key: string; first: number }) =>
    tell(data, `the key "${say(data, 'key')}" stands twice in its map, first on line ${say(data, 'first')}`, {
      wanted: 'every key once',
    }),
  'input.too-many-keys': (data: { found: number; most: number }) =>
    tell(data, `this map has ${say(data, 'found')} keys`, {
      wanted: `at most ${say(data, 'most')}; a description of one pump has some dozens`,
    }),
  'input.more-issues': (data: { count: number }) =>
    tell(data, `and ${say(data, 'count').replace(/\B(?=(\d{3})+$)/gu, ',')} more`, {
      wanted: 'those above mended first; then the others are told',
    }),
  'input.tag': (data: IssueData) => tell(data, 'tags are not read', { wanted: 'plain text, lists and maps' }),
  'input.steering-sign': (data: { sign: string }) =>
    tell(data, `this text holds the sign ${say(data, 'sign')}, which steers what shows it`, {
      wanted: 'signs that can be read',
      hint: 'it often comes with a copied text; type the text anew',
    }),
  'input.many-documents': (data: IssueData) =>
    tell(data, 'a second document starts here', { wanted: 'one pump in one file' }),
} satisfies Sentences;
