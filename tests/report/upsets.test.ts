import { expect, test } from 'vitest';
import type { Origin } from '../../src/input/installation.js';
import { composeReview } from '../../src/report/compose-review.js';
import { reviewed, reviewedInstallation } from './fixture.js';

type Row = Readonly<Record<string, string | boolean | readonly string[]>>;
interface View {
  readonly [key: string]: string | boolean | readonly Row[];
}

const origin: Origin = { kind: 'given', path: 'limits.lateral.coefficient', document: 'drawing S-2' };

/** Section of the engineer's review in SI units, with a sideways coefficient or without. */
function sectionOf(id: 'upsets' | 'stress', coefficient: number | undefined, from: Origin = origin): View {
  const { limits } = reviewedInstallation();
  const stress = { ...limits.stress, occasionalFactor: { value: 1.33, origin } };
  const lateral = coefficient !== undefined && {
    lateral: { coefficient: { value: coefficient, origin: from } },
  };
  const whole = reviewed({ limits: { ...limits, stress, ...lateral } });
  const { view } = composeReview(whole, { reader: 'engineer', units: 'si', version: '0.0.0' });
  const slots = view.sections as readonly Readonly<Record<string, unknown>>[];
  return slots.find((one) => one[id] !== false)?.[id] as View;
}
const rows = (view: View, key: string) => view[key] as readonly Row[];
const number = (text: unknown) =>
  Number(
    String(text)
      .replace(/[\u202f,]/g, '')
      .replace('−', '-'),
  );

const sideways = sectionOf('upsets', 0.3);
const still = sectionOf('upsets', undefined);

test('every direction has its loads on both nozzles, beside the filled line and the motor lifted away', () => {
  expect(rows(sideways, 'nozzles').map(({ condition }) => condition)).toEqual([
    'filled',
    'motor removed',
    'sideways, north',
    'sideways, south',
    'sideways, east',
    'sideways, west',
  ]);
  for (const { loads } of rows(sideways, 'nozzles'))
    expect((loads as readonly string[]).map(number)).not.toContain(Number.NaN);
});

test('a lighter set leaves less on the nozzles together, and the coefficient is printed with its document', () => {
  const [filled, motorOff] = rows(sideways, 'nozzles').map(({ loads }) =>
    (loads as readonly string[]).map(number),
  );
  expect((motorOff?.[0] ?? 0) + (motorOff?.[2] ?? 0)).toBeLessThan((filled?.[0] ?? 0) + (filled?.[2] ?? 0));
  expect(sideways).toMatchObject({ hasSideways: true, coefficient: '0.3', origin: 'drawing S-2' });
});

test('a computed coefficient is printed with the formula it came from', () => {
  const citation = { source: 'asce-7', clause: 'eq. 13.3-1', confidence: 'two sources' } as const;
  const view = sectionOf('upsets', 0.2, { kind: 'computed', how: '0.4 × 1 × 0.5', citation });
  expect(view.origin).toMatch(/ASCE 7.*0\.4 × 1 × 0\.5/);
});

test('the most a support carries is not less than the least, and a load of nothing has no direction', () => {
  for (const row of rows(sideways, 'supports')) {
    expect(number(row.most)).toBeGreaterThanOrEqual(number(row.least));
    expect(row.acrossIn === '–').toBe(number(row.across) === 0);
  }
});

test('without a coefficient only the motor lifted away is printed', () => {
  expect(still).toMatchObject({ hasSideways: false, coefficient: '', origin: '' });
  expect(rows(still, 'nozzles').map(({ condition }) => condition)).toEqual(['filled', 'motor removed']);
});

test('occasional stress is printed for each line and condition, and never below the sustained stress there', () => {
  const view = sectionOf('stress', 0.3);
  const sideways = (row: { readonly condition?: unknown }) => String(row.condition).startsWith('sideways');
  const found = rows(view, 'occasional').filter(sideways);
  const places = new Set(found.map(({ line, condition }) => `${String(line)} ${String(condition)}`));
  expect(places.size).toBe(found.length);
  expect(found.length % 4).toBe(0);
  expect(found.length).toBeGreaterThanOrEqual(8);
  for (const row of found) {
    expect(number(row.together)).toBeGreaterThanOrEqual(number(row.sustained));
    expect(number(row.ratio)).toBeCloseTo(number(row.together) / number(row.allowed), 1);
  }
  // Without a sideways load, starts are all that is occasional.
  const starts = rows(sectionOf('stress', undefined), 'occasional');
  expect(starts.filter(sideways)).toEqual([]);
  expect(new Set(starts.map(({ condition }) => condition))).toEqual(
    new Set(['start', 'start, reverse torque']),
  );
});

test('every pipe is printed under pressure, with the wall that pressure asks for below its own', () => {
  const { stress } = reviewedInstallation().limits;
  const whole = reviewed({
    limits: { ...reviewedInstallation().limits, stress: { ...stress, jointFactor: { value: 1, origin } } },
  });
  const { view } = composeReview(whole, { reader: 'engineer', units: 'si', version: '0.0.0' });
  const slots = view.sections as readonly Readonly<Record<string, unknown>>[];
  const section = slots.find((one) => one.stress !== false)?.stress as View;
  const pipes = rows(section, 'pipes');
  expect(pipes.length).toBeGreaterThan(2);
  for (const row of pipes) {
    expect(number(row.asked)).toBeLessThan(number(row.wall));
    expect(number(row.test)).toBeGreaterThan(number(row.hoop));
    expect(number(row.along)).toBeGreaterThan(0);
  }
});
