import { describe, expect, test } from 'vitest';
import { readInstallation } from '../../src/index.js';
import type { Installation } from '../../src/input/installation.js';
import { buildLayout } from '../../src/model/index.js';
import { type Doubt, factorAt, valueAt } from '../../src/study/doubt.js';
import { doubtsOf } from '../../src/study/doubts.js';
import { varied } from '../../src/study/vary.js';
import { fileText } from '../input/sample-text.js';

const samples = ['dairy-condenser-water', 'library-chilled-water', 'pool-hot-water'];
const read = (text: string): Installation => {
  const reading = readInstallation(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.installation;
};
const installationOf = (name: string) => read(fileText(`../../samples/${name}.yaml`));
const doubtOf = (installation: Installation, id: string): Doubt => {
  const found = doubtsOf(installation).find((doubt) => doubt.id === id);
  if (found === undefined) throw new Error(`no doubt "${id}"`);
  return found;
};

describe.each(samples)('%s', (name) => {
  const installation = installationOf(name);
  const doubts = doubtsOf(installation);

  test('each doubt is there once, with how it is known and a source', () => {
    expect(new Set(doubts.map(({ id }) => id)).size).toBe(doubts.length);
    for (const { half, citation, what } of doubts) {
      expect(half).toBeGreaterThan(0);
      expect(citation.clause).not.toBe('');
      expect(what).not.toMatch(/undefined|NaN/);
    }
  });

  test('each doubt changes the frame it speaks of, and nothing else does', () => {
    const before = buildLayout(installation).frame;
    doubts.forEach((_, index) => {
      const amounts = doubts.map((_, each) => (each === index ? 1 : 0));
      expect(buildLayout(varied(installation, doubts, amounts)).frame, doubts[index]?.id).not.toEqual(before);
    });
    expect(
      varied(
        installation,
        doubts,
        doubts.map(() => 0),
      ),
    ).toBe(installation);
  });

  test('all weights a tenth heavier make the dry line a tenth heavier', () => {
    const amounts = doubts.map(({ varied: of, half }) => (of.kind === 'mass' ? 0.1 / half : 0));
    const dry = (of: Installation) =>
      buildLayout(of).weights.reduce((sum, row) => sum + row.dry + row.covering, 0);
    const ratio = dry(varied(installation, doubts, amounts)) / dry(installation);
    expect(ratio).toBeCloseTo(1.1, 12);
  });
});

test('a motor whose weight is estimated is within 40 %, one from the maker within 10 %', () => {
  expect(doubtOf(installationOf('library-chilled-water'), 'mass of motor')).toMatchObject({
    half: 0.4,
    obtained: 'estimated',
    path: 'pump.motor.weight',
  });
  expect(doubtOf(installationOf('pool-hot-water'), 'mass of motor')).toMatchObject({
    half: 0.1,
    obtained: 'maker',
  });
  expect(doubtOf(installationOf('dairy-condenser-water'), 'mass of motor')).toMatchObject({
    half: 0.4,
    obtained: 'assumed',
  });
});

test('what the file says of how far a weight may be off comes before any practice', () => {
  const text = fileText('../../samples/library-chilled-water.yaml').replace(
    'known: estimated',
    'known: weighed\n    within: 1 %',
  );
  expect(doubtOf(read(text), 'mass of motor')).toMatchObject({
    half: 0.01,
    obtained: 'weighed',
    citation: { source: 'input' },
  });
});

test.each(['0 %', '150 %', 'ten'])('a weight within "%s" is refused', (within) => {
  const text = fileText('../../samples/library-chilled-water.yaml').replace(
    'known: estimated',
    `known: weighed\n    within: ${within}`,
  );
  const reading = readInstallation(text);
  expect(reading.ok).toBe(false);
  if (!reading.ok) expect(reading.issues[0]?.place?.path).toBe('pump.motor.within');
});

test('parts of one row of the catalogue are off together, parts given one by one are not', () => {
  const ids = doubtsOf(installationOf('library-chilled-water')).map(({ id }) => id);
  expect(ids.filter((id) => id.includes('butterfly lug'))).toHaveLength(1);
  expect(ids.filter((id) => id.startsWith('spring load'))).toEqual([
    'spring load of V1',
    'spring load of V2',
  ]);
});

test('a value moves by share, by factor or by shift', () => {
  const doubt = doubtOf(installationOf('pool-hot-water'), 'mass of motor');
  expect(valueAt({ ...doubt, taken: 100, half: 0.1 }, -1)).toBeCloseTo(90, 12);
  expect(factorAt({ ...doubt, moves: 'factor', half: 1 }, -1)).toBe(0.5);
  expect(valueAt({ ...doubt, moves: 'shift', taken: 0, half: 0.025 }, 1)).toBe(0.025);
  expect(valueAt({ ...doubt, moves: 'alternative' }, 1)).toBeUndefined();
});
