import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lengthText } from '../../src/study/advise/written-length.js';
import { parseQuantity } from '../../src/units/index.js';

const INCH = 0.0254;

test.each([
  [3.5 * 12 * INCH, '14 ft', '3 ft 6 in'],
  [10 * 12 * INCH, '9 ft 6 in', '10 ft'],
  [9 * INCH, '1 ft', '9 in'],
  [18.5 * INCH, '3 in', '18 1/2 in'],
  [30 * INCH, `12'-6"`, `2'-6"`],
  [120 * INCH, `9'`, `10'-0"`],
  [1.25, '900 mm', '1250 mm'],
  [0.75, '2 m', '750 mm'],
  [2.75, '2 m', '2.75 m'],
  [1.5, '85 cm', '150 cm'],
])('%d m beside %s is %s', (metres, like, text) => {
  expect(lengthText(metres, like)).toBe(text);
});

test('whatever the notation, a length on the grid of the file reads back as itself', () => {
  const notations = ['1 ft', '3 in', `2'-3"`, '600 mm', '1.2 m', '40 cm'];
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 4000 }), fc.constantFrom(...notations), (count, like) => {
      const step = /m$/.test(like) ? 0.005 : INCH / 16;
      const read = parseQuantity(lengthText(count * step, like), 'length');
      expect(read.ok && Math.abs(read.value - count * step)).toBeLessThan(1e-9);
    }),
  );
});

test('a length that the notation cannot say is said in decimals, not rounded to a sixteenth', () => {
  const read = parseQuantity(lengthText(1, '3 ft'), 'length');
  expect(read.ok && Math.abs(read.value - 1)).toBeLessThan(1e-7);
});
