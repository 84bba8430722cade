import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareInputs } from '../../src/compare/compare-inputs.js';
import type { InputChange } from '../../src/compare/comparison.js';
import { readInstallation } from '../../src/input/read-installation.js';
import { readContent, sameWritten } from '../../src/input/written-value.js';

const pool = readFileSync(new URL('../../samples/pool-hot-water.yaml', import.meta.url), 'utf8');

/** The sample with one text in place of another, which must be there. */
function edited(...edits: readonly (readonly [string, string])[]): string {
  return edits.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`the sample has no ${from}`);
    return text.replace(from, to);
  }, pool);
}

const compare = (before: string, after: string) => compareInputs(readContent(before), readContent(after));
const short = ({ kind, place, before, after }: InputChange): string =>
  [
    kind,
    place.join(' > '),
    ...[before, after].map((side) =>
      side === undefined ? '' : JSON.stringify(Object.values(side).slice(1)),
    ),
  ].join(' | ');
const changesOf = (...edits: readonly (readonly [string, string])[]) =>
  compare(pool, edited(...edits)).changes.map(short);

test('an input does not differ from itself', () => {
  expect(compare(pool, pool)).toEqual({ changes: [], renamed: new Map() });
});

test('the edits of these tests are inputs that can be read', () => {
  expect(readInstallation(edited(['mark: H2', 'mark: H7'])).ok).toBe(true);
});

test.each([
  [
    'another unit',
    [
      ['weight: 290 lb', 'weight: 131.5 kg'],
      ['straight: 14 ft', 'straight: 4267 mm'],
      ['180 degF', '82.2 degC'],
    ],
  ],
  ['another spelling of a length', [['from-shaft: 15 in', 'from-shaft: 1\'-3"']]],
  ['a nominal size in the other system', [['  size: 6 in\n  schedule', '  size: DN 150\n  schedule']]],
  ['another order of keys', [['build: split-coupled\n  mount: hung', 'mount: hung\n  build: split-coupled']]],
  ['capitals', [['facing: south', 'facing: South']]],
  ['straight pipe cut in two', [['straight: 14 ft', 'straight: 10 ft\n        - straight: 4 ft']]],
  ['a remark', [['blades: 6', 'blades: 6 # from the name plate']]],
] as const)('%s is no change', (_, edits) => {
  expect(changesOf(...edits)).toEqual([]);
});

test.each([
  ['a value', [['power: 20 hp', 'power: 25 hp']], ['changed | pump > motor > power | ["20 hp"] | ["25 hp"]']],
  [
    'a value that is new',
    [['blades: 6\n', 'blades: 6\n  rotor-weight: 90 lb\n']],
    ['added | pump > rotor-weight |  | ["90 lb"]'],
  ],
  ['a value that is gone', [['  blades: 6\n', '']], ['removed | pump > blades | ["6"] | ']],
  [
    'another unit and another value',
    [['weight: 290 lb', 'weight: 133 kg']],
    ['changed | pump > motor > weight | ["290 lb"] | ["133 kg"]'],
  ],
  [
    'a thing of the room by its name',
    [['diameter: 3 in}', 'diameter: 4 in}']],
    ['changed | room > objects > fill line > diameter | ["3 in"] | ["4 in"]'],
  ],
  [
    'a service space by what it is for',
    [["'manual 44-7, page 19', height: 24 in", "'manual 44-7, page 19', height: 30 in"]],
    ['changed | service-spaces > casing lift-out > height | ["24 in"] | ["30 in"]'],
  ],
  [
    'a part of a walk',
    [['valve: {kind: swing check, class: 150}', 'valve: {kind: swing check, class: 300}']],
    ['changed | discharge line > valve 1 > class | ["150"] | ["300"]'],
  ],
  [
    'a rod',
    [['mark: H2, rod: 3/4 in', 'mark: H2, rod: 5/8 in']],
    ['changed | suction line > H2 > rod | ["3/4 in"] | ["5/8 in"]'],
  ],
] as const)('%s is told by its path, as written', (_, edits, wanted) => {
  expect(changesOf(...edits)).toEqual(wanted);
});

describe('supports', () => {
  const movedH2 = edited(
    [
      '        - straight: 14 ft\n        - hanger: {mark: H2',
      '        - straight: 12 ft\n        - hanger: {mark: H2',
    ],
    ['        - straight: 5 ft\n        - end', '        - straight: 7 ft\n        - end'],
  );

  test('moved along the pipe are told by where they stand, and the pipe is as long as it was', () => {
    const { changes } = compare(pool, movedH2);
    expect(changes).toHaveLength(1);
    expect(changes[0]).toMatchObject({
      kind: 'moved',
      place: ['suction line', 'H2'],
      before: { past: 'elbow 2' },
      after: { past: 'elbow 2' },
    });
    const [before, after] = [changes[0]?.before, changes[0]?.after].map((side) =>
      side?.kind === 'station' ? side.value / 0.3048 : 0,
    );
    expect([before, after].map((feet) => Math.round((feet ?? 0) * 1e6) / 1e6)).toEqual([14.25, 12.25]);
  });

  test('with another mark in the same place were renamed', () => {
    const { changes, renamed } = compare(pool, edited(['mark: H4', 'mark: H8']));
    expect(changes.map(short)).toEqual(['renamed | discharge line > H8 | ["H4"] | ["H8"]']);
    expect([...renamed]).toEqual([['H4', 'H8']]);
  });

  test('renamed and moved at once are still the same support', () => {
    const { changes } = compare(pool, movedH2.replace('mark: H2', 'mark: H7'));
    expect(changes.map(({ kind, place }) => `${kind} ${place[1]}`)).toEqual(['renamed H7', 'moved H7']);
  });

  test('whose marks were swapped are where their marks are', () => {
    const swapped = edited(
      ['mark: H1,', 'mark: HX,'],
      ['mark: H2,', 'mark: H1,'],
      ['mark: HX,', 'mark: H2,'],
    );
    expect(compare(pool, swapped).changes.map(({ kind, place }) => `${kind} ${place[1]}`)).toEqual([
      'moved H2',
      'moved H1',
    ]);
  });

  test('put in or taken out do not change the pipe they hang on', () => {
    const more = edited([
      'straight: 14 ft',
      'straight: 6 ft\n        - rest: {mark: R1}\n        - straight: 8 ft',
    ]);
    expect(compare(pool, more).changes.map(short)).toEqual([
      'added | suction line > R1 |  | ["rest mark R1"]',
    ]);
    expect(compare(more, pool).changes.map(({ kind }) => kind)).toEqual(['removed']);
  });

  test('that went to the other line were moved there', () => {
    const other = edited(
      [
        '        - hanger: {mark: H2, rod: 3/4 in, length: 2 ft 6 in}\n        - straight: 5 ft',
        '        - straight: 5 ft',
      ],
      [
        '        - hanger: {mark: H4,',
        '        - hanger: {mark: H2, rod: 3/4 in, length: 2 ft 6 in}\n        - straight: 1 ft\n        - hanger: {mark: H4,',
      ],
    );
    const moved = compare(pool, other).changes.filter(({ kind }) => kind === 'moved');
    expect(moved.map(({ place }) => place)).toContainEqual(['discharge line', 'H2']);
    expect(moved.find(({ place }) => place[1] === 'H2')).toMatchObject({
      before: { line: 'suction line' },
      after: { line: 'discharge line' },
    });
  });
});

test('a part put in is told once; what stands behind it keeps its counterpart', () => {
  const more = edited([
    '        - elbow: west\n        - straight: 3 in\n        - hanger: {mark: H1',
    '        - strainer: {weight: 60 lb, length: 18 in}\n        - elbow: west\n        - straight: 3 in\n        - hanger: {mark: H1',
  ]);
  expect(compare(pool, more).changes.map(({ kind, place }) => `${kind} ${place.join(' > ')}`)).toEqual([
    'added suction line > strainer 1',
  ]);
});

test('a longer run is told between the parts it lies between', () => {
  const [change] = compare(pool, edited(['straight: 1 ft 9 in', 'straight: 2 ft'])).changes;
  expect(change).toMatchObject({
    kind: 'changed',
    place: ['suction line', 'straight pipe from flange 3 to elbow 2'],
  });
});

const mirror: Readonly<Record<string, string>> = { added: 'removed', removed: 'added' };

test.each([
  ['pool and dairy', 'dairy-condenser-water'],
  ['pool and library', 'library-chilled-water'],
])('the other way round the changes are mirrored: %s', (_, name) => {
  const other = readFileSync(new URL(`../../samples/${name}.yaml`, import.meta.url), 'utf8');
  const there = compare(pool, other).changes;
  const back = compare(other, pool).changes;
  const key = (kind: string, before: unknown, after: unknown) => JSON.stringify([kind, before, after]);
  const sorted = (list: readonly string[]) => [...list].sort();
  const values = (changes: readonly InputChange[], turned: boolean) =>
    sorted(
      changes
        .filter(({ kind }) => kind === 'changed' || kind === 'added' || kind === 'removed')
        .map(({ kind, before, after }) =>
          turned ? key(mirror[kind] ?? kind, after, before) : key(kind, before, after),
        ),
    );
  expect(values(back, true)).toEqual(values(there, false));
  expect(there.length).toBeGreaterThan(20);
});

test.each([
  ['1 ft 9 in', '2 ft'],
  ['12 ft', '12 ft 1/2 in'],
  ['2 ft', '0.6 m'],
  ['290 lb', '291 lb'],
  ['yes', 'no'],
  ['DN 150', 'DN 125'],
  ['2004', '2005'],
])('%s and %s are not the same', (one, other) => {
  expect(sameWritten(one, other)).toBe(false);
  expect(sameWritten(other, one)).toBe(false);
});

test('lengths written in feet and in millimetres rounded to one are the same, and two off are not', () => {
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 400 }), (inches) => {
      const millimetres = Math.round(inches * 25.4);
      expect(sameWritten(`${inches} in`, `${millimetres} mm`)).toBe(true);
      expect(sameWritten(`${inches} in`, `${millimetres + 2} mm`)).toBe(false);
      expect(sameWritten(`${inches} in`, `${inches + 1} in`)).toBe(false);
    }),
  );
});
