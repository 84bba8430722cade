import { expect, test } from 'vitest';
import { dimensions, formatNumber, formatQuantity, parseQuantity, unitLabel } from '../../src/units/index.js';

const si = (text: string, dimension: Parameters<typeof parseQuantity>[1]): number => {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new Error(text);
  return parsed.value;
};

test.each([
  ['1243 lb', 'force', 'us', '1,240 lb'],
  ['84.31 psi', 'pressure', 'us', '84.3 psi'],
  ['180 degF', 'temperature', 'us', '180 °F'],
  ['70 degF', 'temperature', 'si', '21.1 °C'],
  ['-40 degF', 'temperature', 'us', '−40 °F'],
  ['5523 N', 'force', 'si', '5.52 kN'],
  ['552 N', 'force', 'si', '552 N'],
  ['318 mm', 'length', 'si', '318 mm'],
  ['12.5 m', 'length', 'si', '12.5 m'],
  ['12345 kg', 'mass', 'si', '12\u202f300 kg'],
  ['700 ft.lbf', 'moment', 'us', '700 ft·lb'],
  ['15000 psi', 'stress', 'us', '15,000 psi'],
  ['15000 psi', 'stress', 'si', '103 MPa'],
  ['620 gpm', 'flow', 'us', '620 gpm'],
  ['620 gpm', 'flow', 'si', '141 m³/h'],
  ['1770 rpm', 'speed', 'si', '1\u202f770 rpm'],
  ['30 %', 'ratio', 'us', '30%'],
  ['6.7e-6 1/degF', 'expansion', 'us', '6.7 × 10⁻⁶ 1/°F'],
  ['62.4 lb/ft3', 'density', 'us', '62.4 lb/ft³'],
] as const)('%s of %s in %s', (text, dimension, system, printed) => {
  expect(formatQuantity(si(text, dimension), dimension, system)).toBe(printed);
});

test.each([
  [`12'-6 1/2"`, `12'-6 1/2"`],
  ['6 in', '6"'],
  ['1/2 in', '1/2"'],
  ['11.99 in', `1'-0"`],
  ['-2 ft 3 in', `−2'-3"`],
  ['0 in', '0"'],
  ['0.01 in', '0"'],
  ['5/16 in', '5/16"'],
])('%s in feet, inches and sixteenths is %s', (text, printed) => {
  expect(formatQuantity(si(text, 'length'), 'length', 'us', { feetInches: true })).toBe(printed);
});

test('feet and inches are not asked of SI', () => {
  expect(formatQuantity(0.318, 'length', 'si', { feetInches: true })).toBe('318 mm');
});

test('negative zero and rounding noise print as zero', () => {
  expect(formatQuantity(-0, 'force', 'us')).toBe('0 lb');
  expect(formatQuantity(-1e-12, 'force', 'us')).toBe('0 lb');
  expect(formatQuantity(-0.0004 * 4.448, 'force', 'us', { decimals: 2 })).toBe('0.00 lb');
});

test('a number that rounds up keeps its digits', () => {
  expect(formatQuantity(999.96, 'force', 'si')).toBe('1 kN');
  expect(formatQuantity(si('9.996 psi', 'pressure'), 'pressure', 'us')).toBe('10 psi');
});

test('columns have fixed decimals and one unit, that of their head', () => {
  expect(formatNumber(552, 'force', 'si', { decimals: 2 })).toBe('0.55');
  expect(unitLabel('force', 'si')).toBe('kN');
  expect(formatNumber(5523, 'force', 'si', { decimals: 2 })).toBe('5.52');
  expect(unitLabel('moment', 'us')).toBe('ft·lb');
});

test('another unit may be asked for, but not one of another kind', () => {
  expect(formatQuantity(3.048, 'length', 'us', { unit: 'ft' })).toBe('10 ft');
  expect(() => formatQuantity(3.048, 'length', 'us', { unit: 'psi' })).toThrow(RangeError);
});

test('what is no number is not printed as one', () => {
  expect(formatQuantity(Number.NaN, 'force', 'us')).toBe('– lb');
  expect(formatQuantity(Number.NEGATIVE_INFINITY, 'stiffness', 'us')).toBe('−∞ lb/in');
});

test('every dimension prints in both systems', () => {
  for (const dimension of dimensions) {
    for (const system of ['us', 'si'] as const) {
      expect(formatQuantity(300, dimension, system)).toMatch(/^[\d.,\u202f]+( × 10[⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+)?( ?\S+)$/);
    }
  }
});
