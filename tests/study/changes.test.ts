import { describe, expect, test } from 'vitest';
import { openForTrials } from '../../src/input/open-for-trials.js';
import { buildLayout } from '../../src/model/layout/build-layout.js';
import type { Layout } from '../../src/model/layout/layout.js';
import { allChanges } from '../../src/study/advise/all-changes.js';
import { changeKinds } from '../../src/study/advise/change.js';
import { changedSituation } from '../../src/study/advise/situation.js';
import { stretchesOf } from '../../src/study/advise/stretches.js';
import { writeEdits } from '../../src/study/advise/write-edits.js';
import { changed, installationOf } from '../input/sample-text.js';
import { dairy, library, pool } from './advise-run.js';

const NOTHING = { marks: [], kinds: [] };

function changesOf(text: string) {
  const opening = openForTrials(text);
  if (!opening.ok) throw new Error('the sample cannot be read');
  const { opened } = opening;
  const situation = changedSituation(opened, []);
  if (situation === undefined) throw new Error('the sample cannot be placed');
  const filled = Object.fromEntries(situation.layout.supports.map(({ mark }) => [mark, 5000]));
  return { opened, situation, changes: allChanges({ ...situation, filled }, opened, NOTHING) };
}

const endsOf = (layout: Layout) =>
  layout.supports.filter(({ kind }) => kind === 'end').map(({ at }) => at.map((x) => Math.round(x * 1e7)));

/** Every so many, so that the test takes seconds. */
const EVERY = 7;

describe.each([
  ['pool', pool],
  ['library', library],
  ['dairy', dairy],
])('changes of the %s sample', (_name, text) => {
  const { opened, situation, changes } = changesOf(text);
  const some = changes.filter((_, index) => index % EVERY === 0);

  test('can be written, and what is written is what was tried; the line still ends where it did', () => {
    for (const { key, edits } of some) {
      const written = writeEdits(text, edits);
      expect(written, key).toBeDefined();
      const installation = installationOf(written ?? '');
      expect(opened.installationOf(changedSituation(opened, edits)?.content)?.lines, key).toEqual(
        installation.lines,
      );
      expect(endsOf(buildLayout(installation)), key).toEqual(endsOf(situation.layout));
    }
  });

  test('leave every support on straight pipe, clear of fittings, and no rod shorter than can be made up', () => {
    for (const { key, kind, edits, data } of changes) {
      if (kind !== 'move-support' && kind !== 'add-hanger') continue;
      const after = changedSituation(opened, edits);
      if (after === undefined) throw new Error(key);
      const stretch = stretchesOf({ ...after, filled: {} }).find(({ items }) =>
        items.some(({ part }) => 'mark' in part && part.mark === data.mark),
      );
      const item = stretch?.items.find(({ part }) => 'mark' in part && part.mark === data.mark);
      expect(item?.start, key).toBeGreaterThanOrEqual(0.075 - 1e-6);
      expect((stretch?.length ?? 0) - (item?.start ?? 0), key).toBeGreaterThanOrEqual(0.075 - 1e-6);
      const rods = after.layout.supports.find(({ mark }) => mark === data.mark)?.part?.rods;
      if (rods?.length !== undefined) expect(rods.length, key).toBeGreaterThan(0.2);
    }
  });
});

test('every kind of change occurs somewhere in the samples', () => {
  const kinds = new Set(
    [pool, library, dairy].flatMap((text) => changesOf(text).changes.map(({ kind }) => kind)),
  );
  expect([...kinds].sort()).toEqual([...changeKinds].sort());
});

test('a stand needs a floor to stand on', () => {
  const stands = changesOf(dairy).changes.filter(({ kind }) => kind === 'add-stand');
  expect(stands.length).toBeGreaterThan(0);
  const floating = changed(dairy, ['  floor: 0 m\n', '']);
  expect(changesOf(floating).changes.filter(({ kind }) => kind === 'add-stand')).toEqual([]);
});

test('no hanger goes up where a duct is in the way of its rod', () => {
  const hangers = (text: string) =>
    changesOf(text).changes.filter(
      ({ kind, data }) => kind === 'add-hanger' && String(data.place).includes('H1'),
    );
  const before = hangers(pool);
  const duct = `    - {kind: duct, name: wide duct, from: {east: -20 ft, north: -7 ft, elevation: 11 ft 2 in}, to: {east: 10 ft, north: 7 ft, elevation: 12 ft}}\n`;
  const under = changed(pool, ['  objects:\n', `  objects:\n${duct}`]);
  expect(before.length).toBeGreaterThan(0);
  expect(hangers(under)).toEqual([]);
});

test('a leg is not made longer through a wall', () => {
  const legs = (text: string) => changesOf(text).changes.filter(({ kind }) => kind === 'lengthen-leg');
  const before = legs(dairy).length;
  // The wall stands a foot from the risers, across every way a leg could grow.
  const wall = (name: string, north: string, to: string) =>
    `    - {kind: wall, name: ${name}, from: {east: -2 m, north: ${north}, elevation: 0 m}, to: {east: 9 m, north: ${to}, elevation: 4.6 m}}\n`;
  const narrow = changed(dairy, [
    '  objects:\n',
    `  objects:\n${wall('near north wall', '2.3 m', '2.35 m')}${wall('near south wall', '-2.5 m', '-2.45 m')}`,
  ]);
  expect(before).toBeGreaterThan(0);
  expect(legs(narrow).length).toBeLessThan(before);
});

test('no spring is set within a tenth of its range from either end', () => {
  const ranges = { V1: [900, 2600], V2: [2400, 6000] } as const;
  const settings = changesOf(library).changes.filter(({ kind }) => kind === 'spring-setting');
  expect(settings.length).toBeGreaterThan(4);
  for (const { edits, data } of settings) {
    const [least, most] = ranges[data.mark as keyof typeof ranges];
    const load = Number.parseFloat(edits[0]?.does === 'set' ? String(edits[0].value) : '');
    expect(load).toBeGreaterThanOrEqual(least + 0.1 * (most - least));
    expect(load).toBeLessThanOrEqual(most - 0.1 * (most - least));
  }
});

test('what must stay is left alone', () => {
  const { opened, situation } = changesOf(pool);
  const kept = allChanges({ ...situation, filled: {} }, opened, {
    marks: ['H1'],
    kinds: ['lengthen-leg', 'add-hanger'],
  });
  expect(kept.some(({ target }) => target === 'H1')).toBe(false);
  expect(kept.some(({ kind }) => kind === 'add-hanger' || kind === 'lengthen-leg')).toBe(false);
  expect(kept.some(({ target }) => target === 'H2')).toBe(true);
});
