import { describe, expect, test } from 'vitest';
import { readInstallation } from '../../src/index.js';
import type { Installation } from '../../src/input/installation.js';
import { buildLayout } from '../../src/model/layout/build-layout.js';
import { uncertaintiesOf } from '../../src/study/bands/uncertainties.js';
import { factorAt, type Uncertainty, valueAt } from '../../src/study/bands/uncertainty.js';
import { varied } from '../../src/study/bands/vary.js';
import { fileText } from '../input/sample-text.js';

const samples = ['dairy-condenser-water', 'library-chilled-water', 'pool-hot-water'];
const read = (text: string): Installation => {
  const reading = readInstallation(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.installation;
};
const installationOf = (name: string) => read(fileText(`../../samples/${name}.yaml`));
const uncertaintyOf = (installation: Installation, id: string): Uncertainty => {
  const found = uncertaintiesOf(installation).find((uncertainty) => uncertainty.id === id);
  if (found === undefined) throw new Error(`no doubt "${id}"`);
  return found;
};

describe.each(samples)('%s', (name) => {
  const installation = installationOf(name);
  const uncertainties = uncertaintiesOf(installation);

  test('each doubt is there once, with how it is known and a source', () => {
    expect(new Set(uncertainties.map(({ id }) => id)).size).toBe(uncertainties.length);
    for (const { half, citation, what } of uncertainties) {
      expect(half).toBeGreaterThan(0);
      expect(citation.clause).not.toBe('');
      expect(what).not.toMatch(/undefined|NaN/);
    }
  });

  test('each doubt changes the frame it speaks of, and nothing else does', () => {
    const before = buildLayout(installation).frame;
    uncertainties.forEach((_, index) => {
      const amounts = uncertainties.map((_, each) => (each === index ? 1 : 0));
      expect(
        buildLayout(varied(installation, uncertainties, amounts)).frame,
        uncertainties[index]?.id,
      ).not.toEqual(before);
    });
    expect(
      varied(
        installation,
        uncertainties,
        uncertainties.map(() => 0),
      ),
    ).toBe(installation);
  });

  test('all weights a tenth heavier make the dry line a tenth heavier', () => {
    const amounts = uncertainties.map(({ varied: of, half }) => (of.kind === 'mass' ? 0.1 / half : 0));
    const dry = (of: Installation) =>
      buildLayout(of).weights.reduce((sum, row) => sum + row.dry + row.covering, 0);
    const ratio = dry(varied(installation, uncertainties, amounts)) / dry(installation);
    expect(ratio).toBeCloseTo(1.1, 12);
  });
});

test('a motor whose weight is estimated is within 40 %, one from the manufacturer within 10 %', () => {
  expect(uncertaintyOf(installationOf('library-chilled-water'), 'mass of motor')).toMatchObject({
    half: 0.4,
    obtained: 'estimated',
    path: 'pump.motor.weight',
  });
  expect(uncertaintyOf(installationOf('pool-hot-water'), 'mass of motor')).toMatchObject({
    half: 0.1,
    obtained: 'maker',
  });
  expect(uncertaintyOf(installationOf('dairy-condenser-water'), 'mass of motor')).toMatchObject({
    half: 0.4,
    obtained: 'assumed',
  });
});

test('what the file says of how far a weight may be off comes before any practice', () => {
  const text = fileText('../../samples/library-chilled-water.yaml').replace(
    'known: estimated',
    'known: weighed\n    within: 1 %',
  );
  expect(uncertaintyOf(read(text), 'mass of motor')).toMatchObject({
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
  const ids = uncertaintiesOf(installationOf('library-chilled-water')).map(({ id }) => id);
  expect(ids.filter((id) => id.includes('butterfly lug'))).toHaveLength(1);
  expect(ids.filter((id) => id.startsWith('spring load'))).toEqual([
    'spring load of V1',
    'spring load of V2',
  ]);
});

test('a value moves by share, by factor or by shift', () => {
  const uncertainty = uncertaintyOf(installationOf('pool-hot-water'), 'mass of motor');
  expect(valueAt({ ...uncertainty, taken: 100, half: 0.1 }, -1)).toBeCloseTo(90, 12);
  expect(factorAt({ ...uncertainty, moves: 'factor', half: 1 }, -1)).toBe(0.5);
  expect(valueAt({ ...uncertainty, moves: 'shift', taken: 0, half: 0.025 }, 1)).toBe(0.025);
  expect(valueAt({ ...uncertainty, moves: 'alternative' }, 1)).toBeUndefined();
});
