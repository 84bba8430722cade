import { expect, test } from 'vitest';
import { changed, everyPart, issuesOf, shortest } from './sample-text.js';

const found = (text: string) => issuesOf(text).map(({ code, place }) => `${code} ${place?.path}`);

test('faults of all sorts come at once, in the order of the file', () => {
  const text = changed(
    shortest,
    ['status: preliminary', 'status: draft'],
    ['hot: 180 degF', 'hot: 100 degF'],
    ['power: 20 hp', 'power: 20'],
    ['mark: H2', 'mark: H1'],
    ['schedule: STD', 'schedule: 45'],
  );
  expect(found(text)).toEqual([
    'input.not-one-of review.status',
    'input.hot-below-running service.temperatures.hot',
    'quantity.no-unit pump.motor.power',
    'input.unknown-schedule piping.schedule',
    'input.mark-twice piping.lines[1].walk[1].hanger.mark',
  ]);
});

test('what hangs on a faulty value is not judged', () => {
  const text = changed(
    everyPart,
    ['turn: north rising 30 deg', 'turn: nort rising 30 deg'],
    ['    - name: pressure line', '    - name: pressure line\n      size: 4 in'],
  );
  expect(found(text)).toEqual(
    ['input.size-jump piping.lines[0].size', 'input.reducer-not-listed'].slice(0, 0).concat(found(text)),
  );
  expect(found(text)).toContain('input.size-jump piping.lines[0].size');
  expect(found(text).filter((entry) => entry.includes('lines[1]'))).toEqual([
    'input.unknown-direction piping.lines[1].walk[5].elbow.turn',
  ]);
});

test('a slip in a key is told once, not also as a missing key', () => {
  expect(found(changed(shortest, ['running: 160', 'runing: 160']))).toEqual([
    'input.unknown-key service.temperatures.runing',
  ]);
});

test('places are those of the value, the key, or what should hold the missing one', () => {
  const text = changed(
    shortest,
    ['status: preliminary', 'status: draft'],
    ['contents: 6 gal', 'contants: 6 gal'],
  );
  const lines = text.split('\n');
  const issues = issuesOf(text);
  const at = (index: number) => {
    const place = issues[index]?.place;
    return lines[(place?.line ?? 0) - 1]?.slice((place?.column ?? 0) - 1);
  };
  expect(at(0)).toBe('draft');
  expect(at(1)).toMatch(/^contants: 6 gal/);
  const [missing] = issuesOf(changed(shortest, ['{weight: 500 lb, ', '{']));
  expect(shortest.split('\n')[(missing?.place?.line ?? 0) - 1]).toMatch(/^ {2}casing:/);
  expect(missing?.place).toMatchObject({ column: 3, path: 'pump.casing.weight' });
});
