/** Answers over the ranges of pumps that hang in their pipes, each arrangement with lengths that leave room for its parts. */
import fc from 'fast-check';
import type { RawAnswers } from '../../src/starter/questions.js';

const SIZES = ['2', '2-1/2', '3', '4', '5', '6', '8', '10', '12', '14', '16', '18', '20', '24'] as const;
const share = fc.double({ min: 0, max: 1, noNaN: true });
const INCH = 0.0254;

/** Words a person could call a pump, kind and unkind. */
const marks = fc.oneof(
  fc.constantFrom(
    'P-1',
    '=1+1',
    "it's",
    '{x: #1}',
    'yes',
    '12',
    '1e3',
    '- a',
    '2026-01-01',
    '# no',
    'Ø7 / [b]',
    '%a',
  ),
  fc
    .string({ minLength: 1, maxLength: 30 })
    .filter((text) => text.trim() !== '' && !/[\p{Cc}\p{Cf}\p{Cs}]/u.test(text)),
);

export const anyAnswers: fc.Arbitrary<RawAnswers> = fc
  .record({
    size: fc.integer({ min: 0, max: SIZES.length - 1 }),
    arrangement: fc.constantFrom('elbows', 'riser', 'header', 'base'),
    service: fc.constantFrom('heating', 'chilled', 'condenser'),
    units: fc.constantFrom('us', 'si'),
    mark: marks,
    low: share,
    rise: share,
    room: share,
    run: share,
    larger: fc.boolean(),
  })
  .map(({ size, arrangement, service, units, mark, low, rise, room, run, larger }): RawAnswers => {
    const label = SIZES[size] ?? '6';
    const next = SIZES[size + 1];
    const inches = Number(label.replace('-1/2', '.5'));
    const length = (metres: number) =>
      units === 'us' ? `${Math.round(metres / INCH)} in` : `${Math.round(metres * 1000)} mm`;
    const pump = 0.6 + 1.2 * low + 0.03 * inches;
    const pipe = pump + 12 * inches * INCH + 1.2 + 4 * rise;
    const top = 0.4 + 0.07 * inches;
    return {
      units,
      arrangement,
      mark,
      service,
      pressure: units === 'us' ? '125 psi' : '860 kPa',
      flow: `${Math.round(18 * inches ** 2)} gpm`,
      head: '70 ft',
      size: `${label} in`,
      ...(larger && next !== undefined ? { 'pipe-size': `${next} in` } : {}),
      'casing-weight': `${Math.round(60 * inches ** 1.3)} lb`,
      'motor-power': `${Math.ceil(0.6 * inches ** 2)} hp`,
      'motor-top': length(top),
      faces: length(0.3 + 0.08 * inches),
      'pump-height': length(pump),
      ceiling: length(Math.max(pipe + 0.5 + room, pump + top + 0.5)),
      facing: 'south',
      turn: 'east',
      'discharge-run': length(3.2 + 0.8 * inches + 8 * run),
      ...(arrangement === 'riser'
        ? { drop: length(0.9 + 0.1 * inches + 5 * run) }
        : { 'suction-run': length(3.2 + 0.5 * inches + 8 * run) }),
      ...(arrangement === 'header'
        ? { leg: length(0.7 + 0.07 * inches + 3 * run) }
        : { 'pipe-height': length(pipe) }),
    };
  });
