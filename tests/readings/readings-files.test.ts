import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readingsJsonSchema } from '../../src/readings/readings-schema.js';
import { readReadingsTable } from '../../src/readings/readings-table.js';
import { readReadingsText } from '../../src/readings/readings-text.js';
import { projectRoot } from '../architecture/source-tree.js';
import { reviewedSample } from '../sheet/reviewed-sample.js';

const HEAD = { format: 'pipeborne-readings/1', sheet: 'a'.repeat(64), mark: 'P-1' };
const READINGS = { 'electrical.volts-ab': '461 V', 'coupling.guard': 'yes', 'hydraulic.flow': '12,5' };

const plain = (read: ReturnType<typeof readReadingsText>) => {
  if (!read.ok) throw new Error(read.issues.map(({ code }) => code).join());
  const { file: _file, answers, ...head } = read.answers;
  return { ...head, answers: answers.map(({ place: _place, ...answer }) => answer) };
};

test('YAML, JSON and CSV of the same readings are the same', () => {
  const yaml = plain(
    readReadingsText(
      `format: pipeborne-readings/1
sheet: ${HEAD.sheet}
mark: P-1
readings:
  electrical.volts-ab: 461 V
  coupling.guard: yes
  hydraulic.flow: '12,5'
  plumb.along: {not-read: no level}
`,
      'r.yaml',
    ),
  );
  const json = plain(
    readReadingsText(
      JSON.stringify({ ...HEAD, readings: { ...READINGS, 'plumb.along': { 'not-read': 'no level' } } }),
      'r.json',
    ),
  );
  const rows = [...Object.entries(HEAD), ...Object.entries(READINGS)].map(([id, value]) => `${id};${value}`);
  const csv = plain(
    readReadingsTable(
      `\ufeffreading;value;not read because\r\n${rows.join('\r\n')}\r\nplumb.along;;no level\r\n;;\r\n`,
      'r.csv',
    ),
  );
  expect(json).toEqual(yaml);
  expect(csv).toEqual(yaml);
});

test('a comma in quotes survives a table parted by commas', () => {
  const rows = Object.entries(HEAD)
    .map(([id, value]) => `${id},${value}`)
    .join('\n');
  const read = plain(readReadingsTable(`reading,value\n${rows}\nhydraulic.flow,"12,5"\n`, 'r.csv'));
  expect(read.answers).toEqual([{ id: 'hydraulic.flow', text: '12,5' }]);
});

test('numbers and truth values of YAML are readings too', () => {
  const read = plain(
    readReadingsText(
      JSON.stringify({ ...HEAD, readings: { 'a.b': 0.125, 'a.c': false, 'a.d': null } }),
      'r.json',
    ),
  );
  expect(read.answers).toEqual([
    { id: 'a.b', text: '0.125' },
    { id: 'a.c', text: 'no' },
  ]);
});

describe('what is wrong with a file is told all at once, with its line', () => {
  const codes = (read: ReturnType<typeof readReadingsText>) =>
    read.ok ? [] : read.issues.map(({ code, place }) => `${code} ${place?.line}`);

  test('in YAML', () => {
    expect(
      codes(
        readReadingsText('format: other/1\nspeed: 3\nunits: metric\nreadings:\n  a.b: [1, 2]\n', 'r.yaml'),
      ),
    ).toEqual([
      'fieldwork.readings.unknown-key 2',
      'fieldwork.readings.format 1',
      'fieldwork.readings.units 3',
      'fieldwork.readings.no-sheet 1',
      'fieldwork.readings.not-a-value 5',
    ]);
    expect(codes(readReadingsText('- 1', 'r.yaml'))).toEqual(['fieldwork.readings.not-a-map 1']);
    expect(codes(readReadingsText('a: !!js/function x', 'r.yaml'))[0]).toMatch(/^input\./);
  });

  test('in CSV', () => {
    expect(codes(readReadingsTable('id,what\n', 'r.csv'))).toEqual(['fieldwork.readings.no-head 1']);
    expect(codes(readReadingsTable('reading,value\na.b,12,5,x\na.b,1\na.b,2\n', 'r.csv'))).toEqual([
      'fieldwork.readings.too-many-cells 2',
      'fieldwork.readings.twice 3',
      'fieldwork.readings.twice 4',
      'fieldwork.readings.format 1',
      'fieldwork.readings.no-sheet 1',
    ]);
    expect(codes(readReadingsTable('reading,value\n"a', 'r.csv'))[0]).toMatch(/not-a-table/);
  });
});

describe('the published schema', () => {
  const validate = new Ajv2020({ strict: true }).compile(readingsJsonSchema());
  const text = readFileSync(join(projectRoot, 'samples/readings/pool-hot-water.yaml'), 'utf8');

  test('takes the sample, which belongs to its input', () => {
    expect(validate(parse(text))).toBe(true);
    expect(parse(text).sheet).toBe(reviewedSample('pool-hot-water').installation.fingerprint);
  });

  test('refuses what the reader refuses', () => {
    expect(validate({ ...parse(text), format: 'other/1' })).toBe(false);
    expect(validate({ ...parse(text), readings: { 'a.b': [1] } })).toBe(false);
  });
});
