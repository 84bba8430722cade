import { describe, expect, test } from 'vitest';
import { type Edit, withEdits } from '../../src/study/advise/edit.js';
import { writeEdits } from '../../src/study/advise/write-edits.js';
import { library } from './advise-run.js';

const walk = ['piping', 'lines', 1, 'walk'] as const;
const linesOf = (text: string) => text.split('\n');

test('a length is set in its place and nothing else of the file is touched', () => {
  const edits: readonly Edit[] = [
    { does: 'set', path: ['piping', 'lines', 0, 'walk', 10, 'straight'], value: '13 ft 6 in' },
  ];
  const written = linesOf(writeEdits(library, edits) ?? '');
  const before = linesOf(library);
  const changed = before.flatMap((line, index) => (line === written[index] ? [] : [[line, written[index]]]));
  expect(changed).toEqual([['        - straight: 14 ft', '        - straight: 13 ft 6 in']]);
  expect(written).toHaveLength(before.length);
});

test('a step goes in behind the one before it, in the style of its neighbours', () => {
  const step = { hanger: { mark: 'H4', rods: 2, rod: '7/8 in', length: '6 ft' } };
  const written = linesOf(writeEdits(library, [{ does: 'insert', path: [...walk, 13], value: step }]) ?? '');
  const added = written.filter((line) => !library.includes(`${line}\n`));
  expect(added).toEqual(['        - hanger: {mark: H4, rods: 2, rod: 7/8 in, length: 6 ft}']);
  expect(written).toHaveLength(linesOf(library).length + 1);
});

describe('comments, blank lines and line ends stay', () => {
  const text = [
    '# the whole line',
    'walk:',
    '  - straight: 1 ft   # measured',
    '',
    '  - hanger:',
    '      mark: H1',
    '      rod: "3/4 in"   # as built',
    '  # to the plant',
    "  - straight: '2 ft'",
    '  - end: anchored',
    '',
  ].join('\r\n');

  test('when a step is put in between', () => {
    const value = { hanger: { mark: 'H2', rod: '5/8 in' } };
    const written = writeEdits(text, [{ does: 'insert', path: ['walk', 2], value }]);
    expect(written).toBe(
      text.replace('# as built\r\n', '# as built\r\n  - hanger:\r\n      mark: H2\r\n      rod: 5/8 in\r\n'),
    );
  });

  test('when a step is taken out', () => {
    const written = writeEdits(text, [{ does: 'remove', path: ['walk', 1] }]);
    expect(written).toBe(
      text.replace('  - hanger:\r\n      mark: H1\r\n      rod: "3/4 in"   # as built\r\n', ''),
    );
  });

  test('when values are set, each with the quotes it had', () => {
    const written = writeEdits(text, [
      { does: 'set', path: ['walk', 1, 'hanger', 'rod'], value: '7/8 in' },
      { does: 'set', path: ['walk', 2, 'straight'], value: '2 ft 6 in' },
      { does: 'set', path: ['walk', 1, 'hanger', 'length'], value: '3 ft' },
    ]);
    expect(written).toBe(
      text
        .replace('"3/4 in"   # as built\r\n', '"7/8 in"   # as built\r\n      length: 3 ft\r\n')
        .replace("'2 ft'", "'2 ft 6 in'"),
    );
  });

  test('when a step becomes another', () => {
    const value = { 'spring-hanger': { mark: 'H1', rate: '300 lb/in' } };
    const written = writeEdits(text, [{ does: 'set', path: ['walk', 1], value }]);
    expect(written).toContain('\r\n  - spring-hanger:\r\n      mark: H1\r\n      rate: 300 lb/in');
    expect(written).toContain('  # to the plant\r\n');
  });
});

describe('JSON stays JSON', () => {
  const content = { walk: [{ straight: '1 ft' }, { hanger: { mark: 'H1' } }, { end: 'anchored' }] };
  const edits: readonly Edit[] = [
    { does: 'set', path: ['walk', 0, 'straight'], value: '2 ft' },
    { does: 'set', path: ['walk', 1, 'hanger', 'rod'], value: '3/4 in' },
    { does: 'insert', path: ['walk', 2], value: { guide: { mark: 'G1' } } },
    { does: 'remove', path: ['walk', 0] },
  ];

  test.each([0, 2])('indented by %i', (indent) => {
    const written = writeEdits(JSON.stringify(content, null, indent), edits);
    expect(JSON.parse(written ?? '')).toEqual(withEdits(content, edits));
  });
});

test('what is repeated elsewhere by an anchor is not changed behind the back of its other places', () => {
  const text = 'walk:\n  - straight: &long {a: 1}\n  - straight: *long\n';
  expect(writeEdits(text, [{ does: 'set', path: ['walk', 0, 'straight', 'a'], value: 2 }])).toBeUndefined();
  expect(writeEdits(text, [{ does: 'set', path: ['walk', 1, 'straight'], value: '2 ft' }])).toBe(
    'walk:\n  - straight: &long {a: 1}\n  - straight: 2 ft\n',
  );
});

test('a text that would read as something else is quoted', () => {
  const written = writeEdits('walk:\n  - {mark: H1}\n', [
    { does: 'set', path: ['walk', 0, 'mark'], value: '12' },
    { does: 'set', path: ['walk', 0, 'note'], value: 'a: b, [c]' },
  ]);
  expect(written).toBe("walk:\n  - {mark: '12', note: 'a: b, [c]'}\n");
});
