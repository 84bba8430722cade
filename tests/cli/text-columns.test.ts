import fc from 'fast-check';
import { expect, test } from 'vitest';
import { column, columns, wrapped } from '../../src/cli/terminal/text-columns.js';

test('a column is filled on the right, or on the left for a negative width', () => {
  expect(column('rod', 5)).toBe('rod  ');
  expect(column('rod', -5)).toBe('  rod');
});

test('what does not fit shows that it was cut', () => {
  expect(column('spring hanger', 8)).toBe('spring …');
});

test('a row has one blank between its columns', () => {
  expect(columns(['H1', '12'], [3, -4])).toBe('H1    12');
});

test('a column has its width whatever the text', () => {
  fc.assert(
    fc.property(
      fc.string({ unit: fc.constantFrom('a', ' ', 'é') }),
      fc.integer({ min: 2, max: 30 }),
      (text, width) => {
        expect(column(text, width)).toHaveLength(width);
        expect(column(text, -width)).toHaveLength(width);
      },
    ),
  );
});

test('a paragraph keeps its words and its width, and a long word stands alone', () => {
  expect(wrapped('one two three', 7)).toEqual(['one two', 'three']);
  expect(wrapped('a plant/boiler-room/pump.yaml b', 10)).toEqual(['a', 'plant/boiler-room/pump.yaml', 'b']);
});
