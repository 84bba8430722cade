import { expect, test } from 'vitest';
import { labelInches, nominalInches, nominalSize, scheduleLabel } from '../../src/catalog/index.js';

test.each([
  ['6', '6'],
  ['6 in', '6'],
  ['6in', '6'],
  ['6"', '6'],
  ['NPS 6', '6'],
  ['nps 2-1/2', '2-1/2'],
  ['2 1/2', '2-1/2'],
  ['2-1/2 in', '2-1/2'],
  ['2½', '2-1/2'],
  ['2.5', '2-1/2'],
  ['DN 150', '6'],
  ['dn65', '2-1/2'],
  ['1/2', '1/2'],
])('%s is the nominal size %s', (label, size) => {
  expect(nominalSize(label)).toBe(size);
});

test.each(['', 'six', '7', '6 ft', 'DN 151', '2-1/3', '15/8', '-6', '6/0', 'NaN'])(
  '%s is no nominal size',
  (label) => {
    expect(nominalSize(label)).toBeUndefined();
    expect(nominalInches(label)).toBeUndefined();
  },
);

test('a fraction without a space is read as a fraction, not as a mixed number', () => {
  expect(labelInches('15/8')).toBe(1.875);
  expect(labelInches('1-5/8')).toBe(1.625);
});

test.each([
  ['sch 40', '40'],
  ['Schedule 80', '80'],
  ['sch. 10s', '10S'],
  ['std', 'STD'],
  ['Standard', 'STD'],
  ['extra strong', 'XS'],
  ['type L', 'L'],
])('%s is schedule %s', (label, schedule) => {
  expect(scheduleLabel(label)).toBe(schedule);
});
