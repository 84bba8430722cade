import fc from 'fast-check';
import { expect, test } from 'vitest';
import { review } from '../../src/app/review.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { questions, type RawAnswers } from '../../src/starter/questions.js';
import { startFile } from '../../src/starter/start-file.js';
import { anyAnswers } from './answers-arbitrary.js';

const TODAY = '2026-01-15';

/** Something that works, to be spoilt. */
const good: RawAnswers = {
  units: 'us',
  arrangement: 'elbows',
  mark: 'HWP-1',
  service: 'heating',
  pressure: '125 psi',
  flow: '640 gpm',
  head: '74 ft',
  size: '6 in',
  'casing-weight': '465 lb',
  'motor-power': '20 hp',
  'motor-weight': '290 lb',
  'motor-top': '41 in',
  faces: '30 in',
  'pump-height': '4 ft 6 in',
  'pipe-height': '11 ft',
  ceiling: '14 ft',
  facing: 'south',
  turn: 'west',
  'suction-run': '20 ft',
  'discharge-run': '20 ft',
};

const codesOf = (raw: RawAnswers) => {
  const started = startFile(raw, TODAY);
  return started.ok ? [] : started.issues.map(({ code }) => code);
};

test('answers over the ranges give files that read without an error or a warning, and say what was answered', () => {
  fc.assert(
    fc.property(anyAnswers, (raw) => {
      const started = startFile(raw, TODAY);
      expect(started.ok ? [] : started.issues).toEqual([]);
      if (!started.ok) return;
      const reading = readInstallation(started.text);
      expect(reading.ok ? reading.warnings : reading.issues).toEqual([]);
      if (!reading.ok) return;
      const { pump, review } = reading.installation;
      expect(pump.mark).toBe(raw.mark?.trim());
      expect(pump.mount).toBe(raw.arrangement === 'base' ? 'resting' : 'hung');
      expect(review.units).toBe(raw.units);
      expect(`${pump.ports.suction.nps} in`).toBe(raw.size);
      // No line of the file is so long that an editor would have to be scrolled.
      for (const line of started.text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(220);
    }),
    { numRuns: 60 },
  );
});

test('the same answers give the same text', () => {
  const [first, second] = [startFile(good, TODAY), startFile(good, TODAY)];
  expect(first.ok && first.text).toBe(second.ok && second.text);
});

test('the overhead pipe lies as high as was answered, to the step of a tape', () => {
  const started = startFile(good, TODAY);
  if (!started.ok) throw new Error('refused');
  const straights = [...started.text.matchAll(/straight: (?:(\d+) ft ?)?(?:(\d+)? ?(1\/2)? ?in)?/g)];
  expect(straights.length).toBeGreaterThan(8);
  // Suction line, from the elbow at the pump to the elbow overhead: two radii of 9 in, the gate valve of 10-1/2 in.
  const leg = started.text.slice(started.text.indexOf('elbow: up'), started.text.indexOf('elbow: west'));
  const inches = [...leg.matchAll(/straight: (.*)/g)].reduce((sum, [, text = '']) => sum + inchesOf(text), 0);
  expect(inches + 18 + 10.5).toBeCloseTo((11 - 4.5) * 12, 9);
});

function inchesOf(text: string): number {
  const [, feet = '0', whole = '0', half] = /^(?:(\d+) ft ?)?(?:(\d+) ?(1\/2)? in)?$/.exec(text) ?? [];
  return Number(feet) * 12 + Number(whole) + (half === undefined ? 0 : 0.5);
}

test('what is assumed is marked in the file and listed', () => {
  const started = startFile(good, TODAY);
  if (!started.ok) throw new Error('refused');
  expect(started.assumptions.length).toBeGreaterThan(8);
  for (const { value } of started.assumptions.slice(0, 5)) expect(started.text).toContain(value);
  expect(started.text.match(/# assumed: /g)?.length).toBeGreaterThan(8);
});

test('rods carry what hangs on them, light or heavy', () => {
  for (const more of [{}, { 'casing-weight': '4000 lb', 'motor-weight': '3000 lb' }]) {
    const started = startFile({ ...good, ...more }, TODAY);
    if (!started.ok) throw new Error('refused');
    const rods = review(started.installation).findings.filter(({ check }) => check === 'rod-load');
    expect(rods.length).toBeGreaterThan(3);
    for (const { verdict, at } of rods) expect(`${at} ${verdict}`).toBe(`${at} meets`);
  }
});

test('everything that is missing is told in one issue, with the options', () => {
  const started = startFile({ units: 'us', arrangement: 'header' }, TODAY);
  expect(started.ok).toBe(false);
  const [issue] = started.ok ? [] : started.issues;
  expect(issue?.code).toBe('starter.missing');
  const options = String(issue?.data.options);
  for (const key of ['mark', 'leg', 'suction-run']) expect(options).toContain(`--${key} `);
  for (const key of ['pipe-height', 'drop', 'motor-weight']) expect(options).not.toContain(`--${key} `);
});

test.each<[string, RawAnswers, string]>([
  ['a number without a unit', { 'pump-height': '4' }, 'starter.unusable'],
  ['a size of no table', { size: '7 in' }, 'starter.unusable'],
  ['a weight of nothing', { 'casing-weight': '0 lb' }, 'starter.unusable'],
  ['a word that is no choice', { facing: 'left' }, 'starter.unusable'],
  ['a day that is none', { date: '2026-02-30' }, 'starter.unusable'],
  ['a mark with signs that draw on the terminal', { mark: 'P\u001B[2J' }, 'starter.unusable'],
  ['an answer of another arrangement', { leg: '6 ft' }, 'starter.not-of-arrangement'],
  ['a pipe far larger than the ports', { 'pipe-size': '16 in' }, 'starter.no-reducer'],
  ['a schedule of no table', { schedule: '41' }, 'starter.no-schedule'],
  ['a pipe lower than the valves are long', { 'pipe-height': '6 ft' }, 'starter.pipe-too-low'],
  ['a run without room for a hanger', { 'suction-run': '1 ft' }, 'starter.run-too-short'],
  ['a structure lower than the pipe', { ceiling: '10 ft' }, 'starter.no-room-for-rods'],
  ['a motor through the structure', { 'motor-top': '12 ft' }, 'starter.motor-over-structure'],
  ['hot below running', { running: '180 degF', hot: '150 degF' }, 'starter.temperatures'],
])('%s is refused', (_, spoilt, code) => {
  expect(codesOf(good)).toEqual([]);
  expect(codesOf({ ...good, ...spoilt })).toContain(code);
});

test('lengths named as the least that would do, do', () => {
  const short = startFile({ ...good, 'pipe-height': '6 ft' }, TODAY);
  const least = short.ok ? '' : String(short.issues[0]?.data.least);
  expect(codesOf({ ...good, 'pipe-height': least })).toEqual([]);
});

test('larger pipe than ports gets its reducers, and both lines keep their height', () => {
  const started = startFile({ ...good, 'pipe-size': '8 in' }, TODAY);
  if (!started.ok) throw new Error(JSON.stringify(started.issues));
  expect(started.text).toContain('reducer: {to: 8 in, kind: eccentric, flat: top}');
  expect(started.text).toContain('reducer: {to: 8 in, kind: concentric}');
});

test('no two questions have one key', () => {
  expect(new Set(questions.map(({ key }) => key)).size).toBe(questions.length);
});
