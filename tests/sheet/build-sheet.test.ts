import { describe, expect, test } from 'vitest';
import { buildSheet } from '../../src/sheet/build-sheet.js';
import { boxesOf, type FieldSheet } from '../../src/sheet/sheet.js';
import { sheetParts } from '../../src/sheet/sheet-parts.js';
import { filesBelow } from '../architecture/source-tree.js';
import { changedSample, reviewedSample } from './reviewed-sample.js';

const idsOf = (sheet: FieldSheet) => boxesOf(sheet).map(({ box }) => box.id);
const rowsOf = (sheet: FieldSheet) => sheet.parts.flatMap(({ rows }) => rows);
const NAMES = ['pool-hot-water', 'library-chilled-water', 'dairy-condenser-water'] as const;

describe.each(NAMES)('sheet of %s', (name) => {
  const sheet = buildSheet(reviewedSample(name));

  test('ids are words of letters, digits and hyphens, each once, none the beginning of another', () => {
    const ids = idsOf(sheet);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[a-z0-9-]+(\.[a-z0-9-]+)+$/.test(id))).toEqual([]);
    const all = new Set(ids);
    const beginnings = ids.flatMap((id) => {
      const words = id.split('.');
      return words.slice(1).map((_, at) => words.slice(0, at + 1).join('.'));
    });
    expect(beginnings.filter((beginning) => all.has(beginning))).toEqual([]);
  });

  test('every id begins with its part, every number has its unit or is a count', () => {
    for (const { box, part } of boxesOf(sheet)) {
      expect(box.id.startsWith(`${part.id}.`)).toBe(true);
      if (box.kind === 'number') expect((box.unit ?? '') === '').toBe(box.dimension === undefined);
      if (box.kind === 'choice') expect(box.choices?.length).toBeGreaterThan(1);
    }
  });

  test('a limit has its source or says that there is none', () => {
    const bare = rowsOf(sheet).filter(
      ({ limit, source }) =>
        limit !== undefined &&
        source === undefined &&
        !/no limit given|as drawn|the manufacturer’s|no number/.test(limit),
    );
    expect(bare.map(({ label, limit }) => `${label}: ${limit}`)).toEqual([]);
  });

  test('texts are finished', () => {
    expect(JSON.stringify(sheet)).not.toMatch(/undefined|NaN|\[object/);
  });

  test('the same review gives the same sheet', () => {
    expect(buildSheet(reviewedSample(name))).toEqual(sheet);
  });
});

test('springs have a scale to read and stops; rod hangers have neither', () => {
  const ids = idsOf(buildSheet(reviewedSample('library-chilled-water')));
  expect(ids).toContain('supports.v1.load-filled');
  expect(ids).toContain('supports.v1.stops-out');
  expect(ids).not.toContain('supports.h1.load-filled');
  expect(ids).toContain('supports.h1.rod-length');
  expect(ids).toContain('supports.s1.gap');
  expect(ids).toContain('supports.g1.free');
});

test('a motor on the line is read at one speed, a drive at three', () => {
  expect(idsOf(buildSheet(reviewedSample('pool-hot-water')))).toContain('vibration.motor-top-along');
  const drive = idsOf(buildSheet(reviewedSample('dairy-condenser-water')));
  expect(drive).toContain('vibration.middle-motor-top-along');
  expect(drive).not.toContain('vibration.motor-top-along');
});

test('a pump without a split coupling has none to read, one without a tap no gauge', () => {
  const close = changedSample('pool-hot-water', (file) => {
    file.pump.build = 'close-coupled';
    delete file.pump.dimensions.spacer;
    file.pump['gauge-taps'].suction = 'no';
  });
  const ids = idsOf(buildSheet(close));
  expect(ids).not.toContain('coupling.gap-one-top');
  expect(ids).not.toContain('hydraulic.running-suction');
  expect(ids).toContain('hydraulic.running-discharge');
});

test('the limit of vibration is that of the file where it gives one, else the zones as a comparison', () => {
  const limitAt = (sheet: FieldSheet) =>
    rowsOf(sheet).find(({ boxes }) => boxes[0]?.id === 'vibration.motor-top-along');
  expect(limitAt(buildSheet(reviewedSample('pool-hot-water')))?.source).toMatch(/memory, a comparison/);
  const own = changedSample('pool-hot-water', (file) => {
    file.limits.vibration = { velocity: '3 mm/s', source: 'Larkfield Parks pump specification' };
  });
  expect(limitAt(buildSheet(own))).toMatchObject({
    limit: 'at most 0.12 in/s',
    source: 'Larkfield Parks pump specification, given in the file',
  });
});

test('every part of the sheet is a file of its own, in the registry', () => {
  const files = filesBelow('src/sheet/parts', '.ts').map((name) => name.slice(0, -3));
  expect(files).toEqual(expect.arrayContaining(sheetParts.map(({ id }) => id)));
});
