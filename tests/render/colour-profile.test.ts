// The colour profile of the PDF, read back by its own format.
//
// Source: ICC.1:2004-10 (version 4.2), clauses 7.2, 7.3, 10.15 and 10.24; IEC 61966-2-1 for the curve and the primaries
// of sRGB, at D50 by the Bradford method. LittleCMS 2.14 turns colours by this profile and by its own sRGB into the
// same X Y Z to 3 parts in 10 000; that comparison was made by hand.
import { expect, test } from 'vitest';
import { srgbProfile } from '../../src/render/paint/colour-profile.js';

const profile = srgbProfile();
const view = new DataView(profile.buffer);
const text = (at: number, length = 4): string => String.fromCharCode(...profile.subarray(at, at + length));
const fixed = (at: number): number => view.getInt32(at) / 65536;
const tags = new Map(
  Array.from({ length: view.getUint32(128) }, (_, i) => {
    const entry = 132 + 12 * i;
    return [text(entry), { at: view.getUint32(entry + 4), size: view.getUint32(entry + 8) }] as const;
  }),
);
const at = (name: string): number => tags.get(name)?.at ?? Number.NaN;
const xyz = (name: string): readonly number[] => [0, 4, 8].map((step) => fixed(at(name) + 8 + step));

test('the head says what the profile is, and how long', () => {
  expect(view.getUint32(0)).toBe(profile.length);
  expect(profile.length).toBeLessThan(600);
  expect([profile[8], text(12), text(16), text(20), text(36)]).toEqual([4, 'mntr', 'RGB ', 'XYZ ', 'acsp']);
});

test('every part a display profile must have is there, inside the file and on a boundary of four bytes', () => {
  expect([...tags.keys()].sort()).toEqual(
    ['bTRC', 'bXYZ', 'chad', 'cprt', 'desc', 'gTRC', 'gXYZ', 'rTRC', 'rXYZ', 'wtpt'].sort(),
  );
  for (const { at: start, size } of tags.values()) {
    expect(start % 4).toBe(0);
    expect(start + size).toBeLessThanOrEqual(profile.length);
  }
});

test('red, green and blue together are the white of the profile', () => {
  const white = xyz('wtpt');
  [0, 1, 2].forEach((i) => {
    const sum = ['rXYZ', 'gXYZ', 'bXYZ'].reduce((all, name) => all + (xyz(name)[i] ?? 0), 0);
    expect(Math.abs(sum - (white[i] ?? 0))).toBeLessThan(3e-4);
  });
  expect(white.map((value) => value.toFixed(4))).toEqual(['0.9642', '1.0000', '0.8249']);
});

test('the curve is that of sRGB: its two parts meet, and half the signal is 0.214 of the light', () => {
  const curve = at('rTRC');
  expect([text(curve), view.getUint16(curve + 8)]).toEqual(['para', 3]);
  const [g = 0, a = 0, b = 0, c = 0, d = 0] = [0, 1, 2, 3, 4].map((i) => fixed(curve + 12 + 4 * i));
  const light = (signal: number): number => (signal >= d ? (a * signal + b) ** g : c * signal);
  expect(light(0.5)).toBeCloseTo(0.21404, 4);
  expect(light(1)).toBeCloseTo(1, 4);
  expect((a * d + b) ** g).toBeCloseTo(c * d, 5);
});
