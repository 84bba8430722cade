import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Dimension,
  dimensions,
  formatQuantity,
  parseQuantity,
  unitNames,
} from '../../src/units/index.js';

const read = (text: string, dimension: Dimension): number => {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.code}`);
  return parsed.value;
};
const refusal = (text: string, dimension: Dimension): string => {
  const parsed = parseQuantity(text, dimension);
  return parsed.ok ? `read as ${parsed.value}` : parsed.code;
};

// Exact by definition: international inch and pound, standard gravity, US gallon of 231 cubic inches.
const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const POUND_FORCE = POUND * GRAVITY;
const PSI = POUND_FORCE / INCH ** 2;
const GALLON = 231 * INCH ** 3;
const FAHRENHEIT_STEP = 5 / 9;

const factors: readonly (readonly [string, Dimension, number])[] = [
  ['1 in', 'length', INCH],
  ['1 ft', 'length', FOOT],
  ['1 lb', 'mass', POUND],
  ['1 lb', 'force', POUND_FORCE],
  ['610 lb', 'force', 610 * POUND_FORCE],
  ['1 kip', 'force', 1000 * POUND_FORCE],
  ['1 kip', 'mass', 1000 * POUND],
  ['1 N', 'mass', 1 / GRAVITY],
  ['1 kN', 'mass', 1000 / GRAVITY],
  ['1 psi', 'pressure', PSI],
  ['1 ksi', 'stress', 1000 * PSI],
  ['1 Mpsi', 'stress', 1e6 * PSI],
  ['1 psf', 'pressure', POUND_FORCE / FOOT ** 2],
  ['1 psf', 'mass per area', POUND / FOOT ** 2],
  ['1 bar', 'pressure', 1e5],
  ['1 ftH2O', 'pressure', 1000 * GRAVITY * FOOT],
  ['1 inH2O', 'pressure', 1000 * GRAVITY * INCH],
  ['1 ftH2O', 'head', FOOT],
  ['1 gpm', 'flow', GALLON / 60],
  ['1 m3/h', 'flow', 1 / 3600],
  ['1 L/s', 'flow', 1e-3],
  ['1 gal', 'volume', GALLON],
  ['1 hp', 'power', 550 * FOOT * POUND_FORCE],
  ['1 rpm', 'speed', (2 * Math.PI) / 60],
  ['60 cpm', 'frequency', 1],
  ['180 deg', 'angle', Math.PI],
  ['1 lb/in', 'stiffness', POUND_FORCE / INCH],
  ['1 kip/in', 'stiffness', (1000 * POUND_FORCE) / INCH],
  ['1 ft.lbf', 'moment', FOOT * POUND_FORCE],
  ['1 in.lb', 'moment', INCH * POUND_FORCE],
  ['1 ft.lbf/deg', 'rotational stiffness', (FOOT * POUND_FORCE * 180) / Math.PI],
  ['1 kN.m/deg', 'rotational stiffness', (1000 * 180) / Math.PI],
  ['1 lb/ft3', 'density', POUND / FOOT ** 3],
  ['1 lb/ft', 'mass per length', POUND / FOOT],
  ['1 lb/ft2', 'mass per area', POUND / FOOT ** 2],
  ['1 1/degF', 'expansion', 1 / FAHRENHEIT_STEP],
  ['1 mm/m/K', 'expansion', 1e-3],
  ['1 %', 'ratio', 0.01],
  ['0.25', 'ratio', 0.25],
  ['1 lb.ft2', 'inertia', POUND * FOOT ** 2],
  ['1 in4', 'second moment of area', INCH ** 4],
  ['1 in3', 'section modulus', INCH ** 3],
  ['1 ft/s', 'velocity', FOOT],
  ['2 min', 'time', 120],
];

test.each(factors)('%s of %s is exact to the last digits', (text, dimension, si) => {
  expect(Math.abs(read(text, dimension) / si - 1)).toBeLessThan(1e-14);
});

test('temperatures count from absolute zero, differences do not', () => {
  expect(read('32 degF', 'temperature')).toBeCloseTo(273.15, 10);
  expect(read('212 °F', 'temperature')).toBeCloseTo(373.15, 10);
  expect(read('-40 degC', 'temperature')).toBeCloseTo(read('-40 degF', 'temperature'), 10);
  expect(read('180 degF', 'temperature') - read('70 degF', 'temperature')).toBeCloseTo((110 * 5) / 9, 10);
  expect(read('110 degF', 'temperature difference')).toBeCloseTo((110 * 5) / 9, 12);
  expect(read('10 degC', 'temperature difference')).toBe(10);
  expect(refusal('-500 degF', 'temperature')).toBe('quantity.below-zero-kelvin');
});

describe('lengths are read in every notation of the trade', () => {
  const notations: readonly (readonly [string, number])[] = [
    ['12 ft 6 in', 150],
    ['12 ft. 6 in.'.replaceAll('.', ''), 150],
    [`12'-6"`, 150],
    [`12' 6"`, 150],
    [`12'6"`, 150],
    ['12′-6″', 150],
    ['12’ 6”', 150],
    [`12'-6 1/2"`, 150.5],
    [`12'-6½"`, 150.5],
    ['12′–6½″', 150.5],
    [`12' 6-1/2"`, 150.5],
    [`12'-0"`, 144],
    [`0'-7"`, 7],
    ['1 ft 3/4 in', 12.75],
    [`12'`, 144],
    ['6 1/2 in', 6.5],
    ['6½ in', 6.5],
    ['6 1⁄2 in', 6.5],
    ['2-1/2 in', 2.5],
    ['5/8 in', 0.625],
    ['⅝"', 0.625],
    ['1,240 in', 1240],
    ['1 240 in', 1240],
    ['1\u202f240 in', 1240],
    ['1,240.5 in', 1240.5],
    ['.5 in', 0.5],
    ['6 inches', 6],
    ['6 IN', 6],
    ['2 feet', 24],
    ['-2 ft 6 in', -30],
    ['− 2 in', -2],
    ['1e2 in', 100],
  ];
  test.each(notations)('%s', (text, inches) => {
    expect(read(text, 'length')).toBeCloseTo(inches * INCH, 12);
  });
});

test.each([
  ['700 ft-lb', 'moment', '700 ft.lbf'],
  ['700 ft·lbf', 'moment', '700 ft.lbf'],
  ['700 lb ft', 'moment', '700 ft.lbf'],
  ['5 N·m', 'moment', '5 N.m'],
  ['44 in²', 'area', '44 in2'],
  ['44 sq in', 'area', '44 in2'],
  ['900 lb / in', 'stiffness', '900 lb/in'],
  ['125 PSI', 'pressure', '125 psi'],
  ['45°', 'angle', '45 deg'],
  ['180 deg F', 'temperature', '180 degF'],
  ['45 l', 'volume', '45 L'],
] as const)('%s means the same as another spelling', (text, dimension, other) => {
  expect(read(text, dimension)).toBe(read(other, dimension));
});

test.each([
  ['6', 'length', 'quantity.no-unit'],
  ['', 'length', 'quantity.not-a-number'],
  ['ft', 'length', 'quantity.not-a-number'],
  ['1,5 m', 'length', 'quantity.comma'],
  ['1,24 m', 'length', 'quantity.comma'],
  ['1/0 in', 'length', 'quantity.bad-fraction'],
  ['6 5/4 in', 'length', 'quantity.bad-fraction'],
  ['12 ft 14 in', 'length', 'quantity.too-many-inches'],
  ['12.5 ft 6 in', 'length', 'quantity.broken-feet'],
  ['3 furlongs', 'length', 'quantity.unknown-unit'],
  ['3 lb', 'length', 'quantity.unknown-unit'],
  ['60 psia', 'pressure', 'quantity.unknown-unit'],
  ['1e999 in', 'length', 'quantity.not-a-number'],
  ['constructor', 'length', 'quantity.not-a-number'],
  ['1 constructor', 'length', 'quantity.unknown-unit'],
  ['0', 'temperature', 'quantity.no-unit'],
  ['1 2 in', 'length', 'quantity.unknown-unit'],
] as const)('%s as a %s is refused', (text, dimension, code) => {
  expect(refusal(text, dimension)).toBe(code);
});

test('nothing needs no unit, except a temperature', () => {
  expect(read('0', 'rotational stiffness')).toBe(0);
});

test('every unit on offer is read, whatever its capitals where they do not matter', () => {
  for (const dimension of dimensions) {
    for (const unit of unitNames(dimension))
      expect(refusal(`1 ${unit}`, dimension)).toMatch(/^read as [\d.e+-]+$/);
  }
});

test('what is printed with many digits is read again as the same quantity', () => {
  const readable = dimensions.filter((dimension) => dimension !== 'ratio');
  fc.assert(
    fc.property(
      fc.constantFrom(...readable),
      fc.constantFrom('us', 'si'),
      fc.double({ min: 10, max: 1e4, noNaN: true }),
      (dimension, system, value) => {
        const printed = formatQuantity(value, dimension, system, { significant: 12 });
        const tolerance = dimension === 'temperature' ? 1e-6 : 1e-9 * value;
        expect(Math.abs(read(printed, dimension) - value)).toBeLessThan(tolerance);
      },
    ),
  );
});

test('no text whatever throws', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.string(), fc.string({ unit: 'binary' })),
      fc.constantFrom(...dimensions),
      (text, dimension) => {
        const parsed = parseQuantity(text, dimension);
        expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.code.startsWith('quantity.')).toBe(true);
      },
    ),
  );
});
