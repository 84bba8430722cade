import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readDirection } from '../../src/input/read-direction.js';

const R = Math.SQRT1_2;

test.each([
  ['north', [0, 1, 0]],
  ['South', [0, -1, 0]],
  ['east', [1, 0, 0]],
  [' west ', [-1, 0, 0]],
  ['up', [0, 0, 1]],
  ['down', [0, 0, -1]],
  ['north-east', [R, R, 0]],
  ['southeast', [R, -R, 0]],
  ['south west', [-R, -R, 0]],
  ['bearing 0 deg', [0, 1, 0]],
  ['bearing 90 deg', [1, 0, 0]],
  ['bearing 180°', [0, -1, 0]],
  ['bearing 270 deg', [-1, 0, 0]],
] as const)('%s is exactly %j', (text, direction) => {
  expect(readDirection(text)).toEqual(direction);
});

test('bearings go clockwise from north, slopes up or down from level', () => {
  const close = (text: string, expected: readonly number[]) =>
    expect(
      Math.hypot(...expected.map((component, axis) => component - (readDirection(text)?.[axis] ?? 9))),
    ).toBeLessThan(1e-12);
  close('bearing 30 deg', [0.5, Math.sqrt(0.75), 0]);
  close('bearing 225 deg', [-R, -R, 0]);
  close('north falling 10 deg', [0, Math.cos(Math.PI / 18), -Math.sin(Math.PI / 18)]);
  close('bearing 30 deg rising 45 deg', [0.5 * R, Math.sqrt(0.75) * R, R]);
});

test.each([
  '',
  'upp',
  'left',
  'bearing',
  'bearing 30',
  'bearing north',
  'up rising 10 deg',
  'north rising 90 deg',
  'north rising -5 deg',
  'north rising',
  'constructor',
  'northnorth',
])('"%s" is no direction', (text) => {
  expect(readDirection(text)).toBeUndefined();
});

test('every direction has length one', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -720, max: 720 }),
      fc.integer({ min: 1, max: 89 }),
      fc.constantFrom('rising', 'falling'),
      (bearing, slope, way) => {
        const direction = readDirection(`bearing ${bearing} deg ${way} ${slope} deg`);
        expect(Math.hypot(...(direction ?? []))).toBeCloseTo(1, 12);
      },
    ),
  );
});
