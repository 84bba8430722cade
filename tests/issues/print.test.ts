import { expect, test } from 'vitest';
import { placeText, printIssue } from '../../src/issues/print.js';

const unknownKey = {
  code: 'input.unknown-key',
  severity: 'error',
  data: { key: 'trun', known: ['turn', 'radius'], nearest: 'turn' },
} as const;

test('an issue prints its sentence, its place, what is wanted and the near miss', () => {
  const place = { file: 'pool.yaml', line: 41, column: 19, path: 'piping.lines[0].walk[2].elbow.trun' };
  expect(printIssue({ ...unknownKey, place })).toEqual([
    'error[input.unknown-key]: "trun" is not known here',
    '  at pool.yaml:41:19 piping.lines[0].walk[2].elbow.trun',
    '  wanted: one of turn, radius',
    '  hint: did you mean "turn"?',
  ]);
});

test('a place without a file says so', () => {
  expect(placeText({ line: 3, column: 1, path: '' })).toBe('line 3:1');
});

test('control signs of a file never reach the terminal', () => {
  const [line] = printIssue({ ...unknownKey, data: { key: 'a\u001b[31m\nb\u202e', known: [] } });
  expect(line).toBe('error[input.unknown-key]: "a [31m b " is not known here');
});

test('long lists of words are cut', () => {
  const words = Array.from({ length: 60 }, (_, index) => `word ${index}`);
  const wanted = printIssue({
    code: 'input.not-one-of',
    severity: 'error',
    data: { found: '"x"', words },
  })[1];
  expect(wanted).toMatch(/word 39 …$/);
});
